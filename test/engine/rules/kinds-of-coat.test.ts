/**
 * Where the kind of top coat is not told but can only be one of some: what is warned of, by the laws of it. One kind alone
 * is as if it were told; of two, what both do is sure, what one of them does may be. Every real step, and small rules.
 */
import { describe, expect, it } from 'vitest';
import { withAnswer } from '#engine/case/case.ts';
import { type Case, emptyCase, withFact } from '#engine/index.ts';
import { FAMILIES, type Family } from '#engine/model/family.ts';
import type { QuestionId } from '#engine/model/ids.ts';
import type { Step } from '#engine/model/step.ts';
import { hazardRows, hazardsOf, surelyOf, toldBy } from '#engine/rules/hazards.ts';
import { fire, firedBefore, isHeardAlone, isOfSteps, rulesForStep } from '#engine/rules/rules.ts';
import { known as real } from '../../content/real/knowledge.ts';
import { defect, known, question, remedy, rule } from '../small.ts';

/** Each kind of step once, as its hazards tell it. */
const steps: readonly Step[] = [
  ...new Map(
    real.remedies
      .flatMap((one) => one.steps)
      .filter((step) => hazardRows(step).some(({ when }) => when))
      .map((step) => [JSON.stringify({ ...step, say: '', when: undefined }), step] as const),
  ).values(),
].slice(0, 60);
const told = (family: Family): Case => withFact(emptyCase(), 'family', family);
const idsOf = (rules: readonly { readonly id: string }[]) => rules.map(({ id }) => id);
const all = (fired: Readonly<Record<string, readonly { readonly id: string }[]>>) =>
  idsOf(Object.values(fired).flat()).sort();
const pairs = FAMILIES.flatMap((one, at) => FAMILIES.slice(at + 1).map((other) => [one, other] as const));

describe('what a step does', () => {
  it('is the same for one kind alone as where it is told', () => {
    expect(steps.length).toBeGreaterThan(20);
    for (const step of steps)
      for (const family of FAMILIES)
        expect([...hazardsOf(real, emptyCase(), step, [family])].sort()).toEqual(
          [...hazardsOf(real, told(family), step)].sort(),
        );
  });

  it('is sure where each kind surely does it, and perhaps where one of them may', () => {
    for (const step of steps.filter((_, at) => at % 3 === 0))
      for (const [one, other] of pairs) {
        const [mine, theirs] = [one, other].map((family) => hazardsOf(real, told(family), step));
        const wanted = [...new Set([...(mine?.keys() ?? []), ...(theirs?.keys() ?? [])])].map((hazard) => [
          hazard,
          mine?.get(hazard) === 'yes' && theirs?.get(hazard) === 'yes' ? 'yes' : 'unknown',
        ]);
        expect([...hazardsOf(real, emptyCase(), step, [one, other])].sort()).toEqual(wanted.sort());
      }
  });

  it('is not asked of the kinds where one is told', () => {
    for (const step of steps.slice(0, 20))
      expect([...hazardsOf(real, told('wax'), step, ['lacquer'])]).toEqual([
        ...hazardsOf(real, told('wax'), step),
      ]);
  });

  it('is told only where a can surely has it, and surely only whatever the facts', () => {
    for (const step of steps) {
      const [sure, some] = [surelyOf(step), toldBy(step)];
      for (const hazard of sure) {
        expect(some.has(hazard)).toBe(true);
        for (const family of FAMILIES) expect(hazardsOf(real, told(family), step).get(hazard)).toBe('yes');
      }
      for (const { hazard, perhaps } of hazardRows(step)) if (!perhaps) expect(some.has(hazard)).toBe(true);
    }
  });
});

describe('the rules', () => {
  it('that fire for one kind alone are those that fire where it is told', () => {
    for (const family of FAMILIES) {
      expect(all(fire(real, emptyCase(), [], [family]))).toEqual(all(fire(real, told(family), [])));
      for (const step of steps.filter((_, at) => at % 4 === 0)) {
        expect(idsOf(rulesForStep(real, emptyCase(), step, [family]))).toEqual(
          idsOf(rulesForStep(real, told(family), step)),
        );
        expect(all(fire(real, emptyCase(), [step], [family]))).toEqual(all(fire(real, told(family), [step])));
      }
    }
  });

  const small = known(
    question('is-oily', {
      known: [
        { when: { family: 'oil' }, answer: 'yes' },
        { when: { family: ['wax', 'shellac'] }, answer: 'no' },
      ],
    }),
    rule('of-oil', { when: { family: 'oil' } }),
    rule('of-oil-or-wax', { when: { family: ['oil', 'wax'] } }),
    rule('by-answer', { when: { 'is-oily': 'yes' } }),
    rule('unless-wax', { when: { not: { family: 'wax' } }, 'unless-known-no': true }),
    rule('of-dust', { hazards: ['dust'], when: { family: 'oil' } }),
    rule('of-dust-always', { hazards: ['dust'], always: true }),
    rule('of-dust-surely', { hazards: ['dust'], sure: 'yes' }),
    rule('of-vapor-perhaps', { hazards: ['vapor'], sure: 'maybe' }),
    rule('heard', { heard: ['it stings'] }),
    remedy('a'),
    defect('flaw', { ask: 'is-oily', yes: { remedy: 'a' }, no: { leave: 'It is good as it is.' } }),
  );
  const fired = (on: Case, families: readonly Family[] = [], ahead: readonly Step[] = []) =>
    all(fire(small, on, ahead, families));

  it('that hang on the kind fire where it can be no other, and one that all kinds shut out does not', () => {
    expect(fired(emptyCase())).toEqual(['of-dust-always', 'unless-wax']);
    expect(fired(emptyCase(), ['oil'])).toEqual([
      'by-answer',
      'of-dust-always',
      'of-oil',
      'of-oil-or-wax',
      'unless-wax',
    ]);
    expect(fired(emptyCase(), ['oil', 'wax'])).toEqual(['of-dust-always', 'of-oil-or-wax', 'unless-wax']);
    expect(fired(emptyCase(), ['wax'])).toEqual(['of-dust-always', 'of-oil-or-wax']);
    expect(fired(emptyCase(), ['wax', 'shellac'])).toEqual(['of-dust-always', 'unless-wax']);
    // What is told of the kind goes before what it can be.
    expect(fired(told('wax'), ['oil'])).toEqual(['of-dust-always', 'of-oil-or-wax']);
    const answered = withAnswer(emptyCase(), 'is-oily' as QuestionId, 'yes');
    expect(fired(answered, ['wax'])).toEqual(['by-answer', 'of-dust-always', 'of-oil-or-wax']);
  });

  it('of steps fire before a step that does it, surely or perhaps as they say', () => {
    const sand: Step = { kind: 'sand', grit: 120, say: 'Sand it level.' };
    const coat: Step = { kind: 'coat', product: 'same', thin: true, say: 'Lay one thin coat.' };
    expect(fired(emptyCase(), [], [sand])).toEqual(['of-dust-always', 'of-dust-surely', 'unless-wax']);
    expect(fired(emptyCase(), ['oil'], [sand])).toContain('of-dust');
    expect(fired(emptyCase(), [], [coat])).toEqual(['of-dust-always', 'of-vapor-perhaps', 'unless-wax']);
    // Shellac surely gives off vapor, so that a rule for the doubt does not fire.
    expect(fired(told('shellac'), [], [coat])).not.toContain('of-vapor-perhaps');
    expect(idsOf(rulesForStep(small, told('oil'), sand))).toEqual(['of-dust', 'of-dust-surely']);
    expect(idsOf(rulesForStep(small, told('wax'), sand))).toEqual(['of-dust-surely']);
    expect(all(firedBefore(small, emptyCase(), [new Map([['dust', 'unknown']])], []))).toEqual([
      'of-dust-always',
      'unless-wax',
    ]);
    expect(all(firedBefore(small, emptyCase(), [new Map(), new Map([['dust', 'yes']])], []))).toContain(
      'of-dust-surely',
    );
  });

  it('that a post alone calls for fire by nothing else', () => {
    const heard = small.rules.find(({ id }) => id === 'heard');
    if (!heard) throw new Error('it is there');
    expect([isHeardAlone(heard), isOfSteps(heard)]).toEqual([true, false]);
    expect(small.rules.filter(isHeardAlone).map(({ id }) => id)).toEqual(['heard']);
    expect(
      small.rules
        .filter(isOfSteps)
        .map(({ id }) => id)
        .sort(),
    ).toEqual(['of-dust', 'of-dust-surely', 'of-vapor-perhaps']);
  });

  it('stand by their kind', () => {
    const kinds = known(
      rule('halt', { kind: 'stop', level: 'stop', open: 'When it is settled.', when: { piece: 'crib' } }),
      rule('hold', { kind: 'hold', when: { piece: 'crib' } }),
      rule('mind', { when: { piece: 'crib' } }),
      rule('adjust', { kind: 'adjustment', when: { piece: 'crib' } }),
      remedy('a'),
      defect('flaw', { remedy: 'a' }),
    );
    const found = fire(kinds, withFact(emptyCase(), 'piece', 'crib'), []);
    expect([found.stops, found.holds, found.cautions, found.adjustments].map(idsOf)).toEqual([
      ['halt'],
      ['hold'],
      ['mind'],
      ['adjust'],
    ]);
  });
});
