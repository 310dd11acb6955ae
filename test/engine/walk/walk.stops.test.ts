/**
 * Every stop of the real trees on a film that is wet, may be touched or can be worked on: what is decided there, beside
 * a plain reading of its ends, written here again. Hands are taken at their words: one of several causes is repaired for
 * all of them only where each asks for the same.
 */
import { describe, expect, it } from 'vitest';
import {
  type Case,
  emptyCase,
  possible,
  reached,
  type TreeNode,
  withAnswer,
  withFact,
} from '#engine/index.ts';
import type { Stage } from '#engine/model/stage.ts';
import { doingOf } from '#engine/walk/act.ts';
import { decide, walk } from '#engine/walk/walk.ts';
import { known } from '../../content/real/knowledge.ts';

/** So many stops of a flaw at a stage, the first ones: deeper ones are alike. */
const MOST = 24;
const ANSWERS = ['yes', 'no', 'unsure'] as const;
type Stop = { readonly on: Case; readonly stage: Stage | undefined; readonly walked: TreeNode['walked'] };
const stopsOf = (defect: string, stage: Stage | undefined): readonly Stop[] => {
  const stops: Stop[] = [];
  const waiting = [stage ? withFact(emptyCase(), 'stage', stage) : emptyCase()];
  for (let on = waiting.shift(); on && stops.length < MOST; on = waiting.shift()) {
    const walked = walk(known, on, defect, { forCause: !stage });
    stops.push({ on, stage, walked });
    if (walked.kind !== 'question') continue;
    for (const answer of ANSWERS) waiting.push(withAnswer(on, walked.question, answer));
  }
  return stops;
};
const STAGES = [undefined, 'wet', 'dry-to-touch', 'cured'] as const;
const found = new Map<string, readonly Stop[]>();
const all = (defect: string): readonly Stop[] => {
  const stops = found.get(defect) ?? STAGES.flatMap((stage) => stopsOf(defect, stage));
  found.set(defect, stops);
  return stops;
};

const WHATEVER_THE_FILM = ['leave', 'wait', 'accept', 'stop', 'repair'];

describe.each(known.defects.map(({ id }) => id))('%s', (defect) => {
  it('is decided as it is walked', () => {
    for (const { on, stage, walked } of all(defect)) {
      const decided = decide(known, on, defect, { forCause: !stage });
      const { kind, leaves, families } = decided;
      expect({ kind, leaves, families }).toEqual({
        kind: walked.kind,
        leaves: walked.leaves,
        families: walked.families,
      });
      const ids = ({ fired }: Pick<typeof decided, 'fired'>) =>
        Object.values(fired).flatMap((rules: readonly { readonly id: string }[]) =>
          rules.map(({ id }) => id),
        );
      expect(ids(decided)).toEqual(ids(walked));
      if (decided.kind === 'question' && walked.kind === 'question')
        expect([decided.question, decided.of]).toEqual([walked.question, walked.of]);
      if (decided.kind === 'outcome' && walked.kind === 'outcome') {
        expect(decided.action.do).toBe(walked.action.do);
        expect(decided.shared).toEqual(walked.shared);
      }
    }
  });

  it('ends in what all its causes ask for, in a beginning that repairs share, or holds off', () => {
    for (const { on, stage, walked } of all(defect)) {
      expect(walked.leaves).toEqual(possible(known, on, defect).leaves);
      if (walked.kind !== 'outcome' || !stage) continue;
      const asked = [...new Set(walked.leaves.map((leaf) => doingOf(known, on, leaf, stage).do))];
      expect(walked.certain).toBe(walked.leaves.length === 1);
      if (walked.alike) expect([walked.action.do]).toEqual(asked);
      else if (walked.shared) {
        expect(asked).toEqual(['repair']);
        expect(walked.action.do).toBe('repair');
        expect(walked.leaves.some((leaf) => 'remedy' in leaf && leaf.remedy === walked.shared?.remedy)).toBe(
          true,
        );
      } else expect(walked.action.do).toBe('leave');
      // Several things to do are never done on a guess, and a film that is wet or has just a skin is not worked on.
      if (asked.length > 1) expect(['leave', 'repair']).toContain(walked.action.do);
      if (asked.length > 1 && walked.action.do === 'repair') expect(walked.shared).toBeDefined();
      if (stage === 'wet') expect(walked.action.do).not.toBe('repair');
    }
  });

  it('names a check that decides where she could not tell, and when it harms nothing', () => {
    for (const { on, stage, walked } of all(defect)) {
      if (walked.kind !== 'outcome' && walked.kind !== 'cause') continue;
      const { check, unsureAt, leaves } = walked;
      if (unsureAt) expect(check?.question).toBe(unsureAt);
      if (!check) continue;
      const { met } = possible(known, on, defect);
      const one = met.find(({ question }) => question === check.question);
      expect(one?.answer === undefined || one.answer === 'unsure').toBe(true);
      const safeFrom = known.get('question', check.question)['safe-from'];
      expect(check.from).toBe(reached(stage ?? 'wet', safeFrom) ? undefined : safeFrom);
      const onlyWet = leaves.some(
        (leaf) => stage === 'wet' && !WHATEVER_THE_FILM.includes(doingOf(known, on, leaf, stage).do),
      );
      expect(check.passes).toBe(onlyWet);
      for (const answer of ['yes', 'no'] as const) {
        const left = possible(known, withAnswer(on, check.question, answer), defect).leaves;
        expect(check[answer].leaves).toEqual(left);
        const asked = stage && new Set(left.map((leaf) => doingOf(known, on, leaf, stage).do));
        if (check[answer].action) expect([...(asked ?? [])]).toEqual([check[answer].action?.do]);
        else if (asked?.size === 1) expect(left.length).toBeGreaterThan(1);
      }
    }
  });

  it('tells what it rests on: the stage first, then each answer once, as it was given', () => {
    for (const { on, stage, walked } of all(defect)) {
      const facts = walked.trace.map(({ fact }) => fact);
      expect(new Set(facts).size).toBe(facts.length);
      if (stage) expect(walked.trace[0]).toEqual({ fact: 'stage', value: stage, how: 'told' });
      for (const { fact, value, how } of walked.trace) {
        if (how === 'follows') expect(on[fact]).toBeUndefined();
        else expect({ value, how }).toEqual(on[fact]);
      }
      const { met } = possible(known, on, defect);
      for (const { question, answer } of met) if (answer) expect(facts).toContain(question);
    }
  });
});
