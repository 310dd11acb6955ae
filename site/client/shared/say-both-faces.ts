import type { BothFaces, LoosePart, Turning } from '#engine/schedule.ts';

/** What may be taken off and turned, by the part whose sizes are asked. */
export const LOOSE = ['front', 'top'] as const satisfies readonly LoosePart[];

const LOOSE_WORDS: Readonly<Record<LoosePart, string>> = { front: 'doors and fronts', top: 'loose tops' };
const TURNED_WORDS: Readonly<Record<Turning, string>> = {
  'each-coat': 'turned after each coat',
  'each-face': 'the back whole first',
};

/** Parts that are turned, in words. */
export const sayLoose = (parts: readonly LoosePart[]): string =>
  parts.map((part) => LOOSE_WORDS[part]).join(', ');

/** What is coated on both faces, in words; nothing where nothing is. */
export const sayBoth = (both: BothFaces | undefined): string | undefined =>
  both && `both faces of ${sayLoose(both.parts)}, ${TURNED_WORDS[both.turned]}`;
