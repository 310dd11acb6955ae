import { type Family, WITH_FILM } from '../../model/family.ts';
import type { WordingKind } from '../../model/wordings.ts';
import { entryOf } from '../../plain/entry-of.ts';
import { lower } from '../../plain/text.ts';
import type { Ear } from '../words/match.ts';
import { each, type Layers, saidEnds } from './layers-asked.ts';
import type { Waits } from './waits.ts';

/** So many kinds or rows are told of at most. */
const MOST_KINDS = 3;
const MOST_ROWS = 2;
/** One row more is told where all of them leave room in a short reply. */
const ROOM = 380;
/** "Paint" that is not told closer is one of these. */
const PAINTS = ['latex-paint', 'oil-paint'] as const;
/** The films that are told of where wax asks for one and none is named. */
const FILMS: readonly Family[] = ['water-based', 'oil-based', 'lacquer'];

/** Rows that hold for many kinds first: where the top coat is left open they say the most. */
const widestFirst = <T extends { readonly families: readonly string[] }>(rows: readonly T[]): readonly T[] =>
  [...rows].sort((a, b) => b.families.length - a.families.length);

/** The sentences of the plan for what lies below, of those that hold for a kind on top, or of all where none is named. */
const rowsFor = (
  rows: readonly {
    readonly families: readonly string[];
    readonly why: string;
    readonly under: readonly string[];
  }[],
  under: readonly string[],
  tops: readonly string[],
): readonly string[] => [
  ...new Set(
    rows
      .filter((row) => row.under.some((one) => under.includes(one)))
      .filter((row) => !tops.length || row.families.some((one) => tops.includes(one)))
      .map(({ why }) => why),
  ),
];

/** The sentences of the plan for all that is named below. */
const waitsBelow = ({ below, over }: Waits, { tops, belows, bases, isOpen }: Layers): readonly string[] => [
  ...rowsFor(
    (isOpen ? widestFirst(below) : below).map((row) => ({ ...row, under: row.bases })),
    bases,
    tops,
  ),
  ...(tops.length
    ? rowsFor(
        over.map((row) => ({ ...row, under: row.below })),
        belows,
        tops,
      )
    : []),
];

/** A row that begins with its time says nothing of what it is before. */
export const led = (why: string): string =>
  /^(?:A day|Overnight)/.test(why) ? `Before the next layer: ${lower(why)}` : why;

/** As many rows as a short reply has room for. */
const roomFor = (rows: readonly string[], most: number): string =>
  [most, most - 1].map((count) => rows.slice(0, count).join(' ')).find((said) => said.length <= ROOM) ??
  rows.slice(0, 1).join(' ');

/** "How long before wax over paint": what is called paint alone is told by each kind of it, with its name. */
const paintWaits = ({ below, bases }: Waits, tops: readonly string[]): string => {
  const ofEach = PAINTS.map((base) => {
    const rows = below.filter(
      (one) => one.bases.includes(base) && (!tops.length || tops.some((top) => one.families.includes(top))),
    );
    return widestFirst(rows).map(({ why }, at) => (at ? why : `${bases[base]}: ${lower(why)}`));
  });
  const firsts = ofEach.flatMap(([first]) => first ?? []);
  // Oil paint, the last of them, has the longer waits.
  const others = ofEach.toReversed().flatMap((rows) => rows.slice(1));
  return roomFor([...firsts, ...others], firsts.length + 1);
};

/** "How long before I can wax over shellac": the times of the film below, since wax has none of its own there. */
const waxWaits = (ear: Ear, { kinds }: Waits, { named, belows }: Layers): string => {
  const films = [...new Set([...belows, ...named])].filter((kind) =>
    (WITH_FILM as readonly string[]).includes(kind),
  );
  const told = (films.length ? films : FILMS)
    .slice(0, MOST_KINDS)
    .flatMap((kind) => entryOf(kinds, kind as Family) ?? []);
  const { tables } = ear.lexicon;
  const cured = each(told, 'is cured', ({ cure }) => `after ${saidEnds(cure, true)}`);
  return `${tables['wax-waits']} ${cured}, ${tables.air}`;
};

/** How long what lies below waits, where that is asked: by the rows of the plan, for paint by its kinds, under wax by the film. */
export const waitAsked = (
  ear: Ear,
  waits: Waits,
  layers: Layers,
  asks: (what: WordingKind) => boolean,
): string | undefined => {
  const { tops, bases, belows, named, isOpen } = layers;
  const isWax = named.includes('wax') && !belows.includes('wax') && asks('waxes');
  const below = waitsBelow(waits, isWax ? { ...layers, tops: ['wax'] } : layers);
  if (below.length && asks('goes-over')) {
    // Where the kind on top is told its own row comes first, and what holds for many is no softer word behind it.
    const most = isOpen ? MOST_ROWS + 1 : tops.length ? 1 : MOST_ROWS;
    return roomFor(below.map(led), most);
  }
  if (!bases.length && asks('paint-below') && (tops.length || isWax))
    return paintWaits(waits, isWax ? ['wax'] : tops);
  return isWax ? waxWaits(ear, waits, layers) : undefined;
};
