import type { FindIndex } from '#engine/find.ts';
import { type Considered, consider, flawWords, type Heard, hear, type Reply, reply } from '#engine/hear.ts';
import { EAR, FIND_INDEX } from '../../shared/data-files.ts';
import type { Ear } from '../../shared/ear.ts';
import { defectUrl } from '../../shared/urls.ts';
import { fetchedOnce } from '../shared/fetch-json.ts';
import { dangerName, type TellState } from './state.ts';

export type Listening = { readonly ear: Ear; readonly index: FindIndex };
export type Understood = { readonly heard: Heard; readonly considered: Considered; readonly answer: Reply };

const earOnce = fetchedOnce(EAR);
const indexOnce = fetchedOnce(FIND_INDEX);

export const loadListening = async (): Promise<Listening> => {
  const [ear, index] = await Promise.all([earOnce(), indexOnce()]);
  return { ear, index };
};

/** What was heard, less what she has taken off. */
const kept = (heard: Heard, off: readonly string[]): Heard => ({
  ...heard,
  facts: heard.facts.filter(({ fact }) => !off.includes(fact)),
  among: heard.among.filter(({ fact }) => !off.includes(fact)),
  signs: heard.signs.filter(({ question }) => !off.includes(question)),
  dangers: heard.dangers.filter(({ rule }) => !off.includes(dangerName(rule))),
});

/** All that follows from the words and the taps. */
export const understand = ({ ear, index }: Listening, { text, told, off }: TellState): Understood => {
  const heard = kept(hear(ear.hearing, text), off);
  const words = text.trim() ? flawWords(index, ear.mind, text) : undefined;
  const considered = consider(ear.mind, { told, heard, words });
  const linkTo = (defect: string) => new URL(defectUrl(defect), location.origin).href;
  return { heard, considered, answer: reply(considered, { linkTo }) };
};
