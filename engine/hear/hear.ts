import { FAMILIES } from '../model/family.ts';
import { amountAsked } from './amounts-asked.ts';
import { asksFor, isSeen } from './asks-for.ts';
import { asksWhich } from './asks-which.ts';
import { inTyped, plainBlanks } from './blanks.ts';
import { choicesOf } from './choices.ts';
import { hoursByClock } from './clock-times.ts';
import { coatNumberOf } from './coats.ts';
import { dangersOf, urgentOf } from './dangers.ts';
import type { DryHours } from './dry-hours.ts';
import { dewPointAsked, filmAsked } from './figures-asked.ts';
import { type Heard, type HeardFact, type HeardName, type HeardSign, SURE } from './heard.ts';
import { asksForTime, hoursAsked } from './hours-asked.ts';
import { labelTime } from './label-time.ts';
import { labelWindow } from './label-window.ts';
import { layersOf } from './layers-asked.ts';
import type { AskedFor, Lexicon } from './lexicon.ts';
import { mannerOf } from './manner.ts';
import { earOf, matchesIn, spanOf } from './match.ts';
import { maySand } from './may-sand.ts';
import { airOf, takenAs } from './measures.ts';
import { namesOf } from './names.ts';
import { isOtherTongue } from './other-tongue.ts';
import { rowsAsked } from './rows-asked.ts';
import { signsOf } from './signs.ts';
import { stageFacts } from './stage.ts';
import { isStillDrying } from './still-drying.ts';
import { hoursOf } from './times.ts';
import { isTopNoun } from './top-words.ts';
import { twoAsked } from './two-asked.ts';
import type { Waits } from './waits.ts';
import { type Span, wordsIn } from './words.ts';

/** The ear: the words of the content, how long each kind of coat takes to dry, and what is said of it where that is asked. */
export type Hearing = { readonly lexicon: Lexicon; readonly dry: DryHours; readonly waits: Waits };

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

/** Coats that are asked about are not laid, and a coat is at no stage that is asked for. */
const isAskedAbout = ({ fact, rests }: HeardFact, asking: readonly Span[]): boolean =>
  fact === 'coat-number' ||
  (fact === 'stage' && rests.every((one) => asking.some(({ from, to }) => from <= one.from && one.to <= to)));

const heardIn = ({ lexicon, dry, waits }: Hearing, text: string): Heard => {
  const ear = earOf(lexicon);
  const words = wordsIn(text, ear);
  const matches = matchesIn(ear, words);
  const manner = mannerOf(ear, words, matches);
  const { facts, among } = choicesOf(text, { ear, words, matches, manner });
  const spans = hoursOf(ear, words, matches, manner);
  // "at seven this morning, now it is noon" is nearer than the morning alone.
  const clock = hoursByClock(text);
  const times = clock.length ? clock : spans;
  const family = facts.find(({ fact }) => fact === 'family');
  const families = family ? [String(family.value)] : (among[0]?.values ?? []);
  const kind = (family?.sure ?? 0) >= SURE ? String(family?.value) : undefined;
  const air = airOf(ear, text, words, matches, manner.denied);
  const told = [
    ...facts,
    ...times,
    ...coatNumberOf(ear, words, manner, kind !== undefined || among.length > 0, kind),
    ...air,
    ...stageFacts(
      words,
      matches,
      manner,
      [...facts, ...times, ...air],
      families,
      dry,
      labelTime(ear, words)?.hours,
    ),
  ];
  const taken = takenAs(lexicon.tables, text, air);
  const signs = signsOf(ear, words, matches, manner);
  const named = words.filter(isTopNoun).map(({ from, to }) => ({ from, to }));
  // "I don't want my kid to get scratched": these words tell of no coat, so no flaw is weighed by them either.
  const aside = matches
    .filter(
      ({ kind, of: [what], from, to, size }) =>
        kind === 'no-sign' && what === 'of-bodies' && to - from === size,
    )
    .map((match) => spanOf(words, match));
  const { names, feared, apart } = namesOf(ear.small, words, matches, manner);
  const isOutside = isOutOfRange(waits, families, told);
  const namesNothing = !names.some(({ denied }) => !denied) && !isOverdue(told);
  const seesNothing = namesNothing && !isOutside;
  const figures =
    filmAsked(lexicon.tables, text) ??
    dewPointAsked(lexicon.tables, text, family ? families : layersOf(ear, words, matches).tops);
  // "Still tacky, the label says 24 hours, it has been 16": what is named is how dry it is, and the can answers it.
  const isSoftAlone =
    !seesNothing &&
    !isOutside &&
    !isOverdue(told) &&
    names.every((one) => one.denied || isStageAlone(one, told));
  const ofLabel = () => labelWindow(ear, waits, words, told, asksForTime(ear, text));
  const tables = isSoftAlone
    ? [ofLabel() ?? []].flat()
    : seesNothing
      ? [
          ofLabel() ?? hoursAsked(ear, waits, text, words, matches),
          amountAsked(ear, waits, text, words, matches),
          ...rowsAsked(ear, waits, text, words, matches),
        ].flatMap((one) => one ?? [])
      : [];
  const asking = tables.flatMap((one) => one.asking);
  const dangers = dangersOf(words, matches, manner);
  const toldIn = [...told, ...among, ...dangers].flatMap(({ rests }) => rests);
  // What was done, and what is to come, is nothing that is seen.
  const sees = signs.some(
    (sign) =>
      !ear.ofWork.has(sign.question) &&
      !lexicon.tables.beside.includes(sign.question) &&
      isSeen(sign, [...toldIn, ...asking, ...apart], named),
  );
  const listed = asksFor(
    lexicon.asksFor,
    words,
    matches,
    told,
    among.flatMap(({ rests }) => rests),
    signs,
    named,
  );
  const [first, second] = twoAsked(ear, text, sees ? [] : tables, listed);
  const isMeant = (asked: AskedFor | undefined): asked is AskedFor =>
    asked !== undefined && (!asked.sands || maySand(text, told));
  const answered = figures?.asked ?? (isMeant(first?.asked) ? first.asked : undefined);
  const alsoAsks = answered && !figures && isMeant(second?.asked) ? second.asked : undefined;
  const isAhead =
    namesNothing &&
    !feared.length &&
    !sees &&
    !told.some(({ fact, sure }) => sure >= SURE && (fact === 'stage' || fact === 'hours-since-coat')) &&
    ear.says('ahead', text) &&
    !ear.says('done', text);
  const ahead = isOutside ? lexicon.tables.outside : { ...lexicon.tables.ahead, perhaps: true as const };
  const askedFor: AskedFor | undefined = answered ?? (isAhead ? ahead : undefined);
  const askedIn = answered && tables.some(({ asked }) => asked === answered) ? asking : [];
  return {
    text,
    facts: answered ? told.filter((one) => !isAskedAbout(one, askedIn)) : told,
    among,
    signs,
    names,
    ...(feared.length && { feared }),
    named,
    ...(aside.length && { aside }),
    ...(taken && { taken }),
    ...(askedFor && { asksFor: askedFor }),
    ...(alsoAsks && { alsoAsks }),
    ...(isStillDrying(words, matches, { facts: told, among, signs, named }, families, dry) && {
      stillDrying: lexicon.stillDrying,
    }),
    dangers,
    urgent: urgentOf(words, matches, manner),
    asksWhich: asksWhich(matches),
    otherTongue: isOtherTongue(lexicon.otherTongue, text),
  };
};

/**
 * Facts and signs of a text, two words or a whole post, each with the words that it rests on, how sure it is, and what
 * speaks against it. Pure; any text is taken, and what lies beyond the first 6,000 characters is not read.
 */
export const hear = (hearing: Hearing, text: string): Heard => {
  const plain = plainBlanks(text);
  return plain ? inTyped(heardIn(hearing, plain.text), text, plain) : heardIn(hearing, text);
};

/** The answers alone that a text gives unasked, without its facts and times. */
export const hearSigns = (lexicon: Lexicon, text: string): readonly HeardSign[] => {
  const ear = earOf(lexicon);
  const words = wordsIn(text, ear);
  const matches = matchesIn(ear, words);
  return signsOf(ear, words, matches, mannerOf(ear, words, matches));
};
