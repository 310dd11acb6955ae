import * as check from 'fast-check';

/** Property checks over lower-case words of 1 to 12 letters. */
export const fc = {
  assert: check.assert,
  property: check.property,
  word: (): check.Arbitrary<string> => check.stringMatching(/^[a-z]{1,12}$/),
};
