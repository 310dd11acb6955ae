import type { ComponentType } from 'preact';
import { fetchedElement } from '../shared/fetched-element.tsx';
import { type Dealer, loadDealer } from './load.ts';

/** An element that holds a view of boards once they can be dealt. */
export const practiceElement = (View: ComponentType<{ readonly dealer: Dealer }>) =>
  fetchedElement(
    loadDealer,
    (dealer) => <View dealer={dealer} />,
    'The boards could not be loaded: no signal? Load this page again, or print the sheet.',
  );
