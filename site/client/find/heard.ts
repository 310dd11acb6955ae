import type { NamedFlaw } from '#engine/hear/belief/named-flaws.ts';
import { isSilent } from '#engine/hear/belief/silent.ts';
import { carriedTo, isCall, type LikelyFlaw, SURE, type ToldRule, weigh } from '#engine/hear.ts';
import { EAR } from '../../shared/data-files.ts';
import type { Ear } from '../../shared/ear.ts';
import { answerLinks } from '../shared/answer-links.ts';
import { fetchedOnce } from '../shared/fetch-json.ts';
import { loadIndex } from './pages.ts';

/** What tells more than what is seen: how dry it is, or when it was laid. */
const TELLING = ['stage', 'overdue', 'hours-since-coat'];
/** One word such as "sticky" is looked up; a fact among more of them is a story. */
const WORDS = 3;

/** What the ear makes of the words in a search box. */
export type HeardWords = {
  /** What has happened and can not wait, with the number to call. */
  readonly call: ToldRule | undefined;
  /** Whom to call where. */
  readonly places: Ear['places'];
  /** The words are answered better by listening than by a list of pages. */
  readonly isStory: boolean;
  /** Nothing of a coat, a flaw or a time is told: however many words, they look for a page. */
  readonly isSilent: boolean;
  /** The page that names a top coat, where they ask which to take. */
  readonly which: string | undefined;
  /** The flaws that they name. */
  readonly named: readonly NamedFlaw[];
  /** The likeliest flaws, by all that is told. */
  readonly likely: readonly LikelyFlaw[];
};

/** What the ear needs. Throws a `NetworkFault`; then it is tried again at the next call. */
export const loadEar = fetchedOnce(EAR);

/** Listens to a few words as the page that listens does. */
export const hearWords = async (words: string): Promise<HeardWords> => {
  const [{ hearing, mind, places }, index] = await Promise.all([loadEar(), loadIndex()]);
  const {
    heard,
    named,
    considered: { likely, warnings },
  } = weigh({ hearing, mind, index }, { text: words });
  const call = warnings.find(isCall);
  const tells = heard.facts.some(({ fact, sure }) => TELLING.includes(fact) && sure >= SURE);
  const isStory =
    call !== undefined || named.length > 1 || (tells && words.trim().split(/\s+/).length >= WORDS);
  const asks = !call && !named.length && !tells && heard.asksWhich;
  return {
    call,
    places,
    isStory,
    isSilent: !named.length && isSilent(heard),
    which: asks ? answerLinks('').which(carriedTo(hearing.waits, 'page/which-coat', heard)) : undefined,
    named,
    likely,
  };
};
