import { fetchedElement } from '../shared/fetched-element.tsx';
import { warmUp } from '../shared/warm-up.ts';
import { loadListening } from './listen.ts';
import { TellPage } from './page.tsx';

/** The page that listens; without script its place says where to search and to be walked through it. */
export const TellElement = fetchedElement(
  async () => {
    const listening = await loadListening();
    void warmUp(listening.ear, listening.index);
    return listening;
  },
  (listening) => <TellPage listening={listening} />,
  'What it needs to listen could not be loaded: no signal? Load this page again, or search.',
);
