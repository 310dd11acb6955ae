import { clockProduct } from '#engine/clock.ts';
import type { Knowledge } from '#engine/index.ts';
import type { PracticeWords } from '#engine/model/practice.ts';
import { pick } from '#engine/plain/pick.ts';
import { ruleData } from './rule-data.ts';

/** What a picture for a post is drawn with. */
type Colors = Readonly<Record<'paper' | 'ink' | 'tape' | 'cast', string>>;

// What a picture is of must not stand beside it.
const untold = <B extends object>(board: B) => ({ ...board, alt: '' });

/** What a phone needs to deal practice boards and to judge them: all but claims, other names and the words of steps. */
export const practiceData = (known: Knowledge, words: PracticeWords, { paper, ink, tape, cast }: Colors) => ({
  words,
  colors: { paper, ink, tape, cast },
  defects: known.defects.map(({ boards, ...flaw }) => ({
    ...pick(flaw, 'id', 'name', 'often', 'families', 'looks', 'signs', 'tree', 'look-alikes'),
    boards: boards.map(untold),
  })),
  questions: known.questions.map(({ boards, ...question }) => ({
    ...pick(question, 'id', 'ask', 'by', 'effort', 'usually', 'yes', 'no', 'known', 'safe-from'),
    ...(boards && { boards: { yes: untold(boards.yes), no: untold(boards.no) } }),
  })),
  remedies: known.remedies.map(({ steps, ...remedy }) => ({
    ...pick(remedy, 'id', 'name', 'summary', 'now'),
    steps: steps.map(({ 'worked-if': _, ...step }) => ({ ...step, say: '' })),
  })),
  rules: known.rules.map(ruleData),
  doings: known.doings.map((doing) => pick(doing, 'id', 'verdict', 'say', 'not', 'again')),
  products: known.products.map((product) => ({ id: product.id, ...clockProduct(product) })),
});
export type PracticeData = ReturnType<typeof practiceData>;
