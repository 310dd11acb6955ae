import { entryOf } from '../entry-of.ts';
import type { HeardFact } from './heard.ts';
import type { Match } from './match.ts';
import type { Span, Word } from './words.ts';

const DEGREES =
  /(-?\d{1,3})(?:\s*(?:-|–|to|or|and)\s*(-?\d{1,3}))?(?:\s*(?:°|º|degrees?|deg\.?))?\s*(f|c|fahrenheit|celsius|centigrade)(?![a-z])/gi;
const BARE_DEGREES =
  /(-?\d{1,3})(?:\s*(?:-|–|to|or)\s*(-?\d{1,3}))?\s*(?:°|º|deg(?:rees?)?(?![a-z]))(?!\s*(?:°|f\b|c\b|fahr|cels|centi|angle))/gi;
const DECADE = /\b(?:in the |the )?(low|mid|middle|high|upper|in the)[\s-]+([4-9]0)['’]?s\b/gi;
/** A number alone near words of the air, in the range in which Fahrenheit is told: "62 or so", "about 85 and sticky out". */
const BARE =
  /(?<![\d.,$#:/-])(\d{2,3})(?:\s*(?:-|–|to|or|and)\s*(\d{2,3}))?(?![\d.,]*\d|\s*(?:%|percent|°|º|deg|f\b|c\b|grit|year|hour|hr|minute|min\b|day|week|month|second|coat|foot|feet|ft|inch|mile|mile|lb|pound|psi|ml|oz|gal|paper|x|in a row|times|people|pieces|bucks|dollar|rpm|'|"|s\b|th\b|wet))/gi;
const OF_AIR =
  /\b(?:temps?|temperatures?|thermometer|thermostat|heat(?:er|ed)?|cool|cold|chilly|warm|hot|sticky out|out(?:side)?|indoors|inside|air|in the (?:shop|garage|basement|house|room|hall|shed|shade|sun|day|night|winter|summer)|(?:shop|garage|basement|room|house|cellar|attic|shed|porch|temps?)(?:['’]?s)? (?:is|was|at|stays?|stayed|about|around|between|got|gets|down|up|dropped|fell|went|hits?|reached)|(?:got|dropped|fell|dipped|went|down) (?:down )?to|at night|kept? (?:it )?at|keeps? (?:it )?at|held at|sits at|sat at|set (?:to|at)|heated to|warmed to|degrees?|when i (?:varnished|brushed|sprayed|rolled|coated))\b/i;
const NOT_OF_AIR =
  /\b(?:grit|sanded|sand|sandpaper|paper|pads?|psi|gloss|with|wool|mesh|no\.?|number|model|from|since|size|age|aged|only)\s*$/i;
const BARE_LEAST = 35;
const BARE_MOST = 110;
const BARE_NEAR = 24;
const HUMIDITY =
  /(\d{1,3})(?:\s*(?:-|–|to)\s*(\d{1,3}))?\s*(?:%|percent)(?:\s*(?:rh\b|relative|humid))?|humid[a-z]*\s*(?:is|was|of|at|around|about|near|over|says|said|reads?|shows?|set (?:to|at)|up to|hit|hits)?\s*(\d{2,3})\b|\brh (?:is |was |of |at |around |about )?(\d{2})\b/gi;

const celsius = (fahrenheit: number): number => ((fahrenheit - 32) * 5) / 9;
const tenth = (value: number): number => Math.round(value * 10) / 10;
/** Bare degrees from here on are Fahrenheit: nobody coats at 45 °C. */
const SURELY_FAHRENHEIT = 38;

type Reading = Span & { readonly low: number; readonly high: number; readonly sure: number };

const spanOf = (found: RegExpExecArray | RegExpMatchArray): Span => ({
  from: found.index ?? 0,
  to: (found.index ?? 0) + found[0].length,
});

/** "in the low sixties": which of the ten. */
const PART_OF_TEN: Readonly<Record<string, readonly [number, number]>> = {
  low: [0, 3],
  mid: [4, 6],
  middle: [4, 6],
  high: [7, 9],
  upper: [7, 9],
};

/** "grandpa made it in the 60s" tells of years. */
const MADE_IN = /\b(?:made|built|bought|painted|finished|varnished)(?: (?:it|this|that|them))?(?: back)? $/i;

const temperatures = (text: string): Reading[] => {
  const found: Reading[] = [];
  const add = (span: Span, a: number, b: number, sure: number) =>
    found.push({ ...span, low: Math.min(a, b) - READ_TO, high: Math.max(a, b) + READ_TO, sure });
  for (const match of text.matchAll(DEGREES)) {
    const [low, high] = [Number(match[1]), Number(match[2] ?? match[1])];
    const convert = /^f/i.test(match[3] ?? '') ? celsius : (value: number) => value;
    add(spanOf(match), convert(low), convert(high), 0.92);
  }
  for (const match of text.matchAll(BARE_DEGREES)) {
    const [low, high] = [Number(match[1]), Number(match[2] ?? match[1])];
    if (high >= SURELY_FAHRENHEIT) add(spanOf(match), celsius(low), celsius(high), 0.85);
    else if (low >= 8) add(spanOf(match), low, high, 0.55);
  }
  for (const match of text.matchAll(BARE)) {
    const [low, high] = [Number(match[1]), Number(match[2] ?? match[1])];
    const span = spanOf(match);
    const before = text.slice(Math.max(0, span.from - BARE_NEAR), span.from).replace(/^.*[.!?;](?=\s)/s, '');
    const after = (text.slice(span.to, span.to + BARE_NEAR).match(/^[^.!?;]*/) ?? [''])[0];
    if (low < BARE_LEAST || high > BARE_MOST || high < low || NOT_OF_AIR.test(before)) continue;
    if (OF_AIR.test(before) || OF_AIR.test(after)) add(span, celsius(low), celsius(high), 0.74);
  }
  for (const match of text.matchAll(DECADE)) {
    if (MADE_IN.test(text.slice(0, match.index))) continue;
    const [low, high] = entryOf(PART_OF_TEN, (match[1] ?? '').toLowerCase()) ?? [0, 9];
    const base = Number(match[2]);
    add(spanOf(match), celsius(base + low), celsius(base + high), 0.8);
  }
  return found.filter(({ low, high }) => low >= -20 && high <= 50);
};

const NEAR = 40;
const nearHumidity = (text: string, { from, to }: Span): boolean =>
  /humid|hygrometer|\brh\b|moist air|damp|\d\s*°?\s*[fc]\b|degrees/i.test(
    text.slice(Math.max(0, from - NEAR), to + NEAR),
  ) && !/retarder|thin|cut|water|mix|dilut|off/i.test(text.slice(to, to + 14));

/** "in the eighties", "in the high 80s", said of humidity. */
const HUMID_DECADE =
  /humid[a-z]*[^.,;!?]{0,18}\b(?:in the )?(?:(low|mid|high|upper) )?(\d0['’]?s|sixties|seventies|eighties|nineties)\b/gi;
const TENS: Readonly<Record<string, number>> = { sixties: 60, seventies: 70, eighties: 80, nineties: 90 };

const humidDecades = (text: string): Reading[] =>
  [...text.matchAll(HUMID_DECADE)].flatMap((match) => {
    const low = entryOf(TENS, (match[2] ?? '').toLowerCase()) ?? Number.parseInt(match[2] ?? '', 10);
    return low >= 20 && low <= 90
      ? [{ ...spanOf(match), low: low / 100, high: Math.min(1, (low + 9) / 100), sure: 0.85 }]
      : [];
  });

const humidities = (text: string): Reading[] =>
  [...text.matchAll(HUMIDITY)].flatMap((match) => {
    const low = Number(match[1] ?? match[3] ?? match[4]);
    const high = Number(match[2] ?? low);
    const span = spanOf(match);
    return low >= 15 && high <= 100 && high >= low && nearHumidity(text, span)
      ? [{ ...span, low: low / 100 - 0.02, high: high / 100 + 0.02, sure: 0.9 }]
      : [];
  });

/** How wide a word about the weather is read. */
const WORD_WIDTH = { 'air-celsius': 5, 'relative-humidity': 0.12 } as const;
/** A thermometer is read to the degree, and told in either unit. */
const READ_TO = 0.6;

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

/** Words beside a temperature that make it that of something else than the air. */
const OF_ELSE = /iron|oven|coffee|pan|melt|flash|storage|above|below|at least|minimum|says|label/i;

const factOf = (
  text: string,
  fact: 'air-celsius' | 'relative-humidity',
  readings: readonly Reading[],
): HeardFact[] => {
  const best = readings
    .map((reading) => ({
      ...reading,
      // "the can says 4 hours; humidity is 40 %"
      sure: OF_ELSE.test(
        text.slice(Math.max(0, reading.from - 25), reading.from).replace(/^.*[.;!?,]\s/s, ''),
      )
        ? reading.sure * 0.6
        : reading.sure,
    }))
    .sort((a, b) => b.sure - a.sure)[0];
  if (!best) return [];
  const round = fact === 'air-celsius' ? tenth : (value: number) => Math.round(value * 100) / 100;
  const against = readings
    .filter(({ low, high }) => high < best.low || low > best.high)
    .map(({ from, to }) => ({ from, to }));
  return [
    {
      fact,
      value: round((best.low + best.high) / 2),
      range: [round(best.low), round(Math.min(best.high, fact === 'air-celsius' ? 50 : 1))],
      sure: against.length ? best.sure * 0.8 : best.sure,
      rests: [{ from: best.from, to: best.to }],
      against,
    },
  ];
};

/** Temperature and humidity of the air, in numbers of both units or in words. */
export const airOf = (
  text: string,
  words: readonly Word[],
  matches: readonly Match[],
  denied: (match: Match) => number | undefined,
): HeardFact[] => [
  ...factOf(text, 'air-celsius', [...temperatures(text), ...inWords(words, matches, 'air-celsius', denied)]),
  ...factOf(text, 'relative-humidity', [
    ...humidities(text),
    ...humidDecades(text),
    ...inWords(words, matches, 'relative-humidity', denied),
  ]),
];
