import { type Family, WITH_FILM } from '../model/family.ts';
import { entryOf } from '../plain/entry-of.ts';
import { lower } from '../plain/text.ts';
import { each, type Layers, layersOf, saidEnds, sentencesOf, type TableAnswer } from './layers-asked.ts';
import type { Ear, Match } from './match.ts';
import type { Waits } from './waits.ts';
import type { Word } from './words.ts';

/** "how long", "when can I", "drying time": a time is asked for. */
const ASKS =
  /\bhow (?:long|soon|much (?:time|longer)|many (?:hours|days|weeks))\b|\bwhen (?:(?:i|we|she|he|they|it|you) )?(?:can|may|should|could|do|does|is|will|would|to)\b|\b(?:dry|drying|cure|curing|re-?coat|wait(?:ing)?) times?\b|\btime between\b|\b(?:can|should|may|could) (?:i|we) (?:already )?(?:re-?coat|(?:put|lay|brush|spray|roll|wipe|apply|add|do) (?:on )?(?:the|a|another|my) (?:\w+ )?coat|sand)\b.*\b(?:today|tonight|tomorrow|after|in|yet|now|already)\b/i;
/** What is waited for. The first that is found is meant. */
const RECOAT =
  /\bre-?coat|\b(?:second|next|another|more|third|fourth|2nd|3rd|final|last|new|following|additional) coats?\b|\bbetween (?:\w+ ){0,2}(?:coats|layers)\b|\bcoats apart\b|\bbefore (?:(?:i|we|you) (?:can )?)?(?:lightly )?sand(?:ing)?\b|\bwhen (?:can|may|should|could|do) (?:i|we|you) (?:lightly )?sand\b|\bsand(?:ed|ing)? (?:it|between)\b/i;
/** "how long after the last coat till it is cured": no other coat follows. */
const AFTER_LAST = /\b(?:after|since) (?:the |my |our )?(?:last|final) (?:coat|layer)\b/i;
const LATE =
  /\btoo (?:late|long)\b|\bhow late\b|\bwaited (?:too|so) long\b|\b(?:missed|miss|past|outside) the (?:recoat )?window\b/i;
const CURES =
  /\bcur(?:e|es|ed|ing)\b|\b(?:fully|completely|all the way|rock|through(?:ly)?) (?:hard|dry|set)\b|\bharden(?:s|ed|ing)?\b|\b(?:put|set|place) (?:\w+ ){1,5}back\b|\b(?:put|set|stand|place) (?:hot|dishes|plates|cups|mugs|things|stuff|books|anything)\b|\buse (?:it|the|my|this)\b|\bready (?:to|for) use\b/i;
const DRIES = /\bdr(?:y|ies|ied|ying)\b/i;
/** A wait for what lies below is asked for by its drying or by what comes over it. */
const GOES_OVER =
  /\b(?:dr(?:y|ies|ied|ying)|wait|before|after|over|under|until|spray|brush|wipe|seal|top ?coat|finish|coat|cure)/i;
/** Times of other things: of a can, of a mixture, of a stripper, of work, and of what is wrong. */
const OF_ELSE =
  /\b(?:2k|two[- ](?:part|pack|component)|hardener|catal[yi]\w*|epoxy|resin|conversion|stripper|strip|shelf|lasts|lasted|(?:will|does|do|to|it) last|keep|store|stored|smell\w*|odou?r|still|won[’']?t|never|brushes|rags?|steam|clean(?:ed|ing)?|glue|filler|putty|primer|caulk|not (?:dry|drying|cur))\b/i;
/** Where no kind of top coat is named, these tell of another coat. */
const OF_PAINT = /\b(?:paint(?:s|ed|ing)?|enamel|stain(?:s|ed|ing)?|primer|dye)\b/i;
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

const isAsking = (sentence: string): boolean => ASKS.test(sentence) || LATE.test(sentence);

/** Whether a text asks for a time at all. */
export const asksForTime = (text: string): boolean =>
  sentencesOf(text).some(({ from, to }) => isAsking(text.slice(from, to)));

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
  const asking = sentencesOf(text).filter(({ from, to }) => isAsking(text.slice(from, to)));
  if (!asking.length || OF_ELSE.test(text)) return undefined;
  const asks = (what: RegExp) => asking.some(({ from, to }) => what.test(text.slice(from, to)));
  const { tables } = ear.lexicon;
  const said = (answer: string, on: 'clock' | 'waits', isWait: boolean): TableAnswer => ({
    asked: { answer, ...tables[on] },
    isWait,
    asking,
  });
  const { tops, belows, bases } = layersOf(ear, words, matches);
  const named = tops.length ? tops : belows;
  const again = asks(RECOAT) && !asks(AFTER_LAST);
  const below = tops.length && again ? [] : waitsBelow(waits, { tops, belows, bases });
  if (below.length && asks(GOES_OVER)) {
    // Where the kind on top is told its own row comes first, and what holds for many is no softer word behind it.
    const rows = below.slice(0, tops.length ? 1 : MOST_ROWS);
    return said(`${rows.map(led).join(' ')} ${tables.can}`, 'waits', true);
  }
  // Of paint and stain the tables know no coats.
  if ((bases.length || OF_PAINT.test(text)) && !tops.length) return undefined;
  if (!named.length && !again) return undefined;
  const kinds = (named.length ? named : WITHOUT_KIND).slice(0, MOST_KINDS);
  const told = kinds.flatMap((kind) => entryOf(waits.kinds, kind) ?? []);
  if (!told.length) return undefined;
  const air = `${tables.air} ${tables.can}`;
  const hasFilm = kinds.some((kind) => (WITH_FILM as readonly string[]).includes(kind));
  if (asks(LATE) && kinds.length && told.some(({ dull }) => dull))
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
  if (asks(CURES))
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
  if (asks(DRIES)) return said(`${each(told, 'is', dries)}, ${air}`, 'clock', false);
  return undefined;
};
