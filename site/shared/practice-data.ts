import { clockProduct } from '#engine/clock.ts';
import { type AnyEntry, type Knowledge, STAGES } from '#engine/index.ts';
import type { PracticeWords } from '#engine/model/practice.ts';

/** What a phone needs to deal practice boards and to judge them: all but claims, other names and the words of steps. */
export const practiceData = (known: Knowledge, words: PracticeWords) => ({
  words,
  defects: known.defects.map(
    ({ id, name, summary, often, families, looks, signs, tree, boards, ...flaw }) => ({
      id,
      name,
      summary,
      often,
      families,
      looks,
      signs,
      tree,
      // What a picture is of must not stand beside it.
      boards: boards.map((board) => ({ ...board, alt: '' })),
      'look-alikes': flaw['look-alikes'],
    }),
  ),
  questions: known.questions.map(
    ({ id, ask, by, effort, usually, yes, no, known: answers, boards, ...question }) => ({
      id,
      ask,
      by,
      effort,
      usually,
      yes,
      no,
      known: answers,
      'safe-from': question['safe-from'],
      boards: boards && {
        yes: { ...boards.yes, alt: '' },
        no: { ...boards.no, alt: '' },
      },
    }),
  ),
  remedies: known.remedies.map(({ id, name, summary, now, steps }) => ({
    id,
    name,
    summary,
    now: Object.fromEntries(
      [...STAGES, 'overdue' as const].flatMap((standing) => {
        const act = now[standing];
        return act ? [[standing, act]] : [];
      }),
    ),
    steps: steps.map((step) => ({ ...step, say: '', 'worked-if': undefined })),
  })),
  rules: known.rules.map(({ id, kind, level, title, say, when, hazards, open, sure, always, ...rule }) => ({
    id,
    kind,
    level,
    title,
    say,
    when,
    hazards,
    open,
    sure,
    always,
    'unless-known-no': rule['unless-known-no'],
  })),
  doings: known.doings.map(({ id, verdict, say, not, again }) => ({ id, verdict, say, not, again })),
  products: known.products.map((product) => ({ id: product.id, ...clockProduct(product) })),
});
export type PracticeData = ReturnType<typeof practiceData>;

/** What was sent, as entries that a practice board is dealt from. */
export const practiceEntries = (data: PracticeData): readonly AnyEntry[] =>
  [
    ...data.defects.map((one) => ({ ...one, kindOf: 'defect' })),
    ...data.questions.map((one) => ({ ...one, kindOf: 'question' })),
    ...data.remedies.map((one) => ({ ...one, kindOf: 'remedy' })),
    ...data.rules.map((one) => ({ ...one, kindOf: 'rule' })),
    ...data.doings.map((one) => ({ ...one, kindOf: 'doing' })),
    ...data.products.map((one) => ({ ...one, kindOf: 'product' })),
  ] as unknown as AnyEntry[];
