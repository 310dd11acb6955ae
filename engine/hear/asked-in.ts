import { FAMILIES } from '../model/family.ts';
import { amountAsked } from './asked/amounts-asked.ts';
import { type Asked, asksFor, isSeen } from './asked/asks-for.ts';
import { dewPointAsked, filmAsked } from './asked/figures-asked.ts';
import { asksForTime, hoursAsked } from './asked/hours-asked.ts';
import { labelWindow } from './asked/label-window.ts';
import { layersOf, type TableAnswer } from './asked/layers-asked.ts';
import { maySand } from './asked/may-sand.ts';
import { rowsAsked } from './asked/rows-asked.ts';
import { twoAsked } from './asked/two-asked.ts';
import type { Waits } from './asked/waits.ts';
import type { PostRead } from './choices/choice-mentions.ts';
import type { HeardNames } from './signs/names.ts';
import type { ToldOfCoat } from './told-of-coat.ts';
import { type HeardDanger, type HeardFact, type HeardName, type HeardSign, SURE } from './words/heard.ts';
import type { AskedFor, Lexicon } from './words/lexicon.ts';
import type { Span } from './words/words.ts';

const isOverdue = (facts: readonly HeardFact[]): boolean =>
  facts.some(({ fact, value, sure }) => fact === 'overdue' && value === 'yes' && sure >= SURE);

/** Air that is outside what the cans of these kinds allow, at its end too: nothing is laid in it, so no time holds. */
const isOutOfRange = (
  { kinds }: Waits,
  families: readonly string[],
  facts: readonly HeardFact[],
): boolean => {
  const told = (fact: string): number | undefined => {
    const value = facts.find((one) => one.fact === fact && one.sure >= SURE)?.value;
    return value === undefined ? undefined : Number(value);
  };
  const outside = (value: number | undefined, [from, to]: readonly [number, number]) =>
    value !== undefined && (value <= from || value >= to);
  const named = FAMILIES.flatMap((family) => (families.includes(family) ? (kinds[family] ?? []) : []));
  const all = named.length ? named : Object.values(kinds);
  return all.every(
    ({ air }) =>
      outside(told('air-celsius'), air.celsius) || outside(told('relative-humidity'), air.humidity),
  );
};

/** A name that rests on no words but those of a film that sets: "tacky". */
const isStageAlone = ({ rests }: HeardName, facts: readonly HeardFact[]): boolean => {
  const stage = facts.find(({ fact, value }) => fact === 'stage' && value === 'setting')?.rests ?? [];
  return rests.every((one) => stage.some(({ from, to }) => from < one.to && one.from < to));
};

/** What else is heard in a post that may ask. */
export type Beside = {
  readonly told: ToldOfCoat;
  readonly signs: readonly HeardSign[];
  readonly called: HeardNames;
  /** Where a top coat is named. */
  readonly named: readonly Span[];
  readonly dangers: readonly HeardDanger[];
};

/** What is asked for, and the words that ask for it where they tell of no coat. */
export type AskedIn = {
  readonly asksFor?: AskedFor;
  readonly alsoAsks?: AskedFor;
  /** Something is asked that has an answer. */
  readonly isAnswered: boolean;
  readonly asking: readonly Span[];
};

type Hears = { readonly lexicon: Lexicon; readonly waits: Waits };

/** Answers from the tables: none where a flaw is named, but that of the can where only "tacky" is. */
const tablesFor = (
  { waits }: Hears,
  post: PostRead,
  text: string,
  beside: Beside,
): readonly TableAnswer[] => {
  const { ear, words, matches } = post;
  const { facts, families } = beside.told;
  if (isOutOfRange(waits, families, facts)) return [];
  const isLaid = facts.some(({ fact }) => fact === 'hours-since-coat');
  const ofLabel = () => labelWindow(ear, waits, words, facts, asksForTime(ear, text));
  if (namesNothing(beside))
    return [
      ofLabel() ?? hoursAsked(ear, waits, text, words, matches, isLaid),
      amountAsked(ear, waits, text, words, matches),
      ...rowsAsked(ear, waits, text, words, matches),
    ].flatMap((one) => one ?? []);
  // "Still tacky, the label says 24 hours, it has been 16": what is named is how dry it is, and the can answers it.
  const isSoftAlone =
    !isOverdue(facts) && beside.called.names.every((one) => one.denied || isStageAlone(one, facts));
  return isSoftAlone ? [ofLabel() ?? []].flat() : [];
};

const namesNothing = ({ called, told }: Beside): boolean =>
  !called.names.some(({ denied }) => !denied) && !isOverdue(told.facts);

/** What is seen. What was done, and what is to come, is not. */
const seenIn = (
  { lexicon }: Hears,
  { ear }: PostRead,
  { told, signs, called, named, dangers }: Beside,
  asking: readonly Span[],
): readonly HeardSign[] => {
  const toldIn = [...told.facts, ...told.among, ...dangers].flatMap(({ rests }) => rests);
  return signs.filter(
    (sign) =>
      !ear.ofWork.has(sign.question) &&
      !lexicon.tables.beside.includes(sign.question) &&
      isSeen(sign, [...toldIn, ...asking, ...called.apart], named),
  );
};

/** A plan or a question before the work: no flaw of it is there. */
const aheadOf = (
  { lexicon, waits }: Hears,
  { ear }: PostRead,
  text: string,
  beside: Beside,
): AskedFor | undefined => {
  const { facts, families } = beside.told;
  const isLaid = facts.some(
    ({ fact, sure }) => sure >= SURE && (fact === 'stage' || fact === 'hours-since-coat'),
  );
  const isAhead = namesNothing(beside) && !beside.called.feared.length && !isLaid && ear.says('ahead', text);
  if (!isAhead) return undefined;
  // "It was 40 °F this morning, may I spray": that morning laid no coat, and in such air none goes on, whatever else was done.
  if (isOutOfRange(waits, families, facts)) return lexicon.tables.outside;
  return ear.says('done', text) ? undefined : { ...lexicon.tables.ahead, perhaps: true as const };
};

/** What a post asks for that has an answer of its own: by figures, by the tables, or by a list. */
export const askedIn = (hears: Hears, post: PostRead, text: string, beside: Beside): AskedIn => {
  const { ear, words, matches } = post;
  const { told, signs, named } = beside;
  const { lexicon } = hears;
  const figures =
    filmAsked(lexicon.tables, text) ??
    dewPointAsked(lexicon.tables, text, told.isKindTold ? told.families : layersOf(ear, words, matches).tops);
  const tables = tablesFor(hears, post, text, beside);
  const asking = tables.flatMap((one) => one.asking);
  const seen = seenIn(hears, post, beside, asking);
  // What is not there stands in the way of no figure; of nothing that is wrong it tells neither.
  const sees = seen.some(({ answer }) => answer !== 'no');
  const listed = asksFor(
    lexicon.asksFor,
    words,
    matches,
    told.facts,
    told.among.flatMap(({ rests }) => rests),
    signs,
    named,
  );
  const [first, second] = twoAsked(ear, text, sees ? [] : tables, listed);
  const meant = (one: Asked | undefined): AskedFor | undefined =>
    one && (!one.asked.sands || maySand(text, told.facts)) ? one.asked : undefined;
  const answered = figures?.asked ?? meant(first);
  const also = answered && !figures ? meant(second) : undefined;
  const asked = answered ?? (seen.length ? undefined : aheadOf(hears, post, text, beside));
  return {
    ...(asked && { asksFor: asked }),
    ...(also && { alsoAsks: also }),
    isAnswered: answered !== undefined,
    asking: tables.some((one) => one.asked === answered) ? asking : [],
  };
};
