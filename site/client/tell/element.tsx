import { fetchedElement } from '../shared/fetched-element.tsx';
import { loadListening } from './listen.ts';
import { TellPage } from './page.tsx';

/** The page that listens; without script its place says where to search and to be walked through it. */
export const TellElement = fetchedElement(
  loadListening,
  (listening) => <TellPage listening={listening} />,
  'What it needs to listen could not be loaded: no signal? Load this page again, or search.',
);
