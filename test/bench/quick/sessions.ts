/** Cases at random, the same at each run: what every contestant is asked. */
import { rulesOf, treesOf } from '#engine/compiled/compiled.ts';
import { codesOf } from '#engine/compiled/fact-codes.ts';
import { NO, OPEN, YES } from '#engine/compiled/trees.ts';
import type { Case, Knowledge } from '#engine/index.ts';
import { chanceFrom } from '../chance.ts';
import type { Answers, Facts } from './peers.ts';

const SESSIONS = 1024;
const CANT_TELL = 0.1;
const TOLD = 0.4;

export const sessionsOf = (known: Knowledge) => {
  const trees = treesOf(known);
  const table = rulesOf(known);
  const { chance, pick } = chanceFrom(20_261_128);
  return Array.from({ length: SESSIONS }, () => {
    const defect = pick(known.defects).id;
    const answers: Answers = Object.fromEntries(
      trees.questions.map((question) => [question, pick(['yes', 'no'])]),
    );
    const unsure: Answers = Object.fromEntries(
      Object.entries(answers).map(([question, answer]) => [
        question,
        chance() < CANT_TELL ? 'unsure' : answer,
      ]),
    );
    const code = (of: Answers) =>
      Uint8Array.from(trees.questions, (question) =>
        of[question] === 'yes' ? YES : of[question] === 'no' ? NO : OPEN,
      );
    const facts: Facts = Object.fromEntries(
      table.facts.flatMap(({ name, examples, bounds }) => {
        const value = pick(bounds.length ? examples.filter((one) => typeof one === 'number') : examples);
        return chance() < TOLD && value !== undefined ? [[name, value]] : [];
      }),
    );
    const on: Case = Object.fromEntries(
      Object.entries(unsure).map(([question, value]) => [question, { value, how: 'answered' as const }]),
    );
    return {
      defect,
      root: trees.roots.get(defect) ?? Number.NaN,
      answers,
      unsure,
      facts,
      on,
      codes: code(answers),
      codesUnsure: code(unsure),
      factCodes: codesOf(table.facts, (name) => facts[name]),
    };
  });
};

export type Session = ReturnType<typeof sessionsOf>[number];
