/**
 * Rules of thumb that working refinishers hold. Each is common practice, no source; the numbers are those of the
 * list of rules that the content was written from.
 */
import { describe, expect, it } from 'vitest';
import { walk } from '#engine/index.ts';
import { prove } from '#engine/prove/prove.ts';
import { dustedWithoutSpirits, unseenIsLeft } from './checks.ts';
import { known, rawContent } from './knowledge.ts';
import { told } from './told.ts';

/** The action for a flaw, with every question that is asked answered from `answers`, or not known. */
const actionFor = (
  defect: string,
  facts: Record<string, string | number>,
  answers: Record<string, 'yes' | 'no'>,
) => {
  let on = told(facts);
  for (;;) {
    const walked = walk(known, on, defect);
    if (walked.kind === 'outcome') return walked;
    if (walked.kind !== 'question') throw new Error(`${defect} asks for the ${walked.kind}`);
    on = { ...on, [walked.question]: { value: answers[walked.question] ?? 'unsure', how: 'answered' } };
  }
};

const remediesOf = (walked: ReturnType<typeof actionFor>) =>
  walked.leaves.flatMap((leaf) => ('remedy' in leaf ? [leaf.remedy] : []));
const claims = rawContent.flatMap((entry) => {
  const data = entry.data as { claims?: { says: string; grade: string }[] } | undefined;
  return (data?.claims ?? []).map((claim) => ({ ...claim, file: entry.file }));
});

describe('common practice, no source', () => {
  it('1 to 3: two coats at the least, three on an ordinary piece, about five under daily wear', () => {
    const about = claims.find((one) => /\bcoats?\b/.test(one.says) && /\b2\b.*\b3\b.*\b5\b/.test(one.says));
    expect(about?.grade).toBe('common-practice');
  });

  it('5: a pool in a detail dries yellow over light colors, and the answer is to clean it out', () => {
    const answers = {
      'only-in-grooves-and-corners': 'yes',
      'colored-stain': 'yes',
      'seen-at-arms-length': 'yes',
    } as const;
    const walked = actionFor(
      'pools',
      { stage: 'cured', family: 'water-based', 'base-tone': 'light' },
      answers,
    );
    expect(remediesOf(walked)).toEqual(['clean-out-the-pool']);
  });

  it('6: between clear coats the last paper is P320 or finer', () => {
    expect(prove(known).filter(({ code }) => code === 'against-the-trade')).toEqual([]);
  });

  it('7: haze left by sanding between coats goes under the next coat', () => {
    const answers = {
      'lines-follow-sanding': 'yes',
      'vanishes-when-wetted': 'yes',
      'another-coat-to-come': 'yes',
    } as const;
    const walked = actionFor('cloudy-film', { stage: 'recoatable', family: 'water-based' }, answers);
    expect(remediesOf(walked)).toEqual(['sand-and-recoat']);
  });

  it('8: on a water-based piece the dust before a clear coat is taken off dry or barely damp', () => {
    expect(dustedWithoutSpirits(known)).toEqual([]);
  });

  it('9: a fast water-based clear may take its second coat after about an hour', () => {
    const about = claims.filter(
      (one) => one.file.includes('products/water-based') && /\bone hour\b/.test(one.says),
    );
    expect(about.map((one) => one.grade)).toEqual(['common-practice']);
  });

  it('10: a spot, bubble, hair or band noticed after the stroke has moved on is not gone back to', () => {
    const late = ['missed-spots', 'bubbles', 'hairs-and-dust', 'lap-marks', 'brush-marks', 'streaks'].flatMap(
      (defect) =>
        known.get('defect', defect).families.map((family) => ({
          defect,
          family,
          doing: actionFor(
            defect,
            { stage: 'wet', family },
            { 'just-laid': 'no', 'drew-back': 'no', 'within-wash-time': 'no' },
          ).action.do,
        })),
    );
    expect(late.filter((one) => one.doing !== 'leave')).toEqual([]);
    expect(late.length).toBeGreaterThan(20);
  });

  it('11: a dried-in crumb is shaved nearly flat, sanded lightly and coated over', () => {
    for (const id of ['shave-flush-and-recoat', 'shave-and-recoat']) {
      const steps = known.get('remedy', id).steps;
      const kinds = steps.map((step) => step.kind);
      const [shave, sand, coat] = (['scrape', 'sand', 'coat'] as const).map((kind) => kinds.indexOf(kind));
      expect([shave, sand, coat].every((at) => at !== undefined && at >= 0)).toBe(true);
      expect((shave ?? 0) < (sand ?? 0) && (sand ?? 0) < (coat ?? 0)).toBe(true);
    }
    const razor = known.get('remedy', 'shave-flush-and-recoat').steps.find((step) => step.kind === 'scrape');
    expect(razor?.say).toMatch(/nearly (flat|parallel)/);
  });

  it('12: strokes run from end to end, each overlapping the last a little', () => {
    const coat = known.get('remedy', 'full-panel-recoat').steps.find((step) => step.kind === 'coat');
    expect(coat?.say).toMatch(/end to end/);
    expect(coat?.say).toMatch(/overlap/);
  });

  it('13 and 14: a milky water-based film is left alone until it is dry, over any color', () => {
    for (const family of ['water-based', 'water-lacquer'])
      for (const tone of ['dark', 'light', 'wood'])
        for (const [stage, allowed] of [
          ['wet', ['leave']],
          ['setting', ['leave']],
          ['dry-to-touch', ['leave', 'wait']],
        ] as const) {
          const walked = actionFor(
            'cloudy-film',
            { stage, family, 'base-tone': tone },
            { 'lines-follow-sanding': 'no', 'dry-over-a-day': 'no' },
          );
          expect(allowed, `${family} over ${tone} at ${stage}`).toContain(walked.action.do);
        }
  });

  it('15 and 16: satin haze over dark paint is cured by stirring well and a coat with a dollop of the base color', () => {
    const walked = actionFor(
      'cloudy-film',
      {
        stage: 'recoatable',
        family: 'water-based',
        sheen: 'satin',
        'base-tone': 'dark',
        base: 'latex-paint',
        'hours-since-coat': 30,
      },
      { 'lines-follow-sanding': 'no', 'worst-where-thick': 'no', 'stirred-to-the-bottom': 'no' },
    );
    expect(remediesOf(walked)).toEqual(['tinted-last-coat']);
    const { steps } = known.get('remedy', 'tinted-last-coat');
    const tint = steps.findIndex((step) => step.kind === 'mix' && step.what === 'tint');
    const stir = steps.findIndex((step) => step.kind === 'mix' && step.what === 'stir');
    const coat = steps.findIndex((step) => step.kind === 'coat' && step.product === 'tinted-same');
    expect(steps.findIndex((step) => step.kind === 'sand')).toBeLessThan(stir);
    expect(stir).toBeLessThan(tint);
    expect(tint).toBeLessThan(coat);
    expect(steps[stir]?.say).toMatch(/several minutes/);
    expect(steps[tint]?.say).toMatch(/second (cup|container)/);
    expect(steps.slice(coat).some((step) => /too light while wet/.test(step.say))).toBe(true);
  });

  it('18: a roller with water left in it is the cause where bubbles begin at each load', () => {
    const walked = actionFor(
      'bubbles',
      { stage: 'recoatable', family: 'water-based', applicator: 'roller' },
      {
        'drew-back': 'no',
        'there-while-coating': 'yes',
        'worst-at-fresh-loads': 'yes',
        'tool-was-damp': 'yes',
      },
    );
    expect(remediesOf(walked)).toEqual(['change-tool-and-recoat']);
  });

  it('23: a pet hair is taken out dry, smoothed and coated over', () => {
    const walked = actionFor(
      'hairs-and-dust',
      { stage: 'recoatable', family: 'water-based' },
      { 'matches-the-tool': 'no', 'thread-shaped': 'yes', 'seen-at-arms-length': 'yes' },
    );
    expect(remediesOf(walked)).toEqual(['shave-flush-and-recoat']);
  });

  it('25: what is not seen from where a buyer stands is left as it is', () => {
    expect(unseenIsLeft(known)).toEqual([]);
  });
});
