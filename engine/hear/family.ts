import type { HeardAmong, HeardFact } from './heard.ts';
import { type Mention, settled, withoutBeaten } from './mention.ts';
import { DOUBTED, FOLLOWS, SAID } from './sure.ts';
import type { Span } from './words.ts';

export type HeardChoices = { readonly facts: readonly HeardFact[]; readonly among: readonly HeardAmong[] };

/** Films that wax is rubbed over; the wax is then no top coat of its own. */
const FILMS = ['water-based', 'oil-based', 'wipe-on', 'shellac', 'lacquer', 'water-lacquer'];

/** What the kind named last, and the one laid last, is ahead of the others. */
const NAMED_LAST = 0.06;
const LAID_LAST = 0.22;

/** What is often laid or left below another coat. */
const isUnderlay = (family: string): boolean => ['wax', 'shellac', 'oil', 'lacquer'].includes(family);

/** The kind of top coat, and kinds that are left open. Of several, the one said to lie on top; else the last named. */
export const familyOf = (
  all: readonly Mention[],
  open: readonly Mention[],
  against: readonly Span[],
): HeardChoices => {
  const isFilm = (value: string): boolean => value.split('|').every((one) => FILMS.includes(one));
  const wax = all.findLast(({ value }) => value === 'wax');
  // "satin poly on a table, rubbed with steel wool and wax": laid before the wax, whichever kind it was.
  const film =
    all.some(({ value, place }) => FILMS.includes(value) && place !== 'below') ||
    open.some(
      ({ value, place, laid, span }) =>
        isFilm(value) && laid && place !== 'below' && wax !== undefined && span.from < wax.span.from,
    );
  const kinds = withoutBeaten('family', all);
  const mentions = film ? kinds.filter(({ value }) => value !== 'wax') : kinds;
  const top = mentions.filter(({ place }) => place === 'top');
  const free = mentions.filter(({ place }) => place !== 'below');
  // A kind left open that lies on top ("poly over shellac") shuts out a closed one below it.
  const openOnTop = open.filter(({ place }) => place !== 'below');
  const chosen = top.length ? top : free;
  if (chosen.length === 0 || (openOnTop.length > 0 && top.length === 0 && free.length === 0)) {
    const [first] = openOnTop.length ? openOnTop : open;
    const lastBelow = openOnTop.length ? [] : mentions;
    if (!first)
      return {
        facts: settled(
          'family',
          lastBelow.map((one) => ({ ...one, weight: DOUBTED })),
          against,
        ),
        among: [],
      };
    return {
      facts: [],
      among: [
        {
          fact: 'family',
          values: first.value.split('|'),
          sure: SAID,
          rests: [first.span],
          against: [...against, ...mentions.map(({ span }) => span)],
        },
      ],
    };
  }
  // Of several kinds the one that was laid last lies on top; one that is only named counts less.
  const last = chosen.findLast(({ laid }) => laid) ?? chosen.at(-1);
  const opened = openOnTop.at(-1);
  // What is named last was laid last: wax, then poly.
  if (
    last &&
    opened &&
    top.length === 0 &&
    opened.span.from > last.span.to &&
    !opened.value.split('|').includes(last.value) &&
    isUnderlay(last.value)
  )
    return {
      facts: [],
      among: [
        {
          fact: 'family',
          values: opened.value.split('|'),
          sure: FOLLOWS,
          rests: [opened.span],
          against: mentions.map(({ span }) => span),
        },
      ],
    };
  const weighed = chosen.map((one) => ({
    ...one,
    weight: one.weight + (one !== last ? 0 : one.laid ? LAID_LAST : NAMED_LAST),
  }));
  return {
    facts: settled('family', weighed, [
      ...against,
      ...mentions.filter((one) => !chosen.includes(one)).map(({ span }) => span),
    ]),
    among: [],
  };
};
