import { type Mention, PLAIN } from '../words/mention.ts';

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
  /\b(?:(?:of|from)|(?:made|built|bought|painted|finished|refinished|varnished)(?: (?:it|this|that|them))?(?: by (?:\w+ ){0,2}\w+)?(?: back)? in) the (?:19)?[3-8]0['’]?s\b(?!\s*(?:to|degree|°|f\b))/gi;
const YEAR = /\b(1[89]\d\d|20[0-4]\d)(?:['’]?s)?\b/g;
/** "a 1936 book", "paint before 1978 may have lead": no year of this paint. */
const OF_ELSE =
  /\b(?:books?|magazines?|catalog|planes?|truck|car|law|ban|standard|style|reprint|edition|build|they say|sell|sold|born|route|highway|call|dial|founded|firm|company|recipe|patent)\b/i;
const NEAR = 24;
/** "my knees, at 68 years old" */
const OF_PERSON =
  /\b(?:at|i am|he is|she is|i['’]?m|he['’]?s|she['’]?s|dad['’]?s|mom['’]?s|who['’]?s|uncle['’]?s)\s+$/i;
const OLD_BEFORE = 1993;

const isOf1993 = (found: string): string => (Number(found) < OLD_BEFORE ? 'before-1993' : 'since-1993');

/** The words before a year, back to a stop, and the few behind it. */
const isOfElse = (text: string, { index, 0: said }: RegExpExecArray): boolean => {
  const before = text.slice(Math.max(0, index - NEAR), index).replace(/^.*[.;!?,]/s, '');
  const after = text.slice(index + said.length, index + said.length + NEAR).replace(/[.;!?,].*$/s, '');
  return (
    OF_ELSE.test(before) ||
    /^['’]?s?\s*(?:\w+\s){0,2}(?:books?|magazine|style|colou?rs?|look|truck|car|may have)\b/i.test(after)
  );
};

/** How old a piece is, by years, decades and its own age. */
export const ageOf = (text: string): Mention[] => {
  const mention = (found: RegExpExecArray, value: string, weight: number): Mention => ({
    value,
    weight,
    span: { from: found.index, to: found.index + found[0].length },
    place: undefined,
  });
  return [
    ...[...text.matchAll(YEAR)]
      .filter((found) => !isOfElse(text, found))
      .map((found) => mention(found, isOf1993(found[1] ?? ''), PLAIN)),
    ...[...text.matchAll(DECADE)].map((found) => mention(found, 'before-1993', PLAIN)),
    ...[...text.matchAll(OF_DECADE)].map((found) => mention(found, 'before-1993', PLAIN)),
    ...[...text.matchAll(SHORT_DECADE)].map((found) => mention(found, 'before-1993', PLAIN)),
    ...[...text.matchAll(YEARS_OLD)]
      .filter(
        (found) => !(Number(found[1]) < SURELY_OLD_YEARS) && !OF_PERSON.test(text.slice(0, found.index)),
      )
      .map((found) => mention(found, 'before-1993', PLAIN)),
  ];
};
