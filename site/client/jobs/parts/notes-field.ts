import { make } from '../../shared/make.ts';

/** As many letters as a card keeps. */
const MOST = 4000;

/** The notes of a card with their heading; each key is told. */
export const notesSection = (
  field: HTMLTextAreaElement,
  signal: AbortSignal,
  typed: (text: string) => void,
): HTMLElement => {
  Object.assign(field, { rows: 4, maxLength: MOST, id: 'job-notes' });
  field.addEventListener('input', () => typed(field.value), { signal });
  const label = Object.assign(make('label', 'Notes'), { htmlFor: field.id });
  return make('section.notes', make('h2.tape', label), field);
};
