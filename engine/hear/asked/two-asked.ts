import type { Ear } from '../words/match.ts';
import type { Asked } from './asks-for.ts';
import { sentencesOf, type TableAnswer } from './layers-asked.ts';

/** Whether two things are asked in two sentences, or in one that asks again: "how many coats, and do I sand between". */
const areTwo = (ear: Ear, text: string, one: Asked, other: Asked): boolean => {
  const sentences = sentencesOf(text);
  const asks = ({ asking }: Asked) =>
    sentences.filter(({ from, to }) => asking.some((span) => span.from < to && from < span.to));
  const [first, second] = [asks(one), asks(other)];
  return (
    second.some((sentence) => !first.includes(sentence)) ||
    first.some(({ from, to }) => ear.says('and-asks', text.slice(from, to)))
  );
};

/**
 * What is answered, and what besides: a wait that is asked for goes before other answers, a number behind them. Two answers
 * lead to two pages, and say two things.
 */
export const twoAsked = (
  ear: Ear,
  text: string,
  tables: readonly TableAnswer[],
  listed: readonly Asked[],
): readonly Asked[] => {
  const [table, ...others] = tables;
  const all: readonly Asked[] = [
    ...(table?.isWait ? [table] : []),
    ...listed,
    ...(table && !table.isWait ? [table] : []),
    ...others,
  ];
  const [first] = all;
  const second =
    first &&
    all.find(
      (other) =>
        other.asked.page !== first.asked.page &&
        !first.asked.answer.includes(other.asked.answer.slice(0, 40)) &&
        areTwo(ear, text, first, other),
    );
  return [first, second].flatMap((one) => one ?? []);
};
