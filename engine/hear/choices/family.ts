import type { HeardAmong, HeardFact } from '../words/heard.ts';
import { type Mention, settled, withoutBeaten } from '../words/mention.ts';
import { DOUBTED, FOLLOWS, SAID } from '../words/sure.ts';
import type { Span } from '../words/words.ts';

export type HeardChoices = { readonly facts: readonly HeardFact[]; readonly among: readonly HeardAmong[] };

/** Films that wax is rubbed over; the wax is then no top coat of its own. */
const FILMS = ['water-based', 'oil-based', 'wipe-on', 'shellac', 'lacquer', 'water-lacquer'];

/** What the kind named last, and the one laid last, is ahead of the others. */
const NAMED_LAST = 0.06;
const LAID_LAST = 0.22;

/** What is often laid or left below another coat. */
const isUnderlay = (family: string): boolean => ['wax', 'shellac', 'oil', 'lacquer'].includes(family);

const isFilm = (value: string): boolean => value.split('|').every((one) => FILMS.includes(one));

/** "satin poly on a table, rubbed with steel wool and wax": laid before the wax, whichever kind it was. */
const isFilmLaid = (all: readonly Mention[], open: readonly Mention[]): boolean => {
  const wax = all.findLast(({ value }) => value === 'wax');
  return (
    all.some(({ value, place }) => FILMS.includes(value) && place !== 'below') ||
    open.some(
      ({ value, place, laid, span }) =>
        isFilm(value) && laid && place !== 'below' && wax !== undefined && span.from < wax.span.from,
    )
  );
};

const leftOpen = (
  { value, span }: Mention,
  sure: HeardAmong['sure'],
  against: readonly Span[],
): HeardChoices => ({
  facts: [],
  among: [{ fact: 'family', values: value.split('|'), sure, rests: [span], against }],
});

const spansOf = (mentions: readonly Mention[]): readonly Span[] => mentions.map(({ span }) => span);

/** What is named last was laid last: wax, then poly. */
const isLaidOver = (open: Mention, last: Mention): boolean =>
  open.span.from > last.span.to && !open.value.split('|').includes(last.value) && isUnderlay(last.value);

/** The kind of top coat, and kinds that are left open. Of several, the one said to lie on top; else the last named. */
export const familyOf = (
  all: readonly Mention[],
  open: readonly Mention[],
  against: readonly Span[],
): HeardChoices => {
  const kinds = withoutBeaten('family', all);
  const mentions = isFilmLaid(all, open) ? kinds.filter(({ value }) => value !== 'wax') : kinds;
  const top = mentions.filter(({ place }) => place === 'top');
  const chosen = top.length ? top : mentions.filter(({ place }) => place !== 'below');
  // A kind left open that lies on top ("poly over shellac") shuts out a closed one below it.
  const openOnTop = open.filter(({ place }) => place !== 'below');
  if (chosen.length === 0) {
    const [first] = openOnTop.length ? openOnTop : open;
    if (first) return leftOpen(first, SAID, [...against, ...spansOf(mentions)]);
    const doubted = mentions.map((one) => ({ ...one, weight: DOUBTED }));
    return { facts: settled('family', doubted, against), among: [] };
  }
  // Of several kinds the one that was laid last lies on top; one that is only named counts less.
  const last = chosen.findLast(({ laid }) => laid) ?? chosen.at(-1);
  const opened = openOnTop.at(-1);
  if (last && opened && top.length === 0 && isLaidOver(opened, last))
    return leftOpen(opened, FOLLOWS, spansOf(mentions));
  const weighed = chosen.map((one) => ({
    ...one,
    weight: one.weight + (one !== last ? 0 : one.laid ? LAID_LAST : NAMED_LAST),
  }));
  const beaten = mentions.filter((one) => !chosen.includes(one));
  return { facts: settled('family', weighed, [...against, ...spansOf(beaten)]), among: [] };
};
