import type { PracticeWords } from '#engine/model/practice.ts';
import {
  dealPractice,
  type PracticeItem,
  type PracticeKey,
  type PracticeKnowledge,
  practised,
} from '#engine/practice.ts';
import { PRACTICE_DATA } from '../../shared/data-files.ts';
import type { PracticeData } from '../../shared/practice-data.ts';
import { practiceKnowledge } from '../../shared/practice-knowledge.ts';
import { fetchedOnce } from '../shared/fetch-json.ts';

/** All that boards are dealt from. */
export type Dealer = {
  readonly known: PracticeKnowledge;
  readonly words: PracticeWords;
  readonly colors: PracticeData['colors'];
};

const dataOnce = fetchedOnce(PRACTICE_DATA);

/** Throws a `NetworkFault` where it does not come. */
export const loadDealer = async (): Promise<Dealer> => {
  const data = await dataOnce();
  return { known: practiceKnowledge(data), words: data.words, colors: data.colors };
};

/** Whether this knowledge still has the flaw of a key: a link may be older than a merge. */
export const canDeal = ({ known }: Dealer, { level, flaw }: PracticeKey): boolean =>
  practised(known, level).includes(flaw);

export const deal = ({ known, words }: Dealer, key: PracticeKey): PracticeItem =>
  dealPractice(known, words, key);
