import { type Mention, PLAIN } from './mention.ts';

/** "80 years old", "a hundred years old"; decades in words. */
const YEARS_OLD = /\b(\d{2,3}|hundred|fifty|sixty|seventy|eighty|ninety)[ -]years?[ -]old\b/gi;
const SURELY_OLD_YEARS = 40;
const DECADE =
  /(?<!\b(?:in the|low|mid|high|upper|lower|around) )\b(?:twenties|thirties|forties|fifties|sixties|seventies|eighties)\b(?! (?:inside|outside|in the|degree))/gi;
/** "sideboard, 60s"; of the air and of grit the same is said with other words before it. */
const SHORT_DECADE =
  /(?<!\b(?:in the|the|low|mid|high|upper|lower|around|about) )(?<![\d$-])\b[3-8]0['’]?s\b(?!\s*(?:grit|degree|°|f\b|%|percent|humid))/gi;
/** "a chair of the 60s" is no weather. */
const OF_DECADE =
  /\b(?:(?:of|from)|(?:made|built|bought|painted|finished|varnished)(?: (?:it|this|that|them))?(?: back)? in) the (?:19)?[3-8]0['’]?s\b(?!\s*(?:to|degree|°|f\b))/gi;
const YEAR = /\b(1[89]\d\d|20[0-4]\d)(?:['’]?s)?\b/g;
const OLD_BEFORE = 1993;

const isOf1993 = (found: string): string => (Number(found) < OLD_BEFORE ? 'before-1993' : 'since-1993');

/** How old a piece is, by years, decades and its own age. */
export const ageOf = (text: string): Mention[] => {
  const mention = (found: RegExpExecArray, value: string, weight: number): Mention => ({
    value,
    weight,
    span: { from: found.index, to: found.index + found[0].length },
    place: undefined,
  });
  return [
    ...[...text.matchAll(YEAR)].map((found) => mention(found, isOf1993(found[1] ?? ''), PLAIN)),
    ...[...text.matchAll(DECADE)].map((found) => mention(found, 'before-1993', PLAIN)),
    ...[...text.matchAll(OF_DECADE)].map((found) => mention(found, 'before-1993', PLAIN)),
    ...[...text.matchAll(SHORT_DECADE)].map((found) => mention(found, 'before-1993', PLAIN)),
    ...[...text.matchAll(YEARS_OLD)]
      .filter((found) => !(Number(found[1]) < SURELY_OLD_YEARS))
      .map((found) => mention(found, 'before-1993', PLAIN)),
  ];
};
