/**
 * What stands beside the steps of a repair, by a plain reading written here again: what is asked at which step, and what
 * repairs that are not told apart begin with.
 */
import { describe, expect, it } from 'vitest';
import { factsIn } from '#engine/case/condition.ts';
import { asksOf, disturbsOldFilm, emptyCase, possible, resolve, withFact } from '#engine/index.ts';
import { hazardRows } from '#engine/rules/hazards.ts';
import { actionKey, stepsOfAct } from '#engine/walk/act.ts';
import { sharedSteps } from '#engine/walk/shared-steps.ts';
import { known as real } from '../../content/real/knowledge.ts';
import { defect, known, question, remedy, rule } from '../small.ts';

describe('what is asked beside the steps of a repair', () => {
  it('is each fact that a stop or a caution of care hangs on, or that lets a step give way, at its first step', () => {
    for (const { id, steps } of real.remedies) {
      const met = new Set<string>();
      const wanted = steps.flatMap((step, at) => {
        const hazards = new Map<string, string[]>();
        for (const { hazard, when } of hazardRows(step))
          hazards.set(hazard, [
            ...(hazards.get(hazard) ?? []),
            ...(when ? [...factsIn(when)].map(({ fact }) => fact) : []),
          ]);
        const facts = new Set<string>();
        for (const one of real.rules) {
          const own = one.hazards.filter((hazard) => hazards.has(hazard));
          if (!own.length || (one.kind !== 'stop' && (one.kind !== 'caution' || one.level === 'note')))
            continue;
          for (const hazard of own) for (const fact of hazards.get(hazard) ?? []) facts.add(fact);
          if (one.when) for (const { fact } of factsIn(one.when)) facts.add(fact);
        }
        if (step.except) for (const { fact } of factsIn(step.except)) facts.add(fact);
        const fresh = [...facts].filter((fact) => !met.has(fact));
        for (const fact of fresh) met.add(fact);
        return fresh.length ? [[at, fresh.sort()] as const] : [];
      });
      const found = asksOf(real, id, resolve(real, id, emptyCase()));
      // Steps that are left out of an empty case ask nothing, so only what is there is compared.
      const there = new Set(resolve(real, id, emptyCase()).map(({ at }) => at));
      if (there.size === steps.length)
        expect([id, [...found].map(([at, facts]) => [at, [...facts].sort()])]).toEqual([id, wanted]);
    }
  });

  it('of a flaw is whether any of its ways breaks into an older layer', () => {
    const answers = real.defects.map(({ id }) => {
      const wanted = possible(real, emptyCase(), id).leaves.some(
        (leaf) =>
          'remedy' in leaf &&
          real
            .get('remedy', leaf.remedy)
            .steps.some((step) =>
              hazardRows(step).some(({ hazard }) => hazard === 'old-film' || hazard === 'old-film-in-reach'),
            ),
      );
      expect([id, disturbsOldFilm(real, id)]).toEqual([id, wanted]);
      return wanted;
    });
    expect(answers).toContain(true);
    const mild = known(
      remedy('look-only'),
      remedy('fine', {}, { steps: [{ kind: 'sand', grit: 600, say: 'Dull it a little.' }] }),
      remedy('coarse', {}, { steps: [{ kind: 'sand', grit: 120, say: 'Sand it level.' }] }),
      defect('none', { remedy: 'look-only' }),
      defect('in-reach', { remedy: 'fine' }),
      defect('through', { remedy: 'coarse' }),
      defect('good', { leave: 'It is good as it is.' }),
    );
    expect(['none', 'in-reach', 'through', 'good'].map((id) => disturbsOldFilm(mild, id))).toEqual([
      false,
      true,
      true,
      false,
    ]);
  });

  it('keeps to rules that a step can call for: notes are told and not asked about', () => {
    const asks = (level: string, kind = 'caution') => {
      const one = known(
        rule('dust', {
          kind,
          level,
          hazards: ['dust'],
          when: { piece: 'crib' },
          ...(kind === 'stop' && { open: 'When it is settled.' }),
        }),
        remedy(
          'a',
          {},
          {
            steps: [
              { kind: 'look', say: 'Look at it first.' },
              { kind: 'sand', grit: 400, say: 'Dull it a little.' },
            ],
          },
        ),
        defect('flaw', { remedy: 'a' }),
      );
      return [...asksOf(one, 'a', resolve(one, 'a', emptyCase()))];
    };
    expect(asks('care')).toEqual([[1, ['piece']]]);
    expect(asks('stop', 'stop')).toEqual([[1, ['piece']]]);
    expect(asks('note')).toEqual([]);
  });
});

describe('what repairs begin with alike', () => {
  const sand = (grit: number, say = 'Sand it level by hand.', more = {}) => ({
    kind: 'sand',
    grit,
    say,
    ...more,
  });
  const wipe = { kind: 'wipe', with: 'dry-cloth', say: 'Wipe the dust off.' };
  const wait = { kind: 'wait', hours: [1, 2], say: 'Let it dry an hour.' };
  const coat = { kind: 'coat', product: 'same', say: 'Lay one thin coat.' };
  const strip = { kind: 'strip', with: 'stripper', say: 'Take all of it off.' };
  const begins = (
    first: readonly object[],
    second: readonly object[],
    on = emptyCase(),
    families: 'wax'[] = [],
  ) => {
    const of = known(
      question('one'),
      remedy('a', {}, { steps: first }),
      remedy('b', {}, { steps: second }),
      defect('flaw', { ask: 'one', yes: { remedy: 'a' }, no: { remedy: 'b' } }),
    );
    return sharedSteps(of, on, possible(of, emptyCase(), 'flaw').leaves, families);
  };
  it('is what hands do the same, whatever the words', () => {
    const other = sand(320, 'Rub it flat, slowly.', { 'worked-if': 'It is flat all over.', does: ['dust'] });
    expect(begins([sand(320), wipe, strip], [other, wipe, wait])).toEqual({ remedy: 'a', at: [0, 1] });
    expect(begins([sand(320), wipe], [sand(320), wipe])).toEqual({ remedy: 'a', at: [0, 1] });
  });
  it('ends where hands differ, where one has no more to do, and before a coat', () => {
    expect(begins([sand(320), wipe], [sand(400), wipe])).toBeUndefined();
    expect(begins([sand(320), wipe], [sand(320), strip])).toEqual({ remedy: 'a', at: [0] });
    expect(begins([sand(320), wipe], [sand(320)])).toEqual({ remedy: 'a', at: [0] });
    expect(begins([sand(320), coat, wipe], [sand(320), coat, wipe])).toEqual({ remedy: 'a', at: [0] });
    expect(begins([coat], [coat])).toBeUndefined();
  });
  it('is the same whatever the order in which the fields of a step are written', () => {
    const steps = { a: [sand(320), wipe], b: [{ say: 'Sand it.', grit: 320, kind: 'sand' }, wipe] };
    const bare = {
      get: (_: string, id: 'a' | 'b') => ({ steps: steps[id] }),
      has: () => false,
    } as never;
    const leaves = ['a', 'b'].map((id) => ({ remedy: id, of: 'flaw' })) as never;
    expect(sharedSteps(bare, emptyCase(), leaves, [])).toEqual({ remedy: 'a', at: [0, 1] });
  });
  it('is nothing where only waiting or looking is shared', () => {
    expect(begins([wait, sand(320)], [wait, strip])).toBeUndefined();
    expect(
      begins(
        [{ kind: 'look', say: 'Look at it closely.' }, sand(320)],
        [{ kind: 'look', say: 'Look at it closely.' }, strip],
      ),
    ).toBeUndefined();
    expect(begins([wait, sand(320), strip], [wait, sand(320), wipe])).toEqual({ remedy: 'a', at: [0, 1] });
  });
  it('passes over steps that are not taken here, each at its own place', () => {
    const shellac = sand(600, 'Dull shellac a little.', { when: { family: 'shellac' } });
    const waxed = withFact(emptyCase(), 'family', 'wax');
    expect(begins([shellac, sand(320), strip], [sand(320), wipe], waxed)).toEqual({ remedy: 'a', at: [1] });
    expect(begins([shellac, sand(320), strip], [sand(320), wipe])).toBeUndefined();
    expect(begins([shellac, sand(320), strip], [sand(320), wipe], emptyCase(), ['wax'])).toEqual({
      remedy: 'a',
      at: [1],
    });
  });
  it('is nothing where one of them is to leave it', () => {
    const of = known(
      question('one'),
      remedy('a', {}, { steps: [sand(320)] }),
      defect('flaw', { ask: 'one', yes: { remedy: 'a' }, no: { leave: 'It is good as it is.' } }),
    );
    const { leaves } = possible(of, emptyCase(), 'flaw');
    expect(sharedSteps(of, emptyCase(), leaves, [])).toBeUndefined();
    expect(sharedSteps(of, emptyCase(), [...leaves].reverse(), [])).toBeUndefined();
    expect(sharedSteps(of, emptyCase(), [], [])).toBeUndefined();
    expect(sharedSteps(of, emptyCase(), leaves.slice(0, 1), [])).toEqual({ remedy: 'a', at: [0] });
  });
});

describe('hands before any repair begins', () => {
  const steps = (doing: string, does?: 'vapor'[]) =>
    stepsOfAct({ do: doing as 'wick', say: 'Do it now.', does }).map(({ kind, ...one }) => [
      kind,
      'with' in one ? one.with : one.does,
    ]);
  it('are steps where they wipe: the cloth is full of finish, and what is washed off is thinned', () => {
    expect(steps('wash-off')).toEqual([
      ['wipe', 'dry-cloth'],
      ['wipe', 'thinner'],
    ]);
    for (const doing of ['wipe-back', 'wick']) expect(steps(doing)).toEqual([['wipe', 'dry-cloth']]);
    for (const doing of ['leave', 'wait', 'lift', 'tip-off', 'accept', 'stop'])
      expect(steps(doing)).toEqual([]);
    expect(steps('lift', ['vapor'])).toEqual([['look', ['vapor']]]);
    for (const { kind, ...wiped } of stepsOfAct({ do: 'wick', say: 'Do it now.' }))
      expect([kind, 'of' in wiped && wiped.of]).toEqual(['wipe', 'same']);
  });
  it('are the same where the word is the same, but a repair or a stop only within one remedy', () => {
    const leaf = (id: string) => ({ remedy: id, of: 'flaw' }) as never;
    const good = { leave: 'It is good.', of: 'flaw' } as never;
    for (const doing of ['leave', 'wait', 'lift', 'accept'] as const) {
      expect(actionKey({ do: doing }, leaf('a'))).toBe(actionKey({ do: doing }, leaf('b')));
      expect(actionKey({ do: doing }, leaf('a'))).toBe(actionKey({ do: doing }, good));
    }
    for (const doing of ['repair', 'stop'] as const) {
      expect(actionKey({ do: doing }, leaf('a'))).not.toBe(actionKey({ do: doing }, leaf('b')));
      expect(actionKey({ do: doing }, leaf('a'))).toBe(actionKey({ do: doing }, leaf('a')));
      expect(actionKey({ do: doing }, good)).not.toBe(actionKey({ do: doing }, leaf('a')));
    }
    expect(actionKey({ do: 'repair' }, leaf('a'))).not.toBe(actionKey({ do: 'stop' }, leaf('a')));
  });
});
