import type { ReplyWords } from '../../model/reply-words.ts';
import { filled } from '../../plain/filled.ts';
import type { Considered } from '../belief/consider.ts';
import type { Heard } from '../words/heard.ts';
import { askedHands } from './asked-hands.ts';
import { isFirm, isFresh, QUIET, WIPED } from './orders.ts';
import { toldSure } from './told-sure.ts';

/** So many things are denied. */
const DENIED = 2;

/**
 * "No, do not wipe them." It is said where hands are off, or where nobody knows yet; what may be right of an oil, of a spill
 * (`atOnce`), or of a film that is dry, is left to the verdict.
 */
export const denials = (
  considered: Considered,
  atOnce: string,
  heard: Heard | undefined,
  words: ReplyWords,
): string => {
  const firm = isFirm(considered);
  if (!heard || (firm && considered.now && !QUIET.includes(considered.now.do))) return '';
  const { hold } = words.says;
  const asked = askedHands(heard.text, words);
  const family = toldSure(heard, 'family');
  // The plan's own row on wax below any film (content/plan.yaml) says why not.
  if (family === 'wax' && asked.some(({ hand }) => hand === 'coat')) return hold['over-wax'];
  const kinds =
    family === undefined
      ? (heard.among.find(({ fact }) => fact === 'family')?.values ?? WIPED)
      : [String(family)];
  const mayWipe = !firm && (atOnce !== '' || kinds.some((kind) => WIPED.includes(kind)));
  const denied = asked.filter(({ hand }) => !(mayWipe && hand === 'wipe')).map((one) => one.denied);
  if (!denied.length) return '';
  const hands = denied.slice(0, DENIED).reduce((one, other) => filled(hold['no-two'], { one, other }));
  return filled(isFresh(considered) ? hold.no : hold['not-yet'], { hands });
};
