import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  actOf,
  type Case,
  emptyCase,
  isAsk,
  type Knowledge,
  nodesOf,
  possible,
  STAGES,
  type Stage,
  visits,
  walk,
  withAnswer,
  withFact,
} from '#engine/index.ts';
import type { QuestionId } from '#engine/model/ids.ts';
import { prove } from '#engine/prove/prove.ts';
import { act, defect, known, question, remedy } from '../small.ts';

const QUESTIONS = ['qa', 'qb', 'qc', 'qd', 'qe', 'qf'];
const REMEDIES = ['ra', 'rb', 'rc', 'rd'];

type Tree = { ask: string; yes: Tree; no: Tree } | { remedy: string } | { leave: string };

/** Trees in which no path asks twice. */
const treeOf = (left: readonly string[], depth: number): fc.Arbitrary<Tree> => {
  const leaf = fc.oneof(
    fc.constantFrom(...REMEDIES).map((id): Tree => ({ remedy: id })),
    fc.constant<Tree>({ leave: 'It is good as it is.' }),
  );
  if (!left.length || depth === 0) return leaf;
  const ask = fc.constantFrom(...left).chain((id) => {
    const rest = left.filter((other) => other !== id);
    return fc
      .tuple(treeOf(rest, depth - 1), treeOf(rest, depth - 1))
      .map(([yes, no]): Tree => ({ ask: id, yes, no }));
  });
  return fc.oneof({ arbitrary: leaf, weight: 1 }, { arbitrary: ask, weight: 3 });
};

const wet = fc.constantFrom('leave', 'lift', 'tip-off', 'wash-off');
const dry = fc.constantFrom('wait', 'leave', 'accept');
const late = fc.constantFrom('repair', 'accept', 'leave');
const nows = fc.record({ wet, dry, recoatable: late, cured: late });

const knowledge = fc
  .tuple(
    treeOf(QUESTIONS, 5),
    fc.array(nows, { minLength: 4, maxLength: 4 }),
    fc.array(fc.constantFrom(...STAGES), { minLength: 6, maxLength: 6 }),
  )
  .map(
    ([tree, acts, safe]): Knowledge =>
      known(
        ...QUESTIONS.map((id, index) => question(id, { 'safe-from': safe[index] })),
        ...REMEDIES.map((id, index) => {
          const now = acts[index] as { wet: string; dry: string; recoatable: string; cured: string };
          return remedy(id, {
            wet: act(now.wet),
            'dry-to-touch': act(now.dry),
            recoatable: act(now.recoatable, `Now do ${id}, with care.`),
            cured: act(now.cured, `Now do ${id}, with care.`),
          });
        }),
        defect('flaw', tree),
      ),
  );

const stages = fc.constantFrom(...STAGES);
const answers = fc.array(fc.constantFrom('yes', 'no', 'unsure'), { minLength: 8, maxLength: 8 });

/** Walks to the end with the given answers; returns the questions asked and where it ended. */
const toTheEnd = (k: Knowledge, start: Case, given: readonly string[], forCause: boolean) => {
  let on = start;
  const asked: string[] = [];
  for (let step = 0; step <= QUESTIONS.length + 1; step++) {
    const walked = walk(k, on, 'flaw', { forCause });
    if (walked.kind !== 'question') return { asked, walked, on };
    asked.push(walked.question);
    on = withAnswer(on, walked.question as QuestionId, (given[step] ?? 'no') as 'yes' | 'no' | 'unsure');
  }
  throw new Error(`no end after ${asked.join(', ')}`);
};

const at = (stage: Stage) => withFact(emptyCase(), 'stage', stage);

describe('walk, over random knowledge', () => {
  it('always ends and never asks a question twice', () => {
    fc.assert(
      fc.property(knowledge, stages, answers, fc.boolean(), (k, stage, given, forCause) => {
        const { asked, walked } = toTheEnd(k, at(stage), given, forCause);
        expect(new Set(asked).size).toBe(asked.length);
        expect(walked.kind).toBe('outcome');
        expect(walked.leaves.length).toBeGreaterThan(0);
      }),
      { numRuns: 400 },
    );
  });

  it('asks on after a doubt only where some answers still settle what hands do', () => {
    const canAgree = (k: Knowledge, on: Case, stage: Stage): boolean => {
      const { leaves, met } = possible(k, on, 'flaw');
      const hands = leaves.map((leaf) => {
        const { do: doing } = actOf(k, on, leaf, stage);
        return doing === 'repair' && 'remedy' in leaf ? leaf.remedy : doing;
      });
      if (new Set(hands).size === 1) return true;
      const next = met.findLast(({ open }) => open);
      return (
        next !== undefined &&
        (['yes', 'no'] as const).some((answer) => canAgree(k, withAnswer(on, next.question, answer), stage))
      );
    };
    fc.assert(
      fc.property(knowledge, stages, answers, (k, stage, given) => {
        let on: Case = at(stage);
        for (const answer of given) {
          const walked = walk(k, on, 'flaw');
          if (walked.kind !== 'question') return;
          if (walked.doubted.length) expect(canAgree(k, on, stage)).toBe(true);
          on = withAnswer(on, walked.question as QuestionId, answer as 'yes' | 'no' | 'unsure');
        }
      }),
      { numRuns: 400 },
    );
  });

  it('never changes the action by stopping early', () => {
    fc.assert(
      fc.property(knowledge, stages, answers, (k, stage, given) => {
        const sure = given.map((answer) => (answer === 'unsure' ? 'yes' : answer));
        const early = toTheEnd(k, at(stage), sure, false);
        const full = toTheEnd(k, early.on, sure, true);
        if (early.walked.kind !== 'outcome' || full.walked.kind !== 'outcome') throw new Error('no outcome');
        if (early.walked.leaves.length > 1 && early.walked.goOn === undefined) return; // what can't be checked on this film
        expect(full.walked.action.do).toBe(early.walked.action.do);
      }),
      { numRuns: 400 },
    );
  });

  it('asks nothing where every possible end has the same act', () => {
    fc.assert(
      fc.property(knowledge, stages, (k, stage) => {
        const leaves = [...visits(k.get('defect', 'flaw').tree)].filter(({ branch }) => !isAsk(branch));
        const acts = new Set(
          leaves.map(
            ({ branch }) => actOf(k, at(stage), { ...(branch as { remedy: never }), of: 'flaw' }, stage).do,
          ),
        );
        const walked = walk(k, at(stage), 'flaw');
        if (acts.size === 1 && !acts.has('repair')) expect(walked.kind).toBe('outcome');
      }),
    );
  });

  it('never lets hands on a setting film', () => {
    fc.assert(
      fc.property(knowledge, (k) => {
        for (const node of nodesOf(k, 'flaw'))
          if (node.stage === 'setting')
            expect(node.walked).toMatchObject({ kind: 'outcome', action: { do: 'leave' } });
      }),
      { numRuns: 60 },
    );
  });

  it('finds nothing twice on a path to report in trees made without repeats', () => {
    fc.assert(
      fc.property(knowledge, (k) => {
        expect(prove(k).filter((issue) => issue.code === 'asked-twice')).toEqual([]);
      }),
      { numRuns: 60 },
    );
  });
});
