import type { ReplyWords } from '../../model/reply-words.ts';
import { filled } from '../../plain/filled.ts';
import { firstSentence, lower } from '../../plain/text.ts';
import type { Considered } from '../belief/consider.ts';
import type { Heard } from '../words/heard.ts';
import { denials } from './denials.ts';
import { fitted, SHORT } from './fitted.ts';
import { whatItIs } from './name-said.ts';
import { isFirm, isFresh, KEPT, ordersOf, stillSets } from './orders.ts';
import type { ReplyOptions } from './reply-options.ts';
import { safetySaid } from './reply-safety.ts';
import { toldSure } from './told-sure.ts';
import { NAMED, type WithoutFlaw, withoutFlaw } from './without-flaw.ts';

/** A reply to copy: `short` has 500 characters at most. */
export type Reply = { readonly short: string; readonly long: string };

const inParagraphs = (parts: readonly string[]): string => parts.filter(Boolean).join('\n\n');

/** The one thing that is asked. */
const asked = (next: Considered['next'], heard: Heard | undefined, { ask }: ReplyWords['says']): string => {
  switch (next?.kind) {
    case 'question':
      return filled(ask.check, { ask: next.ask, how: next.how });
    case 'stage':
      return toldSure(heard, 'hours-since-coat') === undefined ? ask['dry-and-when'] : ask.dry;
    case 'age':
      return ask.below;
    default:
      return '';
  }
};

/** A reply without a flaw: the answer first, what it leads to last. */
const replyWithout = (
  alone: WithoutFlaw,
  considered: Considered,
  no: string,
  { heard, words: { says } }: ReplyOptions,
): Reply => {
  const { urgent, first: caution, besides, all, allLater } = safetySaid(considered, says);
  const taken = heard?.taken ?? '';
  // What is asked for has its own answer.
  const denied = alone.answer ? '' : no;
  const { also, last } = alone;
  // The short one keeps the first answer, and names the other question by its page.
  const second = also && filled(says.rules.also, { says: lower(also.last) });
  const room = SHORT - (second ? second.length + 1 : 0);
  // Behind a long link an answer keeps what it says first.
  const answer = alone.answer ?? '';
  const answers = answer.length + last.length < room ? [answer] : answer.split(/(?<=\.) (?=[A-Z\d])/);
  const short = fitted(
    alone.stop
      ? [alone.stop, ...alone.says, ...besides, taken]
      : [...urgent, denied, ...answers, caution, ...besides, ...alone.says, taken],
    last,
    room,
  );
  return {
    short: second ? `${short} ${second}` : short,
    long: inParagraphs([
      ...(urgent.length ? all : [denied, alone.answer ?? '', ...all]),
      ...allLater,
      urgent.length ? denied : '',
      alone.says.join(' '),
      taken,
      last,
      ...(also ? [also.answer, also.last] : []),
    ]),
  };
};

/** A flaw that is nearly as likely is named, too. */
const OR = 0.1;

/** A reply that tells of the likeliest flaw: what it is, what hands do, the one thing to check, and its page. */
const replyWith = (considered: Considered, no: string, options: ReplyOptions): Reply => {
  const { linkTo, atOnce = '', heard, words } = options;
  const { says } = words;
  const { likely, warnings, now, next, stage } = considered;
  const [first] = likely;
  const link = first ? linkTo(first.defect, stage) : '';
  const { urgent, first: caution, besides, later, all, allLater } = safetySaid(considered, says);
  const taken = heard?.taken ?? '';
  const fresh = isFresh(considered);
  const firm = isFirm(considered);
  const drying = fresh ? heard?.stillDrying : undefined;
  const what = drying?.answer ?? whatItIs(considered, words);
  const sets = stillSets(considered, heard);
  const doing = sets
    ? { short: says.hold.sets, long: says.hold.sets }
    : ordersOf(considered, firm ? '' : atOnce, says);
  // What hangs on a question is looked into now: there is nothing to wait for yet.
  const settled = firm && !now?.hangs ? now : undefined;
  const again = settled?.again ?? '';
  const kept = settled && KEPT.includes(settled.do) && !warnings.length ? says.hold.kept : '';
  const check = sets ? '' : asked(next, heard, says);
  // On a coat that still moves the short one says hands off and no more: there is nothing to try on it.
  const shortCheck = fresh ? '' : firstSentence(check);
  const way = drying?.lead ?? (now?.hangs ? says.lead.questions : firm ? says.lead.steps : says.lead.what);
  const otherFlaws = likely
    .slice(1, 3)
    .filter(({ chance }) => chance >= OR)
    .map(({ defect, name }) => `${filled(says.what.other, { name: lower(name) })} ${linkTo(defect, stage)}`);
  const before = [...urgent, no, caution, ...besides].filter(Boolean);
  // Where dangers leave no room for the flaw, no sentence may lead on from its name.
  const isSaid = !urgent.length || (first?.chance ?? 0) >= NAMED;
  const named = isSaid && [...before, what, `${way} ${link}`].join(' ').length <= SHORT;
  return {
    short: fitted(
      [...before, ...(named ? [what, taken, doing.short, again, kept, shortCheck, ...later] : [])],
      link && `${named ? way : says.lead['coat-after']} ${link}`,
      SHORT,
    ),
    long: inParagraphs([
      ...(urgent.length ? [...all, no] : [no, ...all]),
      // What hangs on a unit that was not told is said, so that a reader can put it right.
      [what, taken].filter(Boolean).join(' '),
      doing.long,
      [again, kept].filter(Boolean).join(' '),
      check,
      ...allLater,
      link && `${way} ${link}`,
      ...otherFlaws,
    ]),
  };
};

/**
 * A reply to somebody else's post: what saves first, the most pressing caution, what it most likely is, what to do now and
 * what not, when to look again, the one thing to check, and the page that goes on from there. The long one says why, too.
 */
export const reply = (considered: Considered, options: ReplyOptions): Reply => {
  const { atOnce = '', heard, words, page } = options;
  // "No, do not sand it yet" is no answer to "do I have to sand between coats".
  const no = page && !isFresh(considered) ? '' : denials(considered, atOnce, heard, words);
  const alone = withoutFlaw(considered, options);
  return alone ? replyWithout(alone, considered, no, options) : replyWith(considered, no, options);
};
