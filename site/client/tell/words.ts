import { entryOf, isKeyOf } from '#engine/entry-of.ts';
import { type HeardFact, SURE } from '#engine/hear.ts';
import type { Choices } from '#engine/model/choices.ts';
import { STAGE_WORDS } from '../../shared/stages.ts';

/** The facts that are told by a choice, as the forms word them. */
type Lists = Partial<Record<keyof Choices, { readonly values: Readonly<Record<string, string>> }>>;

/** In the unit that the longer of the two is told in: minutes, hours or days. */
const span = ([from, to]: readonly [number, number]): string => {
  const [unit, size] =
    to < 1 ? (['min', 1 / 60] as const) : to < 48 ? (['h', 1] as const) : (['days', 24] as const);
  const one = (value: number) =>
    unit === 'min'
      ? String(Math.max(5, Math.round(value / size / 5) * 5))
      : String(Math.round((value / size) * 10) / 10);
  return one(from) === one(to) ? `${one(from)} ${unit}` : `${one(from)} to ${one(to)} ${unit}`;
};

/** A fact in the words of the forms; nothing for what has no words there. */
export const factWords = (
  lists: Lists,
  fact: string,
  value: string | number,
  range?: readonly [number, number],
): string | undefined => {
  const listed = isKeyOf(lists, fact) ? lists[fact]?.values : undefined;
  if (listed) return entryOf(listed, String(value));
  const [from, to] = range ?? [Number(value), Number(value)];
  switch (fact) {
    case 'stage':
      return isKeyOf(STAGE_WORDS, value) ? STAGE_WORDS[value].name : undefined;
    case 'overdue':
      return value === 'yes' ? 'Sticky long past its time' : undefined;
    case 'coat-number':
      return `Coat ${value}`;
    case 'hours-since-coat':
      return `Laid ${span([from, to])} ago`;
    case 'air-celsius':
      return `About ${Math.round(Number(value) * 1.8 + 32)} °F (${Math.round(Number(value))} °C)`;
    case 'relative-humidity':
      return `${Math.round(Number(value) * 100)} % humidity`;
    default:
      return undefined;
  }
};

/** Whether a heard fact is sure enough to be taken as told. */
export const isTaken = ({ sure }: HeardFact): boolean => sure >= SURE;

/** How likely, in words: a percentage would promise more than words of a post can carry. */
export const chanceSaid = (chance: number): string =>
  chance >= 0.9 ? 'almost surely' : chance >= 0.6 ? 'most likely' : chance >= 0.25 ? 'may be' : 'less likely';
