import type { LoosePart } from '#engine/schedule.ts';
import type { Draft } from '../shared/form/form.ts';
import { readNumber } from '../shared/form/number.ts';

/** What may be taken off and turned, by the part whose sizes are asked. */
export const LOOSE = ['front', 'top'] as const satisfies readonly LoosePart[];

/** Parts of which there is at least one. */
const thereIs = (draft: Draft, part: LoosePart): boolean =>
  Number(readNumber(draft[`${part}-count`] ?? '')) > 0;

/** What the draft says is coated on both faces, and is there. */
export const bothIn = (draft: Draft): readonly LoosePart[] =>
  LOOSE.filter((part) => draft['both']?.split(',').includes(part) && thereIs(draft, part));

/** Asks for both faces of what can be turned, and for the turning once one is ticked. */
export const askBothFaces = (form: HTMLFormElement, draft: Draft): void => {
  const hide = (selector: string, hidden: boolean) => {
    const part = form.querySelector<HTMLElement>(selector);
    if (part) part.hidden = hidden;
  };
  for (const part of LOOSE) hide(`[data-loose=${part}]`, !thereIs(draft, part));
  hide('[data-part=both]', !LOOSE.some((part) => thereIs(draft, part)));
  hide('[data-part=turned]', !bothIn(draft).length);
};
