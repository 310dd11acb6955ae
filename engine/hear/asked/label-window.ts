import { outsideClimate, REFERENCE_CLIMATE } from '../../calc/drying/climate.ts';
import type { Mechanism } from '../../calc/drying/mechanism.ts';
import { slowing } from '../../calc/drying/slowing.ts';
import { toFahrenheit } from '../../calc/units.ts';
import type { Family } from '../../model/family.ts';
import { entryOf } from '../../plain/entry-of.ts';
import { filled } from '../../plain/filled.ts';
import { DAY_HOURS, HOUR_MIN } from '../../plain/time.ts';
import { labelDegrees, labelTime } from '../times/label-time.ts';
import { type HeardFact, SURE } from '../words/heard.ts';
import type { Lexicon } from '../words/lexicon.ts';
import type { Ear } from '../words/match.ts';
import { oneOf } from '../words/one-of.ts';
import { countAt, spanAt } from '../words/spans.ts';
import type { Word } from '../words/words.ts';
import type { TableAnswer } from './layers-asked.ts';
import type { Waits } from './waits.ts';

/** Hours in which a label lets the next coat go on: within the first of the last coat, or from the second on. */
type Window = { readonly within: number | undefined; readonly from: number; readonly at: Word };

const WITHIN = oneOf('within|in|inside|under|before|by');
const AFTER = oneOf('after|past|beyond|over');
const FILLER = oneOf('or|else|then|wait|waiting|until|at|least|only|not');
/** "Wait 4 hours between coats": the time on the label is that of the next coat. */
const OF_NEXT = oneOf('recoat|recoats|recoated|recoating|coats|coat|layers');
const BETWEEN = oneOf('between|next|second|another|recoat|recoats|recoated|recoating|apart');
const NEAR = 7;

/** The hours of a time from word `at` on; a bare number takes the unit of the time before it. */
const hoursAt = (
  ear: Ear,
  words: readonly Word[],
  at: number,
  unit: number,
): { readonly hours: number; readonly to: number } | undefined => {
  const span = spanAt(ear, words, at);
  if (span) return { hours: span.high, to: span.to };
  const count = unit ? countAt(ear, words, at) : undefined;
  return count && { hours: count.value * unit, to: count.to };
};

/** "Within 1 hour or after 48": the coat waits in between. */
const windowIn = (ear: Ear, words: readonly Word[]): Window | undefined => {
  for (const [at, here] of words.entries()) {
    if (!WITHIN.test(here.word)) continue;
    const first = spanAt(ear, words, at + 1);
    if (!first || words[first.to]?.word !== 'or') continue;
    let next = first.to;
    while (FILLER.test(words[next]?.word ?? '')) next++;
    if (!AFTER.test(words[next]?.word ?? '')) continue;
    const last = hoursAt(ear, words, next + 1, ear.units.get(first.unit) ?? 0);
    if (last && last.hours > first.high && words[next]?.sentence === here.sentence)
      return { within: first.high, from: last.hours, at: here };
  }
  return undefined;
};

/** "The label says wait 4 hours between coats". */
const waitIn = (ear: Ear, words: readonly Word[]): Window | undefined => {
  const label = labelTime(ear, words);
  const here = label && words[label.at - 1];
  if (!label || !here) return undefined;
  const near = words
    .slice(Math.max(0, label.at - NEAR), label.at + NEAR)
    .filter(({ part }) => part === here.part);
  const isOfNext = near.some(({ word }) => OF_NEXT.test(word)) && near.some(({ word }) => BETWEEN.test(word));
  return isOfNext ? { within: undefined, from: label.hours, at: here } : undefined;
};

/** So much longer must it take to be told. */
const NOTABLE = 1.15;
/** As wide as that, as a share of the time, may the age be from which the rest is counted. */
const NARROW = 0.2;

const sayDegrees = (celsius: number, isMetric: boolean): string => {
  const [metric, us] = [`${Math.round(celsius)} °C`, `${Math.round(toFahrenheit(celsius))} °F`];
  return isMetric ? `${metric} (${us})` : `${us} (${metric})`;
};

const sayHours = (hours: number): string => {
  const [count, unit] =
    hours < 1
      ? [hours * HOUR_MIN, 'minute']
      : hours <= 3 * DAY_HOURS
        ? [hours, 'hour']
        : [hours / DAY_HOURS, 'day'];
  const said = Number(count.toFixed(count < 10 ? 1 : 0));
  return `${said} ${unit}${said === 1 ? '' : 's'}`;
};

const saysOf = ({ window: says }: Lexicon['tables'], { within, from }: Window, age: number | undefined) => {
  if (within === undefined) return age === undefined || age >= from ? says.waited : says['too-soon'];
  if (age === undefined || age <= within) return says.within;
  return age < from ? says.between : says.waited;
};

/** In other air than the can names: how much longer it takes there, as the clock reckons it. */
const slowedSaid = (
  ear: Ear,
  { kinds }: Waits,
  words: readonly Word[],
  facts: readonly HeardFact[],
  { from, at }: Window,
): { readonly answer: string; readonly carries: Readonly<Record<string, string>> } | undefined => {
  const told = (fact: string) => facts.find((one) => one.fact === fact && one.sure >= SURE);
  const kind = entryOf(kinds, String(told('family')?.value) as Family);
  const air = told('air-celsius');
  if (!kind?.mechanism || !air) return undefined;
  const celsius = Number(air.value);
  const damp = told('relative-humidity')?.value;
  const here = {
    celsius,
    relativeHumidity: damp === undefined ? REFERENCE_CLIMATE.relativeHumidity : Number(damp),
  };
  const named = labelDegrees(words, at);
  const there = { ...REFERENCE_CLIMATE, ...(named && { celsius: named.celsius }) };
  if (outsideClimate(here) || outsideClimate(there) || celsius < kind.air.celsius[0]) return undefined;
  // The way to the next coat begins with what leaves first and ends with what hardens last.
  const steps = (['touch', 'recoat'] as const).map((step) =>
    slowing(kind.mechanism as Mechanism, step, there, here, 1),
  );
  const hours = [
    from * Math.min(...steps.map((step) => step.from)),
    from * Math.max(...steps.map((step) => step.to)),
  ] as const;
  if (hours[1] < from * NOTABLE) return undefined;
  const says = ear.lexicon.tables.window;
  const isMetric = air.rests.some((rest) =>
    words.some(
      (word) =>
        word.from >= rest.from && word.to <= rest.to + 2 && /^c(?:elsius|entigrade)?$/.test(word.word),
    ),
  );
  const sayAir = (one: number) => sayDegrees(one, isMetric);
  const [least, most] = hours.map(Math.round) as [number, number];
  const said = filled(says.slowed, {
    from: sayHours(from),
    there: sayAir(there.celsius),
    here: `${sayAir(celsius)}${damp === undefined ? '' : ` and ${Math.round(Number(damp) * 100)} %`}`,
    least: String(least),
    most: sayHours(most),
  });
  const carries = {
    units: isMetric ? 'metric' : 'us',
    'label-recoat': String(Number(from.toFixed(1))),
    ...(named && { 'label-air': String(Math.round(isMetric ? named.celsius : toFahrenheit(named.celsius))) }),
  };
  const laid = told('hours-since-coat');
  const [young, old] = laid?.range ?? [Number(laid?.value), Number(laid?.value)];
  // "This morning" tells too little of an age to count the rest from.
  if (!laid || old - young > NARROW * most) return { answer: `${said} ${says.counted}`, carries };
  const age = sayHours(Math.round(Number(laid.value)));
  const rest = [least, most].map((end) => Math.max(0, end - Math.round(Number(laid.value))));
  const [low = 0, high = 0] = rest;
  if (low <= 0) return { answer: `${said} ${filled(says.soon, { age })}`, carries };
  return { answer: `${said} ${filled(says.more, { age, rest: `${low} to ${sayHours(high)}` })}`, carries };
};

/**
 * When the next coat goes on by the label that a text tells of, which goes before every table. Where the time on it is
 * that of a dry film, or a single time with neither the age of the coat nor a question, nothing.
 */
export const labelWindow = (
  ear: Ear,
  waits: Waits,
  words: readonly Word[],
  facts: readonly HeardFact[],
  isAsked: boolean,
): TableAnswer | undefined => {
  const two = windowIn(ear, words);
  const window = two ?? waitIn(ear, words);
  if (!window) return undefined;
  const told = facts.find(({ fact, sure }) => fact === 'hours-since-coat' && sure >= SURE)?.value;
  const age = told === undefined ? undefined : Number(told);
  if (!two && !isAsked && age === undefined) return undefined;
  const { lead, page, clock, 'put-in': putIn } = ear.lexicon.tables.window;
  const asking = [{ from: window.at.from, to: window.at.to }];
  const slowed = two ? undefined : slowedSaid(ear, waits, words, facts, window);
  if (slowed)
    return {
      asked: { ...slowed, lead: putIn, page: clock },
      isWait: true,
      asking,
    };
  const answer = filled(saysOf(ear.lexicon.tables, window, age), {
    within: sayHours(window.within ?? window.from),
    from: sayHours(window.from),
    age: sayHours(age ?? window.from),
  });
  return { asked: { answer, lead, page }, isWait: true, asking };
};
