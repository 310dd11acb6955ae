import { entryOf } from '../../plain/entry-of.ts';
import { clauseAround, isWayTo, type Reading, spanOf } from '../words/reading.ts';
import { FOLLOWS, HALF, OUTRIGHT, PLAINLY, SAID } from '../words/sure.ts';
import type { Span } from '../words/words.ts';

const NUMBER = String.raw`(-?\d{1,3}(?:\.\d)?)`;
const UP_TO = String.raw`(?:\s*(?:-|–|to|or|and)\s*${NUMBER})?`;
const DEGREES = new RegExp(
  String.raw`(?<![\d.,])${NUMBER}${UP_TO}(?:\s*(?:°|º|degrees?|deg\.?))?\s*(f|c|fahrenheit|celsius|centigrade)(?![a-z])`,
  'gi',
);
const BARE_DEGREES = new RegExp(
  String.raw`(?<![\d.,])${NUMBER}${UP_TO}\s*(?:°|º|deg(?:rees?)?(?![a-z]))(?!\s*(?:°|f\b|c\b|fahr|cels|centi|angle|over|below|above))`,
  'gi',
);
const DECADE = /\b(?:in the |the )?(low|mid|middle|high|upper|in the)[\s-]+([4-9]0)['’]?s\b/gi;
/** A number alone near words of the air, in the range in which Fahrenheit is told: "62 or so", "about 85 and sticky out". */
const BARE =
  /(?<![\d.,$#:/-])(\d{2,3}(?:\.\d)?)(?:\s*(?:-|–|to|or|and)\s*(\d{2,3}))?(?![\d.,]*\d|\s*(?:-|–|to|or|and)\s*\d+\s*(?:%|percent|grit|psi)|\s*(?:%|percent|°|º|deg|f\b|c\b|grit|year|hour|hr|minute|min\b|day|week|month|second|coat|foot|feet|ft|inch|mile|mile|lb|pound|psi|ml|oz|gal|gauge|paper|x\b|by \d|in a row|times|people|pieces|bucks|dollar|rpm|mil|mics?\b|micron|doors|'|"|s\b|th\b|wet))/gi;
const OF_AIR =
  /\b(?:temps?|temperatures?|thermometer|thermostat|heat(?:er|ed)?|cool|cold|chilly|warm(?:ish)?|hot|sticky out|out(?:side)?|indoors|inside|air|in (?:here|there)|in (?:the|my|our|his|her) (?:shop|garage|basement|house|room|hall|shed|shade|sun|day|night|winter|summer|trailer|barn|attic|booth)|(?:shop|garage|basement|room|house|cellar|attic|shed|porch|temps?|barn|booth|trailer)(?:['’]?s)? (?:is|was|at|stays?|stayed|about|around|between|got|gets|down|up|dropped|fell|went|hits?|reached)|(?:got|dropped|fell|dipped|went|down|climb\w*) (?:down )?to|at night|all day|by (?:day|night|bedtime|noon|evening|morning)|kept? (?:it )?at|keeps? (?:it )?(?:at|around|about)|held at|sits at|sat at|set (?:to|at)|heated to|warmed to|degrees?|weather (?:said|says|was)|booth at|when i (?:varnished|brushed|sprayed|rolled|coated|laid|shot|put)|and (?:raining|snowing|sunny|dry|humid|muggy|damp|foggy)|never got past|now it['’]?s)\b/i;
const NOT_OF_AIR =
  /\b(?:grit|sanded|sand|sandpaper|paper|pads?|psi|gloss|with|wool|mesh|no\.?|number|model|from|since|size|age|aged|only|my dad['’]?s|im|i['’]m|humid\w*|hum|rh|hygrometer|dew point|mic['’]?d)(?:\s+(?:is|was|at|of|about|around|runs?|between|jumped to|never under|over))*\s*$/i;
const BARE_LEAST = 35;
const BARE_MOST = 110;
const BARE_NEAR = 24;

const celsius = (fahrenheit: number): number => ((fahrenheit - 32) * 5) / 9;
/** Bare degrees from here on are Fahrenheit: nobody coats at 45 °C. */
const SURELY_FAHRENHEIT = 38;
/** Bare degrees from here on may be a day for a coat in Celsius; below, the air is too cold in either unit. */
const MAY_BE_CELSIUS = 8;
/** "2 degrees colder" tells of a difference. */
const APART = /^\s*(?:warm|cool|cold|hott|high|low|less|more|off|differ|apart|drop|rise|up|down)/i;
/** Where it is said to be hot, or a coat sets too fast, bare degrees like these are Celsius: no such place is at freezing. */
const HOT_CELSIUS = 28;
const MOST_CELSIUS = 48;
/** A thermometer is read to the degree, and told in either unit. */
const READ_TO = 0.6;

/** "in the low sixties": which of the ten. */
const PART_OF_TEN: Readonly<Record<string, readonly [number, number]>> = {
  low: [0, 3],
  mid: [4, 6],
  middle: [4, 6],
  high: [7, 9],
  upper: [7, 9],
};

/** "grandpa made it in the 60s" tells of years. */
const MADE_IN =
  /\b(?:made|built|bought|painted|finished|refinished|varnished)(?: (?:it|this|that|them))?(?: by (?:\w+ ){0,2}\w+)?(?: back)? $/i;
/** "mitered at 45 degrees" tells of an angle, "a hot box that holds 100 degrees" and "when I was 15 … 90 degrees" of another place. */
const NO_AIR =
  /\b(?:miter(?:ed)?|bevel\w*|angle|cut|tilt\w*|turn\w*|rotat\w*|box that holds|when i was \d+[^.]*)\b[^.;,]{0,12}$/i;

/** What reads a surface, or is one: "52 w/ my IR gun", "the panel itself read 58", "110 on the surface". */
const OF_SURFACE =
  /\b(?:laser|infra-?red|ir(?: (?:gun|thermometer))?|pyrometer|surface|(?:wood|panel|board|slab|top|steel|metal|iron|legs?|piece|glass|marble|stone)(?: \w+)?(?: itself)? (?:read|reads|reading|measures|measured|temp\w*|was (?:only |at |about )?\d)|touch(?:ing)? the wood)\b/i;
const IN_THE_AIR = /\b(?:air|room|weather|thermostat|outside|shop|garage)\b/i;

/** A figure as it is told: in its own unit, as the text has it, and whether the unit is sure. */
type Told = Span & { readonly low: number; readonly high: number; readonly sure: number };

const add = (found: Told[], span: Span, a: number, b: number, sure: number): void => {
  found.push({ ...span, low: Math.min(a, b) - READ_TO, high: Math.max(a, b) + READ_TO, sure });
};

/** The figures of a match, least first as they are told; what goes from one to the other ended at the last. */
const lowAndHigh = (text: string, match: RegExpMatchArray): readonly [number, number] => {
  const [first, last] = [Number(match[1]), Number(match[2] ?? match[1])];
  return isWayTo(text, match.index ?? 0) ? [last, last] : [first, last];
};

/** What the text tells of the place beside its figures, looked up only where a figure asks for it. */
type Place = { readonly isHot: () => boolean; readonly isMetric: () => boolean };
const NO_PLACE: Place = { isHot: () => false, isMetric: () => false };

/** Numbers that name a degree, and bare ones beside words of the air or of a surface. */
const figures = (text: string, { isHot, isMetric }: Place): Told[] => {
  const found: Told[] = [];
  for (const match of text.matchAll(DEGREES)) {
    const [low, high] = lowAndHigh(text, match);
    const convert = /^f/i.test(match[3] ?? '') ? celsius : (value: number) => value;
    add(found, spanOf(match), convert(low), convert(high), OUTRIGHT);
  }
  for (const match of text.matchAll(BARE_DEGREES)) {
    const [low, high] = lowAndHigh(text, match);
    if (NO_AIR.test(text.slice(Math.max(0, match.index - 60), match.index))) continue;
    if (low >= HOT_CELSIUS && high <= MOST_CELSIUS && (isHot() || isMetric()))
      add(found, spanOf(match), low, high, PLAINLY);
    else if (high >= SURELY_FAHRENHEIT) add(found, spanOf(match), celsius(low), celsius(high), PLAINLY);
    else if (low >= MAY_BE_CELSIUS) add(found, spanOf(match), low, high, isMetric() ? PLAINLY : HALF);
    else if (isOfAir(text, spanOf(match))) add(found, spanOf(match), low, high, PLAINLY);
  }
  for (const match of text.matchAll(BARE)) {
    const [low, high] = lowAndHigh(text, match);
    const span = spanOf(match);
    const before = text.slice(Math.max(0, span.from - BARE_NEAR), span.from).replace(/^.*[.!?;](?=\s)/s, '');
    const after = (text.slice(span.to, span.to + BARE_NEAR).match(/^(?:[^.!?;]|\.(?=\d))*/) ?? [''])[0];
    if (high > BARE_MOST || high < low || NOT_OF_AIR.test(before)) continue;
    if (low >= BARE_LEAST && (OF_AIR.test(before) || OF_AIR.test(after) || isOfSurface(text, span)))
      add(found, span, celsius(low), celsius(high), FOLLOWS);
  }
  return found;
};

/** Whether words of the air stand around a figure of degrees, and it is no difference. */
const isOfAir = (text: string, { from, to }: Span): boolean => {
  const { before, after } = clauseAround(text, { from, to });
  return (OF_AIR.test(before) || OF_AIR.test(after)) && !APART.test(text.slice(to));
};

const isOfSurface = (text: string, span: Span): boolean => {
  const { before, after } = clauseAround(text, span);
  const number = text.slice(span.from, span.to);
  return (
    OF_SURFACE.test(`${before}${number}${after}`) &&
    !/\b(?:floor|ground|concrete)\b/i.test(before) &&
    !IN_THE_AIR.test(before)
  );
};

const decades = (text: string): Reading[] =>
  [...text.matchAll(DECADE)].flatMap((match) => {
    if (MADE_IN.test(text.slice(0, match.index))) return [];
    const [low, high] = entryOf(PART_OF_TEN, (match[1] ?? '').toLowerCase()) ?? [0, 9];
    const found: Told[] = [];
    add(found, spanOf(match), celsius(Number(match[2]) + low), celsius(Number(match[2]) + high), SAID);
    return found;
  });

/** The temperatures of a text: of the air, and of a surface that was measured. */
export const temperatures = (
  text: string,
  place: Place = NO_PLACE,
): { readonly air: Reading[]; readonly surface: Reading[] } => {
  const told = figures(text, place).filter(({ low, high }) => low >= -20 && high <= 60);
  const isOfFilm = (one: Told) => isOfSurface(text, one);
  return {
    air: [...told.filter((one) => !isOfFilm(one)), ...decades(text)].filter(({ high }) => high <= 50),
    surface: told.filter(isOfFilm),
  };
};

const NAMES_UNIT = /[fc]$|(?:fahrenheit|celsius|centigrade)$/i;
/** Up to here a bare figure may be either: at 50 and more nobody means °C. */
const EITHER_MOST = 48;

/** Bare degrees that may be either unit, as they stand in the text; nothing where the figure names its own. */
export const bareDegrees = (text: string, { from, to }: Span): string | undefined => {
  const said = text.slice(from, to).trim();
  const number = /^\d+(?:\.\d+)?/.exec(said)?.[0];
  return number !== undefined && !NAMES_UNIT.test(said) && Number(number) <= EITHER_MOST ? said : undefined;
};
