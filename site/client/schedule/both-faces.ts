import type { BothFaces, LoosePart, Turning } from '#engine/schedule.ts';
import type { Draft } from '../shared/form/form.ts';
import { readNumber } from '../shared/form/number.ts';

/** What may be taken off and turned, by the part whose sizes are asked. */
export const LOOSE = ['front', 'top'] as const satisfies readonly LoosePart[];
const LOOSE_WORDS: Readonly<Record<LoosePart, string>> = { front: 'doors and fronts', top: 'tops' };
const TURNED_WORDS: Readonly<Record<Turning, string>> = {
  'each-coat': 'turned after each coat',
  'each-face': 'the back whole first',
};

/** What is coated on both faces, in words; nothing where nothing is. */
export const sayBoth = (both: BothFaces | undefined): string | undefined =>
  both &&
  `${both.parts.map((part) => LOOSE_WORDS[part]).join(' and ')} on both faces, ${TURNED_WORDS[both.turned]}`;

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
