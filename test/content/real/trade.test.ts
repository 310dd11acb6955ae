/** The content against the trade: orders of work, signs and cautions that hold across all files. */
import { describe, expect, it } from 'vitest';
import { cautionsComeInTime } from './cautions.ts';
import { known } from './knowledge.ts';
import { shownByTheRightFlaws } from './shown-by.ts';

describe('the content', () => {
  it('lets only the right flaws claim what is seen for certain', () =>
    expect(shownByTheRightFlaws(known)).toEqual([]));
  it('brings every caution at its step', () => expect(cautionsComeInTime(known)).toEqual([]));
});
