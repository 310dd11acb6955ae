import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { type Case, emptyCase, withFact } from '#engine/index.ts';
import { FACTS } from '#engine/model/facts.ts';
import { Step } from '#engine/model/step.ts';
import { byHand } from '#engine/steps/hands.ts';
import { readHands } from '../../../content/tools/hands.ts';
import { known } from '../../content/real/knowledge.ts';

const hands = readHands(known, fileURLToPath(new URL('../../..', import.meta.url)));
const coat = Step.parse({ kind: 'coat', product: 'same', say: 'Lay one thin coat.' });
const sand = Step.parse({
  kind: 'sand',
  grit: 320,
  say: 'Sand it lightly.',
  'worked-if': 'It is dull all over.',
});
const how = (on: Case, step = coat) => byHand(known, hands, on, step).how;

describe('how a step is done with what was told', () => {
  it('is told for every tool that lays a coat, and never names another tool', () => {
    const others = {
      brush: /gun|roller|spray/i,
      roller: /gun/i,
      'spray-gun': /brush|roller/i,
      aerosol: /brush|roller|gun/i,
    };
    for (const applicator of FACTS.applicator.values) {
      const told = how(withFact(emptyCase(), 'applicator', applicator));
      expect(told, applicator).toBeDefined();
      const wrong = others[applicator as keyof typeof others];
      if (wrong) expect(told).not.toMatch(wrong);
    }
  });

  it('is not told where nothing is known of it, nor of a coat that is surely laid otherwise', () => {
    expect(how(emptyCase())).toBeUndefined();
    const sprayed = Step.parse({ kind: 'coat', product: 'same', by: 'spray', say: 'Spray one light coat.' });
    expect(how(withFact(emptyCase(), 'applicator', 'brush'), sprayed)).toBeUndefined();
    const shellac = Step.parse({ kind: 'coat', product: 'dewaxed-shellac', say: 'Seal it thinly.' });
    expect(how(withFact(emptyCase(), 'applicator', 'aerosol'), shellac)).toBeUndefined();
  });

  it('has a tin taken for what is laid by hand, where she has a spray can, and no foam in what dissolves it', () => {
    const spot = Step.parse({
      kind: 'coat',
      product: 'same',
      by: 'hand',
      say: 'Fill it in with a small brush.',
    });
    expect(how(withFact(emptyCase(), 'applicator', 'aerosol'), spot)).toMatch(/from a tin/);
    expect(how(withFact(emptyCase(), 'applicator', 'brush'), spot)).toBeUndefined();
    const foam = withFact(emptyCase(), 'applicator', 'sponge');
    expect(how(withFact(foam, 'family', 'lacquer'))).toMatch(/dissolves/);
    expect(how(withFact(foam, 'family', 'water-based'))).toMatch(/^With foam/);
  });

  it('tells shellac by its own row, and sanding by what lies below', () => {
    const brushed = withFact(emptyCase(), 'applicator', 'brush');
    expect(how(withFact(brushed, 'family', 'shellac'))).not.toBe(
      how(withFact(brushed, 'family', 'oil-based')),
    );
    expect(how(withFact(emptyCase(), 'base', 'chalk-paint'), sand)).toMatch(/soft/);
  });

  it('says when a step is done, but where it says so itself', () => {
    const slow = withFact(emptyCase(), 'family', 'oil-based');
    expect(byHand(known, hands, slow, coat).done).toMatch(/wet all over/);
    expect(byHand(known, hands, slow, coat).ifNot).toBeDefined();
    expect(byHand(known, hands, emptyCase(), sand).done).toBeUndefined();
  });

  it('tells nobody to go over what sets in seconds, to wet a primer all over, or to try a wait with paper', () => {
    expect(byHand(known, hands, withFact(emptyCase(), 'family', 'shellac'), coat).done).toBeUndefined();
    const slow = withFact(emptyCase(), 'family', 'oil-based');
    const primer = Step.parse({ kind: 'coat', product: 'dewaxed-shellac', say: 'Seal it thinly.' });
    expect(byHand(known, hands, slow, primer)).toEqual({});
    const wait = Step.parse({
      kind: 'wait',
      until: 'recoatable',
      hours: [12, 24],
      say: 'Leave it overnight.',
    });
    expect(byHand(known, hands, slow, wait)).toEqual({});
  });

  it('asks no evenly dull face where only a rim or a ridge is leveled', () => {
    const level = (say: string) =>
      byHand(known, hands, emptyCase(), Step.parse({ kind: 'sand', grit: 400, say }));
    expect(level('Level the rim, and only the rim.')).toEqual({});
    expect(level('Sand until the ridges are low.')).toEqual({});
    expect(level('Smooth the rim, then scuff the whole panel.').done).toMatch(/evenly dull/);
  });
});
