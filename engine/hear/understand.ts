import { type FindIndex, type Hit, pageName } from '../find/document.ts';
import { pageAsked } from '../find/page-asked.ts';
import { wordAsked } from '../find/word-asked.ts';
import type { Stage } from '../model/stage.ts';
import { filled } from '../plain/filled.ts';
import { type Carried, carriedTo } from './asked/carried.ts';
import { type Considered, consider } from './belief/consider.ts';
import { flawWords } from './belief/flaw-words.ts';
import { isCall } from './belief/is-call.ts';
import { firstOfRule, type Mind, type ToldFacts } from './belief/mind.ts';
import { type NamedFlaw, namedFlaws } from './belief/named-flaws.ts';
import { isSilent } from './belief/silent.ts';
import { type AtOnceLines, thisMinute } from './belief/this-minute.ts';
import { type Hearing, hear } from './hear.ts';
import { type Reply, reply } from './reply/reply.ts';
import { withNamed } from './reply/with-named.ts';
import type { Heard } from './words/heard.ts';
import type { Span } from './words/words.ts';

/** All that it takes to understand a post: plain data, made at build time. */
export type Understanding = {
  readonly hearing: Hearing;
  readonly mind: Mind;
  readonly index: FindIndex;
  readonly atOnce: AtOnceLines;
};

/** A post: its words, what was told by a tap, and the names of what was heard but is not so. */
export type Post = { readonly text: string; readonly told?: ToldFacts; readonly off?: readonly string[] };

/** Where what a reply leads to stands. Addresses belong to the site; what they carry is decided here. */
export type Links = {
  readonly defect: (defect: string, stage: Stage | 'overdue' | undefined) => string;
  readonly rule: (rule: string) => string;
  /** The page of a hit that answers; nothing where it has none. */
  readonly page: (kind: string, id: string, carried: Carried) => string | undefined;
  readonly which: (carried: Carried) => string;
  readonly tell: string;
};

/** A page as it is offered. */
export type OfferedPage = Pick<Hit, 'title' | 'says'> & {
  /** Its kind and id. */
  readonly id: string;
  readonly url: string;
  /** What a rule says first: it does alone. */
  readonly first?: string | undefined;
};

/** What was heard of a post, and what it comes to. */
export type Weighed = {
  readonly heard: Heard;
  /** The flaws that the words name, those that she has taken off left out. */
  readonly named: readonly NamedFlaw[];
  readonly considered: Considered;
};

export type Understood = Weighed & {
  /** Which top coat to take is what is asked: its page, with what is told of the piece. */
  readonly which: string | undefined;
  /** The page that answers what is asked, where no flaw is told and no top coat is to be chosen. */
  readonly page: OfferedPage | undefined;
  readonly answer: Reply;
  /** What is too long to be read in one go: whether harm is told in the rest. */
  readonly unread: { readonly harm: boolean } | undefined;
};

/** As much of a post as is read; the page says where there is more. */
export const LONGEST = 4000;

/** What a danger is called among facts and questions that may be taken off, whose ids may be the same as that of its rule. */
export const dangerName = (rule: string): string => `rule-${rule}`;

/** What a flaw that was named is called among them. */
export const flawName = (defect: string): string => `flaw-${defect}`;

/** What was heard, less what she has taken off. */
const kept = (heard: Heard, off: readonly string[], dropped: readonly Span[]): Heard => ({
  ...heard,
  facts: heard.facts.filter(({ fact }) => !off.includes(fact)),
  among: heard.among.filter(({ fact }) => !off.includes(fact)),
  signs: heard.signs.filter(
    ({ question, rests }) =>
      !off.includes(question) &&
      !rests.every((one) => dropped.some(({ from, to }) => from <= one.from && one.to <= to)),
  ),
  names: heard.names.filter(
    ({ rests }) => !rests.every((one) => dropped.some(({ from, to }) => from < one.to && one.from < to)),
  ),
  dangers: heard.dangers.filter(({ rule }) => !off.includes(dangerName(rule))),
  urgent: heard.urgent.filter(({ rule }) => !off.includes(dangerName(rule))),
});

/** The text with blanks where words are not to count. */
const without = (text: string, spans: readonly Span[]): string =>
  spans.reduce((left, { from, to }) => left.slice(0, from) + ' '.repeat(to - from) + left.slice(to), text);

/** An address that was pasted along tells nothing; blanks in its place, so that all else stands where it stood. */
const withoutLinks = (text: string): string =>
  text.replace(/\bhttps?:\/\/\S+/g, (link) => ' '.repeat(link.length));

/** Where no more is asked than what a word means: that, its place in the glossary, and nothing of a coat. A danger stays one. */
const ofWord = (
  { index, hearing }: Pick<Understanding, 'index' | 'hearing'>,
  heard: Heard,
): Heard | undefined => {
  const word = heard.asksWord && !heard.urgent.length ? wordAsked(index, heard.text) : undefined;
  if (!word) return undefined;
  const lead = filled(hearing.lexicon.reply.says.lead.page, { title: word.title });
  return {
    ...heard,
    facts: [],
    among: [],
    signs: [],
    names: [],
    named: [],
    asksFor: { answer: word.says, lead, page: pageName(word) },
    alsoAsks: undefined,
  };
};

/** What words and taps come to: what was heard, the flaws that are named, and where it stands. */
export const weigh = (
  { hearing, mind, index }: Omit<Understanding, 'atOnce'>,
  { text: given, told = {}, off = [] }: Post,
): Weighed => {
  const text = withoutLinks(given).slice(0, LONGEST);
  const all = hear(hearing, text);
  const word = ofWord({ index, hearing }, all);
  if (word) return { heard: word, named: [], considered: consider(mind, { told, heard: word }) };
  const standing = (heard: Heard, words: string): Considered =>
    consider(mind, {
      told,
      heard,
      words: words.trim() && !heard.otherTongue ? flawWords(index, mind, words, heard) : undefined,
    });
  const first = standing(kept(all, off, []), text);
  const flaws = namedFlaws(mind, index, all, first.likely);
  const isOff = ({ defect }: NamedFlaw): boolean => off.includes(flawName(defect));
  // What is not there, said so or taken off, must not count as a word for itself.
  const silent = flaws.filter((flaw) => flaw.denied || isOff(flaw));
  const heard = kept(
    all,
    off,
    flaws.filter(isOff).map(({ span }) => span),
  );
  return {
    heard,
    named: flaws.filter((flaw) => !flaw.denied && !isOff(flaw)),
    considered: silent.length
      ? standing(
          heard,
          without(
            text,
            silent.map(({ span }) => span),
          ),
        )
      : first,
  };
};

/** Nothing is wrong yet: what is asked is which top coat to take. */
const isWhich = ({ heard, named, considered }: Weighed): boolean =>
  heard.asksWhich && !named.length && considered.stage === undefined && !considered.warnings.some(isCall);

/** Nothing of a coat, a flaw or a time was told, nor tapped: the words look for a page. */
export const hearsNothing = ({ heard, named, considered, page }: Omit<Understood, 'answer'>): boolean =>
  !page && !named.length && considered.stage === undefined && !considered.warnings.length && isSilent(heard);

/** The page that is asked for, as it is offered. */
const offered = (
  { index, mind, hearing }: Understanding,
  heard: Heard,
  links: Links,
  asked = heard.asksFor?.page,
): OfferedPage | undefined => {
  const { text, otherTongue, asksFor } = heard;
  // An answer that stands only where no page answers better does not ask for its own first.
  const hit =
    text.trim() && !otherTongue
      ? ((asksFor?.perhaps ? pageAsked(index, text) : undefined) ?? pageAsked(index, text, asked))
      : undefined;
  const url = hit && links.page(hit.kind, hit.id, carriedTo(hearing.waits, `${hit.kind}/${hit.id}`, heard));
  if (!hit || !url) return undefined;
  const first = hit.kind === 'rule' ? firstOfRule(mind, hit.id) : undefined;
  return { id: `${hit.kind}/${hit.id}`, title: hit.title, says: first ?? hit.says, url, first };
};

const unreadOf = (hearing: Hearing, given: string): Understood['unread'] => {
  const whole = withoutLinks(given);
  if (whole.length <= LONGEST) return undefined;
  return { harm: hear(hearing, whole.slice(LONGEST)).urgent.length > 0 };
};

/** The page that answers what was weighed, and a reply. */
export const answerFor = (by: Understanding, post: Post, weighed: Weighed, links: Links): Understood => {
  const { named, considered } = weighed;
  // What is soft long past its time is at no stage of its page: there it is chosen among the answers to how dry it is.
  const linkTo = (defect: string, stage?: Stage) =>
    links.defect(defect, stage && (considered.overdue ? 'overdue' : stage));
  const which = isWhich(weighed)
    ? links.which(carriedTo(by.hearing.waits, 'page/which-coat', weighed.heard))
    : undefined;
  const page = which || Object.keys(post.told ?? {}).length ? undefined : offered(by, weighed.heard, links);
  const isItsOwn = page?.id === weighed.heard.asksFor?.page;
  const heard =
    weighed.heard.asksFor?.perhaps && (!isItsOwn || named.length)
      ? { ...weighed.heard, asksFor: undefined }
      : weighed.heard;
  const words = by.hearing.lexicon.reply;
  const first = reply(considered, {
    words,
    linkTo,
    atOnce: thisMinute(by.atOnce, considered, named, heard),
    heard,
    ruleAt: links.rule,
    tellAt: links.tell,
    pageAt: (asked) => offered(by, heard, links, asked)?.url,
    ...(which && { whichAt: which }),
    ...(page && { page: { title: page.title, at: page.url, says: page.first } }),
  });
  return {
    ...weighed,
    heard,
    which,
    page,
    unread: unreadOf(by.hearing, post.text),
    answer: withNamed(first, page ? [] : named, considered, linkTo, words.says),
  };
};

/**
 * All that follows from a post: what was heard, where it stands, the page that answers, and a reply. The one way from
 * words to an answer, for the page, the command and the search alike. Pure.
 */
export const understand = (by: Understanding, post: Post, links: Links): Understood =>
  answerFor(by, post, weigh(by, post), links);
