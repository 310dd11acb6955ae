/** The content against the trade: orders of work, signs and cautions that hold across all files. */
import { describe, expect, it } from 'vitest';
import { cautionsComeInTime } from './cautions.ts';
import * as checks from './checks.ts';
import { known } from './knowledge.ts';
import { shownByTheRightFlaws } from './shown-by.ts';

describe('the content', () => {
  it('lets every coat dry before anything else', () => expect(checks.coatsAreWaitedFor(known)).toEqual([]));
  it('makes sure of the stage before it cuts, wets or covers a film', () =>
    expect(checks.repairsBeginByWaiting(known)).toEqual([]));
  it('thins and extends no further than the trade', () =>
    expect(checks.mixesStayWithinTheTrade(known)).toEqual([]));
  it('polishes a cured film only', () => expect(checks.polishWaitsForCure(known)).toEqual([]));
  it('gives the signs that the kind of top coat alone tells', () =>
    expect(checks.signsFollowTheFamilies(known)).toEqual([]));
  it('hands over on answers that the other defect shows', () =>
    expect(checks.handoversAgreeWithSigns(known)).toEqual([]));
  it('lets only the right flaws claim what is seen for certain', () =>
    expect(shownByTheRightFlaws(known)).toEqual([]));
  it('brings every caution at its step', () => expect(cautionsComeInTime(known)).toEqual([]));
});
