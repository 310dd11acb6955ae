import { pageAsked } from '#engine/find/page-asked.ts';
import type { FindIndex, Hit } from '#engine/find.ts';
import { type NamedFlaw, namedFlaws } from '#engine/hear/named-flaws.ts';
import { isSilent } from '#engine/hear/silent.ts';
import { withNamed } from '#engine/hear/with-named.ts';
import {
  type Considered,
  consider,
  firstOfRule,
  flawWords,
  type Heard,
  type Hearing,
  hear,
  isCall,
  type Mind,
  type Reply,
  reply,
  type Span,
} from '#engine/hear.ts';
import type { Stage } from '#engine/model/stage.ts';
import { EAR, FIND_INDEX } from '../../shared/data-files.ts';
import type { Ear } from '../../shared/ear.ts';
import { defectUrl, hitUrl, nowUrl, ruleUrl, TELL } from '../../shared/urls.ts';
import { fetchedOnce } from '../shared/fetch-json.ts';
import { whichUrl } from '../shared/which-url.ts';
import { dangerName, flawName, LONGEST, type TellState } from './state.ts';
import { thisMinute } from './words.ts';

export type Listening = { readonly ear: Ear; readonly index: FindIndex };
/** A page as it is offered. */
export type PageFor = Pick<Hit, 'title' | 'says'> & {
  readonly url: string;
  /** What a rule says first: it does alone. */
  readonly first?: string | undefined;
};

export type Understood = {
  readonly heard: Heard;
  /** The flaws that the words name, those that she has taken off left out. */
  readonly named: readonly NamedFlaw[];
  readonly considered: Considered;
  /** The page that answers what is asked, where no flaw is told and no top coat is to be chosen. */
  readonly page: PageFor | undefined;
  readonly answer: Reply;
  /** What is too long to be read in one go: whether harm is told in the rest. */
  readonly unread: { readonly harm: boolean } | undefined;
};

const earOnce = fetchedOnce(EAR);
const indexOnce = fetchedOnce(FIND_INDEX);

export const loadListening = async (): Promise<Listening> => {
  const [ear, index] = await Promise.all([earOnce(), indexOnce()]);
  return { ear, index };
};

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

const at = (url: string): string => new URL(url, location.origin).href;

/** Nothing is wrong yet: what is asked is which top coat to take. */
export const isWhich = ({
  heard,
  named,
  considered,
}: Pick<Understood, 'heard' | 'named' | 'considered'>): boolean =>
  heard.asksWhich && !named.length && considered.stage === undefined && !considered.warnings.some(isCall);

/** Nothing of a coat, a flaw or a time was told, nor tapped: the words look for a page. */
export const hearsNothing = ({ heard, named, considered, page }: Omit<Understood, 'answer'>): boolean =>
  !page && !named.length && considered.stage === undefined && !considered.warnings.length && isSilent(heard);

/** The page that is asked for, as it is offered. */
const pageFor = (
  index: FindIndex,
  mind: Mind,
  { text, otherTongue, asksFor }: Heard,
  asked = asksFor?.page,
): PageFor | undefined => {
  const hit = text.trim() && !otherTongue ? pageAsked(index, text, asked) : undefined;
  const url = hit && hitUrl(hit.kind, hit.id);
  if (!hit || !url) return undefined;
  const first = hit.kind === 'rule' ? firstOfRule(mind, hit.id) : undefined;
  return { title: hit.title, says: first ?? hit.says, url, first };
};

/** An address that was pasted along tells nothing; blanks in its place, so that all else stands where it stood. */
const withoutLinks = (text: string): string =>
  text.replace(/\bhttps?:\/\/\S+/g, (link) => ' '.repeat(link.length));

const unreadOf = (hearing: Hearing, whole: string): Understood['unread'] => {
  if (whole.length <= LONGEST) return undefined;
  return { harm: hear(hearing, whole.slice(LONGEST)).urgent.length > 0 };
};

/** All that follows from the words and the taps. */
export const understand = ({ ear, index }: Listening, state: TellState): Understood => {
  const { told, off } = state;
  const whole = withoutLinks(state.text);
  const text = whole.slice(0, LONGEST);
  const { mind, hearing } = ear;
  const all = hear(hearing, text);
  const weigh = (heard: Heard, words: string): Considered =>
    consider(mind, {
      told,
      heard,
      words: words.trim() && !heard.otherTongue ? flawWords(index, mind, words, heard) : undefined,
    });
  const first = weigh(kept(all, off, []), text);
  const flaws = namedFlaws(mind, index, all, first.likely);
  const isOff = ({ defect }: NamedFlaw): boolean => off.includes(flawName(defect));
  const named = flaws.filter((flaw) => !flaw.denied && !isOff(flaw));
  // What is not there, said so or taken off, must not count as a word for itself.
  const silent = flaws.filter((flaw) => flaw.denied || isOff(flaw));
  const heard = kept(
    all,
    off,
    flaws.filter(isOff).map(({ span }) => span),
  );
  const considered = silent.length
    ? weigh(
        heard,
        without(
          text,
          silent.map(({ span }) => span),
        ),
      )
    : first;
  // What is soft long past its time is at no stage of its page: there it is chosen among the answers to how dry it is.
  const linkTo = (defect: string, stage?: Stage) =>
    at(stage ? nowUrl(defect, considered.overdue ? 'overdue' : stage) : defectUrl(defect));
  const which = isWhich({ heard, named, considered });
  const page = which || Object.keys(told).length ? undefined : pageFor(index, mind, heard);
  const atOnce = thisMinute(ear.atOnce, considered, named, heard);
  return {
    heard,
    named,
    considered,
    page,
    unread: unreadOf(hearing, whole),
    answer: withNamed(
      reply(considered, {
        linkTo,
        atOnce,
        heard,
        ruleAt: (rule) => at(ruleUrl(rule)),
        tellAt: at(TELL),
        pageAt: (asked) => {
          const also = pageFor(index, mind, heard, asked);
          return also && at(also.url);
        },
        ...(which && { whichAt: at(whichUrl(heard.facts)) }),
        ...(page && { page: { title: page.title, at: at(page.url), says: page.first } }),
      }),
      page ? [] : named,
      considered,
      linkTo,
    ),
  };
};
