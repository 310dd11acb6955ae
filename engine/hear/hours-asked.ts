import { type Family, WITH_FILM } from '../model/family.ts';
import type { WordingKind } from '../model/wordings.ts';
import { entryOf } from '../plain/entry-of.ts';
import { lower } from '../plain/text.ts';
import { each, type Layers, layersOf, saidEnds, sentencesOf, type TableAnswer } from './layers-asked.ts';
import type { Ear, Match } from './match.ts';
import type { Waits } from './waits.ts';
import type { Word } from './words.ts';

/** The kinds that are told of where none is named. */
const WITHOUT_KIND: readonly Family[] = ['water-based', 'oil-based', 'lacquer'];
/** So many kinds or rows are told of at most. */
const MOST_KINDS = 3;
const MOST_ROWS = 2;

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
const waitsBelow = ({ below, over }: Waits, { tops, belows, bases }: Layers): readonly string[] => [
  ...rowsFor(
    below.map((row) => ({ ...row, under: row.bases })),
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
const led = (why: string): string =>
  /^(?:A day|Overnight)/.test(why) ? `Before the next layer: ${lower(why)}` : why;

const isAsking = (ear: Ear, sentence: string): boolean =>
  ear.says('time', sentence) || ear.says('late', sentence);

/** Whether a text asks for a time at all. */
export const asksForTime = (ear: Ear, text: string): boolean =>
  sentencesOf(text).some(({ from, to }) => isAsking(ear, text.slice(from, to)));

/**
 * The hours that a text asks for, from the tables: until the next coat, until a coat is dry or cured, and how long what lies
 * below waits. Only what is asked in a sentence of its own; of what is wrong with a coat the flaws tell.
 */
export const hoursAsked = (
  ear: Ear,
  waits: Waits,
  text: string,
  words: readonly Word[],
  matches: readonly Match[],
): TableAnswer | undefined => {
  const asking = sentencesOf(text).filter(({ from, to }) => isAsking(ear, text.slice(from, to)));
  if (!asking.length || ear.says('not-time', text)) return undefined;
  const asks = (what: WordingKind) => asking.some(({ from, to }) => ear.says(what, text.slice(from, to)));
  const { tables } = ear.lexicon;
  const said = (answer: string, on: 'clock' | 'waits', isWait: boolean): TableAnswer => ({
    asked: { answer, ...tables[on] },
    isWait,
    asking,
  });
  const { tops, belows, bases } = layersOf(ear, words, matches);
  const named = tops.length ? tops : belows;
  const again = asks('next-coat') && !asks('after-last');
  const below = tops.length && again ? [] : waitsBelow(waits, { tops, belows, bases });
  if (below.length && asks('goes-over')) {
    // Where the kind on top is told its own row comes first, and what holds for many is no softer word behind it.
    const rows = below.slice(0, tops.length ? 1 : MOST_ROWS);
    return said(`${rows.map(led).join(' ')} ${tables.can}`, 'waits', true);
  }
  // Of paint and stain the tables know no coats.
  if ((bases.length || ear.says('of-paint', text)) && !tops.length) return undefined;
  if (!named.length && !again) return undefined;
  const kinds = (named.length ? named : WITHOUT_KIND).slice(0, MOST_KINDS);
  const told = kinds.flatMap((kind) => entryOf(waits.kinds, kind) ?? []);
  if (!told.length) return undefined;
  const air = `${tables.air} ${tables.can}`;
  const hasFilm = kinds.some((kind) => (WITH_FILM as readonly string[]).includes(kind));
  if (asks('late') && kinds.length && told.some(({ dull }) => dull))
    return said(
      `Not too late: ${lower(
        each(
          told.filter(({ dull }) => dull),
          'is dulled first',
          ({ dull }) =>
            `with a few light strokes by hand once it is older than ${dull ? saidEnds(dull) : ''}`,
        ),
      )}, and then takes the next coat. ${tables.can}`,
      'clock',
      true,
    );
  if (again)
    return said(
      `${each(told, 'takes the next coat', ({ recoat }) => `after ${saidEnds(recoat)}`)}, ${air}${hasFilm ? ` ${tables.powders}` : ''}`,
      'clock',
      true,
    );
  if (asks('cured'))
    return said(
      `${each(told, 'takes', ({ use, cure }) => `light use after ${saidEnds(use, true)} and is cured after ${saidEnds(cure, true)}`)}, ${air}`,
      'clock',
      false,
    );
  // Of several kinds less is said of each, so that a short reply holds them all.
  const dries = ({ touch, recoat, cure }: (typeof told)[number]): string =>
    told.length > 1
      ? `dry to the touch after ${saidEnds(touch)}, coated after ${saidEnds(recoat)}`
      : `dry to the touch after ${saidEnds(touch)}, ready for the next coat after ${saidEnds(recoat)}, cured after ${saidEnds(cure, true)}`;
  if (asks('dry')) return said(`${each(told, 'is', dries)}, ${air}`, 'clock', false);
  return undefined;
};
