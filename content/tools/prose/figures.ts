/** Figures that hands act on (warmth, thickness of film, shares) and the claims that they rest on. */

const NUMBER = String.raw`\d+(?:\.\d+)?`;
const FIGURE = new RegExp(
  String.raw`(?<![\w.,/])(${NUMBER})(?: ?(?:to|–|-|and|or) ?(${NUMBER}))? ?(°F|°C|K|mil|µm|%|percent)(?![\p{L}\d])`,
  'gu',
);
const CLAIMS = /^claims:.*\n(?:[ -].*\n)*/m;
/** Pictures have measures of their own, and what people type is no advice. */
const NO_ADVICE = /^(?:boards|also|heard|not-heard|limits|best):.*\n(?:[ -].*\n)*/gm;

const SAME: Readonly<Record<string, string>> = { percent: '%', K: '°C' };
type Found = { readonly figure: string; readonly at: number; readonly ends: readonly string[] };

const foundIn = (text: string): Found[] =>
  [...text.matchAll(FIGURE)].map(({ 0: figure, 1: one, 2: two, 3: unit = '', index }) => ({
    figure,
    at: index,
    ends: [one, two].flatMap((end) => (end === undefined ? [] : [`${Number(end)} ${SAME[unit] ?? unit}`])),
  }));

/** The figures of the claims of a text. */
export const claimedIn = (text: string): readonly string[] =>
  foundIn(CLAIMS.exec(text)?.[0] ?? '').flatMap(({ ends }) => ends);

/** The figures of a file with claims of its own that none of `claimed` has. */
export const unclaimedIn = (text: string, claimed: ReadonlySet<string>): Found[] => {
  if (!CLAIMS.test(text)) return [];
  const blank = (part: string) => part.replace(/[^\n]/g, ' ');
  return foundIn(text.replace(CLAIMS, blank).replace(NO_ADVICE, blank)).filter(
    ({ ends }) => !ends.every((end) => claimed.has(end)),
  );
};
