import type { Stage } from '../model/stage.ts';
import { type AskedHand, askedHands } from './asked-hands.ts';
import type { ActNow, Considered } from './consider.ts';
import { type Heard, SURE } from './heard.ts';

export type ReplyOptions = {
  /** What can not wait for any question, as a spill that stands there; it takes the place of leaving it alone. */
  readonly atOnce?: string | undefined;
  /** The address of the page of a flaw, at the stage where that is known, with its site. */
  readonly linkTo: (defect: string, stage?: Stage) => string;
  /** What was told: what is told is not asked again, and what was asked about is answered first. */
  readonly heard?: Pick<Heard, 'text' | 'facts' | 'among'> | undefined;
};

/** A reply to copy: `short` has 500 characters at most. */
export type Reply = { readonly short: string; readonly long: string };

const SHORT = 500;
/** How sure is said in words, never more than the engine is. */
const HOW_SURE: readonly (readonly [from: number, words: string])[] = [
  [0.9, 'That looks like'],
  [0.6, 'Most likely that is'],
  [0.3, 'That may be'],
];

const lower = (name: string): string => `${name.slice(0, 1).toLowerCase()}${name.slice(1)}`;

/** A name that tells of one coat or film, and of nothing in it or on it: it takes an article in a sentence. */
const ONE =
  /^(?!.*?\b(?:in|into|on|of|the|under|from)\b.*\b(?:coat|film|skin)\b)[\w, ]+?\b(?:coat|film|skin)\b/i;

const inSentence = (name: string): string =>
  ONE.test(name) ? `${/^[aeiou]/i.test(name) ? 'an' : 'a'} ${lower(name)}` : lower(name);

/** What it most likely is, in words no surer than the chances. */
const whatItIs = ({ likely }: Considered): string => {
  const [first, second, third] = likely;
  if (!first) return '';
  const said = HOW_SURE.find(([from]) => first.chance >= from);
  if (said) return `${said[1]} ${inSentence(first.name)}.`;
  const names = [first, second, third].flatMap((one) => (one ? [lower(one.name)] : []));
  return `Hard to say from here. It could be: ${names.join('; or ')}.`;
};

/** Cautions that a short reply names after the first. */
const ALSO = 2;

const ended = (title: string): string => (/[.!?]$/.test(title) ? title : `${title}.`);

const firstSentence = (text: string): string => /^.*?[.!?](?=\s|$)/.exec(text)?.[0] ?? text;

/** Joins what fits into `most` characters, what comes first being kept first. Whole parts only, the last one always. */
const fitted = (parts: readonly string[], last: string, most: number): string => {
  const kept: string[] = [];
  let length = last.length;
  for (const part of parts.filter(Boolean)) {
    if (length + part.length + 1 > most) continue;
    kept.push(part);
    length += part.length + 1;
  }
  return [...kept, last].join(' ');
};

/** Acts that leave the film alone: what not to do is all that is done. */
const QUIET = ['leave', 'wait', 'accept', 'stop'];
/** Acts after which nobody need fear for the coat today. */
const KEPT = ['leave', 'wait'];
const KEEP_IT = 'Nothing has to be stripped or sanded today.';

type Told = { readonly short: string; readonly long: string };

/** What to do and what not, no surer than the verdict: until hands are known, that it is left alone but for what can not wait. */
const ordersOf = (now: ActNow | undefined, firm: boolean, atOnce: string): Told => {
  const wary = 'No sanding and no new coat before you know.';
  if (!now || !(firm || now.flaw)) {
    const alone = atOnce ? `${atOnce} ${wary}` : `Until it is clear, leave it alone. ${wary}`;
    return { short: alone, long: alone };
  }
  if (!firm)
    return {
      short: `${now.verdict}. ${firstSentence(now.say)} ${wary}`,
      long: `${now.verdict}. ${now.say} ${wary}`,
    };
  const forbids = /^(?:no|nothing|do not|don[’']t)\b/i.test(now.not);
  if (!QUIET.includes(now.do))
    return {
      short: `${now.verdict}. ${firstSentence(now.say)} ${now.not}`,
      long: `${now.verdict}. ${now.say} ${now.not}`,
    };
  const order = forbids ? `${now.verdict}: ${lower(now.not)}` : `${now.verdict}. ${now.not}`;
  return { short: order, long: `${order} ${now.say}` };
};

/** Kinds that are wiped while they are wet: there a cloth may be right. */
const WIPED = ['oil', 'hardwax-oil', 'wax'];

/**
 * "No, do not wipe them." It is said where hands are off, or where nobody knows yet; what may be right of an oil, of a
 * spill, or of a film that is dry, is left to the verdict.
 */
const denials = (
  { now, stage }: Considered,
  firm: boolean,
  atOnce: string,
  heard: ReplyOptions['heard'],
): string => {
  if (!heard || (firm && now && !QUIET.includes(now.do))) return '';
  const told = (fact: string) => heard.facts.find((one) => one.fact === fact && one.sure >= SURE)?.value;
  const family = told('family');
  const kinds =
    family === undefined
      ? (heard.among.find(({ fact }) => fact === 'family')?.values ?? WIPED)
      : [String(family)];
  const mayWipe = atOnce !== '' || kinds.some((kind) => WIPED.includes(kind));
  const open: readonly AskedHand[] = mayWipe && !firm ? ['wipe'] : [];
  const denied = askedHands(heard.text)
    .filter(({ hand }) => !open.includes(hand))
    .map((one) => one.denied);
  if (!denied.length) return '';
  const fresh = stage === 'wet' || stage === 'setting';
  return `No, ${denied.slice(0, 2).join(' and ')}${fresh ? '' : ' yet'}.`;
};

/** What would tell how dry it is, where the time of the coat is told already or not. */
const stageAsked = (heard: ReplyOptions['heard']): string =>
  heard?.facts.some(({ fact, sure }) => fact === 'hours-since-coat' && sure >= SURE)
    ? 'Tell me one thing more: how dry is it now? Do not touch it; a drip on paper beside it tells.'
    : 'Tell me one thing more: how dry is it, and when was the coat laid?';

/**
 * A reply to somebody else's post: the most pressing caution first, what it most likely is, what to do now and what not,
 * when to look again, the one thing to check, and the page that goes on from there. The long one says why, too.
 */
export const reply = (considered: Considered, { linkTo, atOnce = '', heard }: ReplyOptions): Reply => {
  const { likely, warnings, now, next, stage } = considered;
  const [first] = likely;
  const link = first ? linkTo(first.defect, stage) : '';
  const [pressing, ...others] = warnings;
  const named = others.slice(0, ALSO).map(({ title }) => ended(title));
  const shortWarning = pressing ? `First: ${ended(pressing.title)} ${firstSentence(pressing.say)}` : '';
  const shortAlso = named.length ? `Mind too: ${named.join(' ')}` : '';
  const allWarnings = warnings.map(({ title, say }, at) => `${at ? 'And' : 'First'}: ${ended(title)} ${say}`);
  const what = whatItIs(considered);
  const firm = now !== undefined && (now.sure || stage === 'wet' || stage === 'setting');
  const doing = ordersOf(now, firm, firm ? '' : atOnce);
  const no = denials(considered, firm, atOnce, heard);
  const again = firm && now ? now.again : '';
  const kept = firm && now && KEPT.includes(now.do) && !warnings.length ? KEEP_IT : '';
  const check =
    next?.kind === 'question'
      ? `One thing to check: ${next.ask} ${next.how}`
      : next?.kind === 'stage'
        ? stageAsked(heard)
        : next?.kind === 'age'
          ? 'Tell me one thing more: how old is the paint or varnish below?'
          : '';
  // On a coat that still moves the short one says hands off and no more: there is nothing to try on it.
  const shortCheck = stage === 'wet' || stage === 'setting' ? '' : firstSentence(check);
  const way = firm ? 'What to do, step by step:' : 'What it is, and what to do:';
  const otherFlaws = likely
    .slice(1, 3)
    .filter(({ chance }) => chance >= 0.1)
    .map(({ defect, name }) => `Or ${lower(name)}: ${linkTo(defect, stage)}`);
  return {
    short: fitted(
      [shortWarning, shortAlso, no, what, doing.short, again, kept, shortCheck],
      link && `${way} ${link}`,
      SHORT,
    ),
    long: [
      ...allWarnings,
      no,
      what,
      doing.long,
      [again, kept].filter(Boolean).join(' '),
      check,
      link && `${way} ${link}`,
      ...otherFlaws,
    ]
      .filter(Boolean)
      .join('\n\n'),
  };
};
