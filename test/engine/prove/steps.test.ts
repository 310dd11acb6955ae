/**
 * The order of work on a bench, one slip at a time: nothing is sanded or coated before it is dry, no coat goes over dust,
 * acid is rinsed before it can become dust, stripper is washed off before a vacuum's motor comes near (makers' sheets and
 * agencies say all four; common practice otherwise). Invented repairs.
 */
import { describe, expect, it } from 'vitest';
import type { Issue } from '#engine/faults/issue.ts';
import type { Knowledge } from '#engine/knowledge/knowledge.ts';
import { stepsAreInOrder } from '#engine/prove/steps-are-in-order.ts';
import { timesAgree } from '#engine/prove/times-agree.ts';
import { tintsStayWithinLimits } from '#engine/prove/tints-stay-within-limits.ts';
import { act, known, remedy, rule } from '../small.ts';

type Step = Record<string, unknown> & { kind: string };
const say = 'Do it as it is done.';
const step = (kind: string, more: Record<string, unknown> = {}): Step => ({ kind, say, ...more });
const sand = step('sand', { grit: 320 });
const vacuum = step('wipe', { with: 'vacuum' });
const damp = step('wipe', { with: 'damp-cloth' });
const spirits = step('wipe', { with: 'mineral-spirits' });
const alcohol = step('wipe', { with: 'alcohol' });
const dryCloth = step('wipe', { with: 'dry-cloth' });
const coat = step('coat', { product: 'same' });
const tinted = step('coat', { product: 'tinted-same' });
const tint = step('mix', { what: 'tint' });
const wait = step('wait', { until: 'recoatable' });
const strip = step('strip', { with: 'stripper', does: ['stripper'] });
const scraped = step('strip', { with: 'scraper-and-sanding' });
const bleach = step('wipe', { with: 'wood-bleach' });
const rinse = step('wipe', { with: 'damp-cloth', of: 'wood-bleach' });
const look = step('look');

const made = (steps: readonly Step[], now: Record<string, unknown> = {}): Knowledge =>
  known(remedy('mend', now, { steps }));
const faults = (steps: readonly Step[], now: Record<string, unknown> = {}) =>
  [...stepsAreInOrder(made(steps, now))].map((issue) => [
    (issue as Issue & { what: string }).what,
    (issue as Issue & { step: string }).step,
  ]);
const whats = (steps: readonly Step[], now: Record<string, unknown> = {}) =>
  faults(steps, now).map(([what]) => what);
/** The steps begin while the film is only dry to the touch. */
const early = { 'dry-to-touch': act('repair', 'Repair it at once.') };

const SOFT = 'comes on a film that has not dried';
const DUST = 'goes on over sanding dust';
const UNTINTED = 'lays a tinted coat that nothing has mixed';
const ACID = 'comes over acid, whose crystals must not become dust';
const STRIPPER = 'comes over stripper';
const MOTOR = 'brings a vacuum, whose motor lights vapor, to stripper';
const NO_TIME = 'does not say how long';

describe('in order', () => {
  it.each<[string, readonly Step[]]>([
    ['sand, vacuum, coat', [sand, vacuum, coat]],
    ['coat, wait, sand', [coat, wait, sand]],
    ['coat, wait, coat', [coat, wait, coat]],
    ['tint, then a tinted coat', [tint, tinted]],
    ['acid, rinsed, then sanded', [bleach, rinse, sand]],
    [
      'acid, rinsed with soap, then coated',
      [bleach, step('wipe', { with: 'soapy-water', of: 'wood-bleach' }), coat],
    ],
    ['stripper, washed with spirits, then vacuumed and coated', [strip, spirits, vacuum, coat]],
    ['stripper, washed with alcohol', [strip, alcohol, vacuum, coat]],
    ['stripper, washed with water', [strip, damp, vacuum, coat]],
    ['a wait of hours', [step('wait', { hours: [1, 2] }), coat]],
    ['looking at a wet coat', [coat, look]],
    ['a filler, then a coat', [step('coat', { product: 'grain-filler' }), coat]],
    ['tweezers on a wet coat', [coat, step('scrape', { tool: 'tweezers' })]],
    ['scraped down, wiped, coated', [scraped, vacuum, coat]],
  ])('%s', (_, steps) => {
    expect(whats(steps)).toEqual([]);
  });
});

describe('out of order', () => {
  it.each<[string, readonly Step[], readonly string[]]>([
    ['sanding a wet coat', [coat, sand], [SOFT]],
    ['a coat on a wet coat', [coat, coat], [SOFT]],
    ['a test patch on a wet coat', [coat, step('test-patch', { tries: 'same', hours: [24, 24] })], [SOFT]],
    ['a razor on a wet coat', [coat, step('scrape', { tool: 'razor' })], [SOFT]],
    ['a card scraper on a wet coat', [coat, step('scrape', { tool: 'card-scraper' })], [SOFT]],
    ['a wait that ends too soon', [coat, step('wait', { until: 'dry-to-touch' }), sand], [SOFT]],
    ['a coat over dust', [sand, coat], [DUST]],
    ['a coat over the dust of stripping', [scraped, coat], [DUST]],
    ['a tinted coat that nothing mixed', [tinted], [UNTINTED]],
    ['a second tinted coat of one mix', [tint, tinted, wait, tinted], [UNTINTED]],
    ['another mix is no tint', [step('mix', { what: 'stir' }), tinted], [UNTINTED]],
    ['acid sanded', [bleach, sand], [ACID]],
    ['acid coated', [bleach, coat], [ACID]],
    ['acid wiped with water, of which nobody says that it rinses', [bleach, damp, coat], [ACID]],
    ['acid wiped dry and coated', [bleach, dryCloth, coat], [ACID]],
    ['acid washed with spirits, which do not dissolve it', [bleach, spirits, coat], [ACID]],
    ['stripper coated', [strip, coat], [STRIPPER]],
    ['stripper sanded', [strip, sand], [STRIPPER]],
    ['stripper wiped dry and coated', [strip, dryCloth, coat], [STRIPPER]],
    ['stripper vacuumed', [strip, vacuum, spirits, coat], [MOTOR]],
    ['a wait without a time', [step('wait')], [NO_TIME]],
  ])('%s', (_, steps, wanted) => {
    expect(whats(steps)).toEqual(wanted);
  });

  it('is told of the step that comes too early, once for all kinds of top coat', () => {
    const one = { ...sand, say: 'Sand what has just been laid.' };
    expect(faults([coat, one])).toEqual([[SOFT, 'Sand what has just been laid.']]);
  });

  it('hangs on the stage at which the steps begin', () => {
    expect(whats([sand], early)).toEqual([SOFT]);
    expect(whats([wait, sand], early)).toEqual([]);
    expect(whats([sand])).toEqual([]);
  });

  it('a wait never makes a film less dry', () => {
    expect(whats([step('wait', { until: 'dry-to-touch' }), sand])).toEqual([]);
  });

  it('says what has to come before', () => {
    const mend = (steps: readonly Step[]) => JSON.stringify([...stepsAreInOrder(made(steps))]);
    expect(mend([coat, sand])).toContain('until: recoatable');
    expect(mend([sand, coat])).toContain('with: vacuum');
    expect(mend([tinted])).toContain('what: tint');
    expect(mend([bleach, coat])).toContain('with: damp-cloth');
    expect(mend([strip, coat])).toContain('with: mineral-spirits');
    expect(mend([strip, vacuum, spirits, coat])).toContain('with: mineral-spirits');
  });
});

describe('two times in one breath', () => {
  const told = (stage: string, doing: string, words: string, again: string) =>
    [
      ...timesAgree(made([look], { [stage]: { do: doing, say: words, not: 'Not the other thing.', again } })),
    ].map((issue) => issue.code);

  it.each([
    'Give it two days.',
    'Give it three weeks.',
    'Give it 4 days.',
    'Give it five or six days.',
    'Give it some weeks.',
    'Give it several more days.',
    'Give it a week.',
    'Give it one month.',
    'Give it another week.',
    'Give it a full week.',
    'It takes weeks.',
    'It takes months.',
  ])('%s Look again tomorrow.', (words) => {
    expect(told('setting', 'leave', words, 'Look again tomorrow.')).toEqual(['times-differ']);
    expect(told('setting', 'leave', words, 'Look again the next day.')).toEqual(['times-differ']);
    expect(told('setting', 'leave', words, 'Look again then.')).toEqual([]);
  });

  it.each(['Give it a day.', 'Give it an hour.', 'Leave it till it is dry.', 'A day will do.'])(
    '%s Look again tomorrow: they agree',
    (words) => {
      expect(told('setting', 'leave', words, 'Look again tomorrow.')).toEqual([]);
    },
  );

  it('a film that is dry to the touch has nothing to become', () => {
    const dry = 'Look again when it is dry to the touch.';
    for (const stage of ['wet', 'setting'])
      expect(told(stage, 'leave', 'Leave it as it is.', dry)).toEqual([]);
    for (const stage of ['dry-to-touch', 'recoatable', 'cured'])
      expect(told(stage, 'wait', 'Leave it as it is.', dry)).toEqual(['times-differ']);
  });

  it('steps say themselves when to look again', () => {
    for (const doing of ['repair', 'stop'])
      expect(told('cured', doing, 'Give it two weeks, then repair it.', 'Look again tomorrow.')).toEqual([]);
  });
});

describe('a tint past what a rule allows', () => {
  const limit = (most: number, what = 'tint-percent') =>
    rule('most-of-it', {
      kind: 'adjustment',
      level: 'note',
      when: { stage: 'cured' },
      limit: { what, most },
    });
  const found = (percent: readonly [number, number], what = 'tint', most = 10) =>
    [
      ...tintsStayWithinLimits(
        known(remedy('mend', {}, { steps: [look, step('mix', { what, percent })] }), limit(most)),
      ),
    ].map((issue) => {
      const { code, percent: told, most: allowed, rule: by } = issue as Issue & Record<string, unknown>;
      return [code, told, allowed, by];
    });

  it('is told with its figures; the limit itself is allowed', () => {
    expect(found([5, 10])).toEqual([]);
    expect(found([5, 11])).toEqual([['over-limit', 11, 10, 'most-of-it']]);
    expect(found([1, 2])).toEqual([]);
  });

  it('is of what the limit is of', () => {
    expect(found([20, 30], 'thin')).toEqual([]);
  });
});
