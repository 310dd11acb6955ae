import type { WordingKind } from '../../model/wordings.ts';
import { entryOf } from '../../plain/entry-of.ts';
import { lower } from '../../plain/text.ts';
import type { Ear, Match } from '../words/match.ts';
import type { Span, Word } from '../words/words.ts';
import { type Layers, layersOf, saidEnds, sentencesOf, type TableAnswer } from './layers-asked.ts';
import type { Waits } from './waits.ts';
import { led } from './waits-asked.ts';

const MOST_KINDS = 3;

type Row = { readonly families: readonly string[] };

/** The row of the first of these kinds, and of the others where theirs is another. */
const rowsOf = <T extends Row>(
  rows: readonly T[],
  kinds: readonly string[],
): readonly (readonly [string, T])[] =>
  kinds.flatMap((kind) => {
    const row = rows.find(({ families }) => families.includes(kind));
    return row ? [[kind, row] as const] : [];
  });

const coatsSaid = ({ wear: { low, normal, high }, most }: Waits['coats'][number]): string =>
  low === high
    ? `${low} coats`
    : `${low} coats where it is little used, ${normal} for everyday use, ${high} in hard wear, ${most} at most`;

/** What does not go over what, by the first row that forbids it or makes it wait; nothing is promised of what fits. */
const overSaid = (
  { lexicon: { tables } }: Ear,
  { over }: Waits,
  tops: readonly string[],
  belows: readonly string[],
  asking: readonly Span[],
): TableAnswer | undefined => {
  const row = over.find(
    ({ below, families }) =>
      belows.some((one) => below.includes(one)) && tops.some((one) => families.includes(one)),
  );
  const isNamed = tops.length > 0 && belows.length > 0;
  return isNamed
    ? {
        asked: {
          answer: row ? `${row.why} ${row.instead}` : tables.fits,
          ...tables.layers,
        },
        isWait: false,
        asking,
      }
    : undefined;
};

/** Paints that a clear coat is laid over. */
const PAINTS: readonly string[] = ['chalk-paint', 'milk-paint', 'latex-paint', 'oil-paint'];

/** A top coat over paint: what the plan says of the two, how long the paint waits, and of wax between them. */
const paintedSaid = (
  { lexicon: { tables }, says }: Ear,
  { onBase, below, over }: Waits,
  { tops, belows, bases }: Layers,
  text: string,
): string | undefined => {
  const paints = bases.filter((base) => PAINTS.includes(base));
  // "or do I need wax first": wax is meant as what lies between.
  const films = tops.filter((kind) => kind !== 'wax');
  const [top = tops[0]] = films;
  if (!paints.length || top === undefined) return undefined;
  const isOf = (row: { readonly families: readonly string[] }) => row.families.includes(top);
  const isOn = (row: { readonly bases: readonly string[] }) =>
    row.bases.some((base) => paints.includes(base));
  const row = onBase.find((one) => isOf(one) && isOn(one));
  const wait = below.find((one) => isOf(one) && isOn(one));
  const isWaxed = films.length > 0 && (tops.includes('wax') || belows.includes('wax'));
  const wax = isWaxed ? over.find((one) => isOf(one) && one.below.includes('wax')) : undefined;
  return [
    // Wax that lies there has to come off; wax that is meant to come first is left out.
    ...(wax ? (says('wax-first', text) ? [tables['no-wax']] : [wax.why, wax.instead]) : []),
    ...(row ? [row.why, row.instead] : [tables.painted]),
    ...(wait ? [led(wait.why)] : []),
    tables.can,
  ].join(' ');
};

const listed = (answer: TableAnswer | undefined): readonly TableAnswer[] => (answer ? [answer] : []);

/** What is done to a coat of these kinds before the next. */
const sandingSaid = (
  { lexicon: { tables } }: Ear,
  waits: Waits,
  kinds: readonly string[],
  nameOf: (kind: string) => string,
  sanding: readonly Span[],
): TableAnswer | undefined => {
  if (!sanding.length) return undefined;
  const rows = rowsOf(waits.between, kinds);
  const told = rows.map(([kind, { grit, say }]) => {
    const recoat = grit && entryOf(waits.kinds, kind as keyof Waits['kinds'])?.recoat;
    const when = recoat ? `not before ${saidEnds(recoat)}; then P${grit}, ` : '';
    return `${nameOf(kind)}: ${when}${lower(say)}`;
  });
  if (!told.length) return undefined;
  const powders = rows.some(([, { grit }]) => grit) ? ` ${tables.powders}` : '';
  return {
    asked: {
      answer: `${told.join(' ')}${powders}`,
      ...tables.sanding,
      sands: true,
    },
    isWait: true,
    asking: sanding,
  };
};

/** How many coats of a kind are laid, what does not go over what, and what is done between them, where that is asked. */
export const rowsAsked = (
  ear: Ear,
  waits: Waits,
  text: string,
  words: readonly Word[],
  matches: readonly Match[],
): readonly TableAnswer[] => {
  const { tables } = ear.lexicon;
  const asks = (what: WordingKind): readonly Span[] =>
    sentencesOf(text).filter(({ from, to }) => ear.says(what, text.slice(from, to)));
  const [coats, sanding, over] = [asks('how-many'), asks('sands'), asks('over')];
  const { tops, belows, named } = layersOf(ear, words, matches);
  // "can I paint over shellac": paint is no kind of top coat, and holds over wax no better than one.
  if (!tops.length && belows.length && over.some(({ from, to }) => ear.says('paints', text.slice(from, to))))
    return listed(overSaid(ear, waits, ['water-based'], belows.includes('wax') ? ['wax'] : ['any'], over));
  const onPaint = over.length ? paintedSaid(ear, waits, layersOf(ear, words, matches), text) : undefined;
  if (onPaint) return [{ asked: { answer: onPaint, ...tables.layers }, isWait: true, asking: over }];
  if (!(coats.length || sanding.length || over.length) || ear.says('not-rows', text)) return [];
  const kinds = tops.slice(0, MOST_KINDS);
  const nameOf = (kind: string) =>
    entryOf(waits.kinds, kind as keyof Waits['kinds'])?.name.replace(/,.*/, '') ?? kind;
  // What lies below decides before any paper does.
  if (over.length && belows.length) return listed(overSaid(ear, waits, kinds, belows, over));
  const coatsTold = (): TableAnswer | undefined => {
    if (!coats.length || coats.some(({ from, to }) => ear.says('of-a-day', text.slice(from, to))))
      return undefined;
    const ofCans = ear.says('from-cans', text);
    const fit = waits.coats.filter((row) => !row.ofCans || ofCans);
    // "Coats of shellac first, then lacquer": each kind has its number, in the order in which they are laid.
    const each = asks('in-order').length && belows.length ? named.slice(0, MOST_KINDS) : kinds;
    const told = rowsOf(fit, each).map(([kind, row]) => `${nameOf(kind)}: ${coatsSaid(row)}.`);
    if (!told.length) return undefined;
    return {
      asked: {
        answer: `${told.join(' ')} ${tables.thin}`,
        ...tables.coats,
      },
      isWait: true,
      asking: coats,
    };
  };
  // Coats of one day are another matter than how a coat is sanded.
  if (coats.length && !coatsTold()) return [];
  return [...listed(coatsTold()), ...listed(sandingSaid(ear, waits, kinds, nameOf, sanding))];
};
