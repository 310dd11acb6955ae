import type { ReplyWords } from '../../model/reply-words.ts';
import { filled } from '../../plain/filled.ts';
import { firstSentence, lower } from '../../plain/text.ts';
import type { ActNow, Considered } from '../belief/consider.ts';
import type { Heard } from '../words/heard.ts';
import { toldSure } from './told-sure.ts';

/** Acts that leave the film alone: what not to do is all that is done. */
export const QUIET: readonly string[] = ['leave', 'wait', 'accept', 'stop'];
/** Acts after which nobody need fear for the coat today. */
export const KEPT: readonly string[] = ['leave', 'wait'];
/** Kinds that are wiped while they are wet: there a cloth may be right. */
export const WIPED: readonly string[] = ['oil', 'hardwax-oil', 'wax'];

/** From here on what it is stands, and how dry it is, or what mends it, alone is open. */
const FLAW_SURE = 0.9;
/** A likely flaw stands as well where no other is nearly as likely: "72 %, and the next one 1 %". */
const FAR_AHEAD = { first: 0.6, second: 0.06 } as const;

const isFlawSure = ({ likely: [first, second] }: Pick<Considered, 'likely'>): boolean =>
  (first?.chance ?? 0) >= FLAW_SURE ||
  ((first?.chance ?? 0) >= FAR_AHEAD.first && (second?.chance ?? 1) <= FAR_AHEAD.second);

/** Whether a coat still moves. */
export const isFresh = ({ stage }: Pick<Considered, 'stage'>): boolean =>
  stage === 'wet' || stage === 'setting';

/** Whether what hands do is known. */
export const isFirm = (considered: Pick<Considered, 'stage' | 'now'>): boolean =>
  considered.now !== undefined && (considered.now.sure || isFresh(considered));

type Hold = ReplyWords['says']['hold'];

export type Orders = { readonly short: string; readonly long: string };

/** What is said of an act whose hands are known. */
const ordersOfAct = (now: ActNow, isSure: boolean, hold: Hold): Orders => {
  if (now.hangs) {
    const held = isSure
      ? `${now.verdict}: ${lower(now.not)}`
      : filled(hold['until-known'], { verdict: now.verdict, not: now.not });
    return { short: held, long: held };
  }
  if (!QUIET.includes(now.do))
    return {
      short: `${now.verdict}. ${firstSentence(now.say)} ${now.not}`,
      long: `${now.verdict}. ${now.say} ${now.not}`,
    };
  const forbids = /^(?:no|nothing|do not|don[’']t)\b/i.test(now.not);
  const order = forbids ? `${now.verdict}: ${lower(now.not)}` : `${now.verdict}. ${now.not}`;
  return { short: order, long: `${order} ${now.say}` };
};

/**
 * What to do and what not, no surer than the verdict: until hands are known, that it is left alone but for `atOnce`, what
 * can not wait.
 */
export const ordersOf = (considered: Considered, atOnce: string, { hold }: ReplyWords['says']): Orders => {
  const { now } = considered;
  const isSure = isFlawSure(considered);
  if (now && isFirm(considered)) return ordersOfAct(now, isSure, hold);
  if (now?.flaw && KEPT.includes(now.do))
    return {
      short: `${now.verdict}. ${firstSentence(now.say)} ${hold.wary}`,
      long: `${now.verdict}. ${now.say} ${hold.wary}`,
    };
  const open = !isSure ? hold['which-it-is'] : now ? hold['what-mends-it'] : hold['how-dry-it-is'];
  const alone = `${atOnce || filled(hold.open, { open })} ${hold.wary}`;
  return { short: alone, long: alone };
};

/** What hands do to a coat that still moves, whatever else is said of it. */
export const handsOff = (considered: Considered, { hold }: ReplyWords['says']): readonly string[] =>
  isFresh(considered) && considered.now ? [ordersOfAct(considered.now, false, hold).short] : [];

/** So long after it was laid, in hours, no coat of the kinds that dry by themselves is dry: nobody is asked how dry it is. */
const SETS = 0.5;

/** "It's been like twenty minutes, water based": what is wiped while it is open is another matter. */
export const stillSets = ({ stage }: Pick<Considered, 'stage'>, heard: Heard | undefined): boolean => {
  const hours = toldSure(heard, 'hours-since-coat');
  const family = toldSure(heard, 'family');
  if (stage !== undefined || hours === undefined || family === undefined) return false;
  return Number(hours) <= SETS && !WIPED.includes(String(family));
};
