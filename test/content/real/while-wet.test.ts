/**
 * A film that is wet leaves minutes, so no question holds up what hands may do on it. That one light stroke is over once
 * the tool has moved on is common practice, no source.
 */
import { expect, it } from 'vitest';
import { walk } from '#engine/index.ts';
import { whileWet } from '#engine/steps/while-wet.ts';
import { known } from './knowledge.ts';
import { told } from './told.ts';

it('finds what a wet film allows in every repair that touches one, and nothing where hands stay off', () => {
  const touching = known.remedies.filter((remedy) => whileWet(remedy));
  const strokes = ['tip-off', 'lift', 'wick', 'wash-off', 'wipe-back'];
  expect(touching.length).toBeGreaterThan(15);
  for (const { id, now } of known.remedies)
    expect(
      touching.some((one) => one.id === id),
      id,
    ).toBe(strokes.includes(now.wet.do));
});

it('holds back what would reach an older layer', () => {
  const [any] = known.remedies;
  if (!any) throw new Error('no remedy');
  const wet = { do: 'lift', say: 'Cut it out of the film below.', not: 'No more.' } as const;
  const withWet = (does?: 'old-film' | 'heat') => ({
    now: { ...any.now, wet: { ...wet, ...(does && { does: [does] }) } },
  });
  expect(whileWet(withWet())?.say).toBe(wet.say);
  expect(whileWet(withWet('heat'))?.say).toBe(wet.say);
  expect(whileWet(withWet('old-film'))).toBeUndefined();
});

it('says of foam that the stroke is one, when it is over, and that hands are off then', () => {
  const { now } = known.get('remedy', 'tip-off-the-foam');
  expect(now.wet.say).toMatch(/^One light stroke .* first two minutes.* hands off/);
});

it('asks a fresh coat with bubbles no more than keeps a brush off craters, which it would spread', () => {
  const askedOf = (facts: Record<string, string>) => {
    const asked: string[] = [];
    let on = told({ stage: 'wet', ...facts });
    for (;;) {
      const walked = walk(known, on, 'bubbles');
      if (walked.kind !== 'question') return { asked, walked };
      asked.push(walked.question);
      const answer = walked.question === 'just-laid' ? 'yes' : 'no';
      on = { ...on, [walked.question]: { value: answer, how: 'answered' } };
    }
  };
  expect(askedOf({}).asked).toEqual(['just-laid', 'was-sprayed', 'drew-back']);
  const brushed = askedOf({ applicator: 'brush' });
  expect(brushed.asked).toEqual(['just-laid', 'drew-back']);
  const sprayed = askedOf({ applicator: 'spray-gun' });
  expect(sprayed.asked).toEqual(['just-laid']);
  expect(sprayed.walked.kind === 'outcome' && sprayed.walked.action.do).toBe('leave');
  expect(brushed.walked.kind === 'outcome' && brushed.walked.action.do).toBe('tip-off');
});

it('begins with when the bubbles came once they are dry, and watches no fresh stroke there', () => {
  const walked = walk(known, told({ stage: 'recoatable' }), 'bubbles');
  expect(walked.kind === 'question' && walked.question).toBe('there-while-coating');
  expect(known.get('question', 'drew-back').how).not.toMatch(/fresh stroke/);
});
