import type { Change } from '#engine/jobs.ts';
import type { JobCard } from '#engine/model/job-card.ts';
import { localInput } from './jobs-say.ts';

/** The name of each field of the form, with what it is called on the card. */
const FIELDS = {
  name: 'name',
  kind: 'kind',
  base: 'base',
  'base-laid': 'baseLaidAt',
  tone: 'tone',
  age: 'age',
  product: 'product',
  sheen: 'sheen',
} as const satisfies Readonly<Record<string, keyof Change>>;
type Field = keyof typeof FIELDS;

const input = (form: HTMLFormElement, name: Field): HTMLInputElement | HTMLSelectElement =>
  form.elements.namedItem(name) as HTMLInputElement | HTMLSelectElement;

type Trials = NonNullable<JobCard['trials']>;
const ticks = (form: HTMLFormElement) => [...form.querySelectorAll<HTMLInputElement>('[name=trials]')];

const textOf = (card: JobCard, name: Field): string => {
  const value = card[FIELDS[name]];
  return typeof value === 'number' ? localInput(value) : (value ?? '');
};

/** What is wrong with the form as it stands, told beside its field; nothing where all is well. */
export const tellFieldFaults = (form: HTMLFormElement): boolean => {
  const name = input(form, 'name');
  const faults = {
    name: name.value.trim() ? '' : 'Give the piece a name, so that you find it again.',
    'base-laid': (input(form, 'base-laid') as HTMLInputElement).validity.badInput
      ? 'Give the day and the time, or leave it empty.'
      : '',
  };
  for (const [field, says] of Object.entries(faults)) {
    const place = form.querySelector(`#plan-${field}-fault`);
    if (place) place.textContent = says;
    input(form, field as Field).toggleAttribute('aria-invalid', Boolean(says));
  }
  return Object.values(faults).some(Boolean);
};

/** Of a field what goes onto the card. An empty choice takes it off. */
export const changeOf = (form: HTMLFormElement, name: string): Change => {
  if (name === 'trials')
    return { trials: ticks(form).flatMap(({ checked, value }) => (checked ? [value] : [])) as Trials };
  if (!(name in FIELDS)) return {};
  const field = name as Field;
  const value = input(form, field).value.trim();
  if (field === 'base-laid') return { baseLaidAt: value ? new Date(value).getTime() : undefined };
  if (field === 'name') return value ? { name: value.slice(0, 80) } : {};
  return { [FIELDS[field]]: value || undefined };
};

export const changeOfAll = (form: HTMLFormElement): Change =>
  Object.assign({}, ...[...Object.keys(FIELDS), 'trials'].map((name) => changeOf(form, name)));

/** Puts a card into the form. What she is typing and is not written yet stays. */
export const fillFields = (form: HTMLFormElement, card: JobCard, before?: JobCard): void => {
  for (const name of Object.keys(FIELDS) as Field[]) {
    const field = input(form, name);
    const text = textOf(card, name);
    const typing = before && document.activeElement === field && field.value !== textOf(before, name);
    if (!typing && field.value !== text) field.value = text;
  }
  const trials: readonly string[] = card.trials ?? [];
  for (const tick of ticks(form)) tick.checked = trials.includes(tick.value);
};
