import type { ValueOf } from '#engine/model/facts.ts';

const WORDS: Readonly<Record<ValueOf<'hardener'>, string>> = {
  none: 'no hardener in it',
  isocyanate: 'with isocyanate in it',
  acid: 'with an acid hardener in it',
};

/** What was mixed into a coat, among the other things that are told of it; as it stands where it is no such word. */
export const sayHardener = (hardener: string): string =>
  Object.entries(WORDS).find(([value]) => value === hardener)?.[1] ?? hardener;
