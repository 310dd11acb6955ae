import { toFahrenheit } from '../../calc/units.ts';
import { filled } from '../../plain/filled.ts';
import { labelDegrees, labelTime } from '../times/label-time.ts';
import { inDigits } from '../words/digits.ts';
import { type HeardFact, SURE } from '../words/heard.ts';
import { isLaying } from '../words/laying.ts';
import type { Lexicon } from '../words/lexicon.ts';
import type { Ear, Match } from '../words/match.ts';
import { nearUnits } from '../words/near-units.ts';
import { clauseAround, type Reading, settledReading } from '../words/reading.ts';
import type { Word } from '../words/words.ts';
import { filmOf } from './film.ts';
import { humidities } from './humidity.ts';
import { bareDegrees, temperatures } from './temperatures.ts';

const tenth = (value: number): number => Math.round(value * 10) / 10;
const hundredth = (value: number): number => Math.round(value * 100) / 100;

/** How wide a word about the weather is read. */
const WORD_WIDTH = { 'air-celsius': 5, 'relative-humidity': 0.12 } as const;

const inWords = (
  words: readonly Word[],
  matches: readonly Match[],
  fact: 'air-celsius' | 'relative-humidity',
  denied: (match: Match) => number | undefined,
): Reading[] =>
  matches
    .filter((match) => match.kind === fact && denied(match) === undefined)
    .map((match) => {
      const value = Number(match.of[0]);
      return {
        from: words[match.from]?.from ?? 0,
        to: words[match.to - 1]?.to ?? 0,
        low: value - WORD_WIDTH[fact],
        high: value + WORD_WIDTH[fact],
        sure: 0.66 + 0.06 * match.size,
      };
    });

/**
 * "17 by day, 6 at night, may I varnish": the coldest of the nights that come, since a coat laid by day dries through it.
 * Where a coat lies already the air of its day counts.
 */
const coldestNight = (
  says: Ear['says'],
  text: string,
  words: readonly Word[],
  readings: readonly Reading[],
): Reading | undefined => {
  const [coldest] = [...readings].sort((a, b) => a.low - b.low);
  if (!coldest || readings.length < 2 || !says('ahead', text)) return undefined;
  if (words.some((_, at) => isLaying(words, at))) return undefined;
  const { before, after } = clauseAround(text, coldest);
  return says('night-ahead', before + text.slice(coldest.from, coldest.to) + after) ? coldest : undefined;
};

/** Where a figure is told, words of the weather stand behind it. */
const figuresFirst = (figures: readonly Reading[], worded: readonly Reading[]): readonly Reading[] =>
  figures.length ? figures : worded;

/** Temperature and humidity of the air, that of a measured surface, and how thick the dry film is. */
export const airOf = (
  ear: Ear,
  text: string,
  words: readonly Word[],
  matches: readonly Match[],
  denied: (match: Match) => number | undefined,
): HeardFact[] => {
  const { lexicon, says } = ear;
  const digits = nearUnits(inDigits(text), lexicon.airUnits);
  const { air: all, surface } = temperatures(digits, {
    isHot: () => says('hot', text),
    isMetric: () => says('metric', text),
  });
  // "24 hours at 77 °F" on the can tells nothing of the room.
  const label = labelTime(ear, words);
  const last = label && words[label.at - 1];
  const ofCan = last && labelDegrees(words, last);
  const air = ofCan ? all.filter(({ from, to }) => to <= ofCan.from || from >= ofCan.to) : all;
  const worded = (fact: 'air-celsius' | 'relative-humidity') => inWords(words, matches, fact, denied);
  return [
    ...settledReading(
      digits,
      'air-celsius',
      figuresFirst(air, worded('air-celsius')),
      tenth,
      50,
      coldestNight(says, digits, words, air),
    ),
    ...settledReading(digits, 'surface-celsius', surface, tenth, 60),
    ...settledReading(
      digits,
      'relative-humidity',
      figuresFirst(humidities(digits), worded('relative-humidity')),
      hundredth,
      1,
    ),
    ...filmOf(digits),
  ];
};

/** As what bare degrees were taken that may be °F or °C: "38 degrees" is said back with its unit. */
export const takenAs = (
  { degrees: says }: Lexicon['tables'],
  text: string,
  facts: readonly HeardFact[],
): string | undefined => {
  const air = facts.find(({ fact, sure }) => fact === 'air-celsius' && sure >= SURE);
  const told = air?.rests.flatMap((span) => bareDegrees(text, span) ?? [])[0];
  if (!air || told === undefined) return undefined;
  const celsius = Number(air.value);
  const [metric, us] = [`${Math.round(celsius)} °C`, `${Math.round(toFahrenheit(celsius))} °F`];
  const isMetric = Math.abs(Number.parseFloat(told) - celsius) < 1;
  return filled(says, { told, degrees: isMetric ? `${metric} (${us})` : `${us} (${metric})` });
};
