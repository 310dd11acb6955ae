import { type Family, WITH_FILM } from '../../model/family.ts';
import type { WordingKind } from '../../model/wordings.ts';
import { entryOf } from '../../plain/entry-of.ts';
import { lower } from '../../plain/text.ts';
import type { Ear, Match } from '../words/match.ts';
import type { Word } from '../words/words.ts';
import { each, layersOf, saidEnds, sentencesOf, type TableAnswer } from './layers-asked.ts';
import type { Waits } from './waits.ts';
import { waitAsked } from './waits-asked.ts';

/** The kinds that are told of where none is named. */
export const WITHOUT_KIND: readonly Family[] = ['water-based', 'oil-based', 'lacquer'];
/** So many kinds are told of at most. */
const MOST_KINDS = 3;

const isAsking = (ear: Ear, sentence: string): boolean =>
  (['time', 'late', 'use'] as const).some((kind) => ear.says(kind, sentence));

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
  isLaid: boolean,
): TableAnswer | undefined => {
  // "Brushed poly on Saturday, planning to sand tonight" asks as well: whether it may be sanded then.
  const isMeant = (sentence: string): boolean => isLaid && ear.says('work-ahead', sentence);
  const asking = sentencesOf(text).filter(({ from, to }) => {
    const sentence = text.slice(from, to);
    return isAsking(ear, sentence) || isMeant(sentence);
  });
  if (!asking.length || ear.says('not-time', text)) return undefined;
  const asks = (what: WordingKind) => asking.some(({ from, to }) => ear.says(what, text.slice(from, to)));
  const { tables } = ear.lexicon;
  const said = (answer: string, on: 'clock' | 'waits', isWait: boolean): TableAnswer => ({
    asked: { answer, ...tables[on] },
    isWait,
    asking,
  });
  const layers = layersOf(ear, words, matches);
  const { tops, belows, bases } = layers;
  // "When can the baby use it, last coat on Sunday" asks for no next coat, and no hour but the last counts for a child.
  const ofChild = ear.says('of-child', text);
  const goesOn = asks('next-coat') || (isLaid && asks('work-ahead'));
  const again = goesOn && !asks('after-last') && !(ofChild && asks('use'));
  const isUse = asks('use') && !again;
  const below = (tops.length && again) || isUse ? undefined : waitAsked(ear, waits, layers, asks);
  if (below) return said(`${below} ${tables.can}`, 'waits', true);
  const named = tops.length ? tops : belows;
  // Of paint and stain the tables know no coats; what may be used wears a top coat.
  if ((bases.length || ear.says('of-paint', text)) && !tops.length && !isUse) return undefined;
  if (!named.length && !again && !isUse) return undefined;
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
  if (isUse || asks('cured')) {
    const cured = ofChild
      ? each(told, 'is', ({ cure }) => `cured after ${saidEnds(cure, true)}`)
      : each(
          told,
          'takes',
          ({ use, cure }) =>
            `light use after ${saidEnds(use, true)} and is cured after ${saidEnds(cure, true)}`,
        );
    // A child's thing has a rule of its own; where no kind is told there is room for the reason alone.
    const bare = isUse && !ofChild ? `${tables.bare} ` : '';
    return said(`${named.length ? bare : `${tables.unsaid} `}${cured}, ${air}`, 'clock', false);
  }
  // Of several kinds less is said of each, so that a short reply holds them all.
  const dries = ({ touch, recoat, cure }: (typeof told)[number]): string =>
    told.length > 1
      ? `dry to the touch after ${saidEnds(touch)}, coated after ${saidEnds(recoat)}`
      : `dry to the touch after ${saidEnds(touch)}, ready for the next coat after ${saidEnds(recoat)}, cured after ${saidEnds(cure, true)}`;
  if (asks('dry')) return said(`${each(told, 'is', dries)}, ${air}`, 'clock', false);
  return undefined;
};
