import type { FindIndex } from '#engine/find.ts';
import { type Understood, understand } from '#engine/hear.ts';
import { EAR, FIND_INDEX } from '../../shared/data-files.ts';
import type { Ear } from '../../shared/ear.ts';
import { answerLinks } from '../shared/answer-links.ts';
import { fetchedOnce } from '../shared/fetch-json.ts';
import type { TellState } from './state.ts';

export type Listening = { readonly ear: Ear; readonly index: FindIndex };

const earOnce = fetchedOnce(EAR);
const indexOnce = fetchedOnce(FIND_INDEX);

export const loadListening = async (): Promise<Listening> => {
  const [ear, index] = await Promise.all([earOnce(), indexOnce()]);
  return { ear, index };
};

/** All that follows from the words and the taps: in the reply whole addresses, which can be sent, on the page those of the site. */
export const listenTo = ({ ear, index }: Listening, state: TellState): Understood => {
  const { origin } = location;
  const found = understand({ ...ear, index }, state, answerLinks(origin));
  return {
    ...found,
    which: found.which?.slice(origin.length),
    page: found.page && { ...found.page, url: found.page.url.slice(origin.length) },
  };
};
