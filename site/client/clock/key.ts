import { copyName } from '../../shared/storage-keys.ts';
import { lookUp, recall } from '../shared/storage.ts';

/** Coats are kept apart from the cards: the strip of every page reads them, and no upgrade of the cards stops them. */
export const CLOCK_DB = 'halfdry-clock';

/**
 * Whether a coat may be running: asked on every page, so it opens nothing. The mark is written late by some browsers, so
 * where it is missing the list of databases decides, or that there is a second copy; an old browser that has no list
 * looks.
 */
export const coatMayRun = async (): Promise<boolean> => {
  const old = lookUp('old-clock').kind;
  if (recall('coat-runs') || old === 'kept' || old === 'damaged') return true;
  if (!('indexedDB' in globalThis)) return false;
  try {
    const all = await indexedDB.databases?.();
    if (all === undefined || all.some(({ name }) => name === CLOCK_DB)) return true;
  } catch (error) {
    // Also where the browser has just found its databases torn.
    if (!(error instanceof DOMException)) throw error;
  }
  try {
    return typeof caches !== 'undefined' && (await caches.has(copyName('clock')));
  } catch (error) {
    if (error instanceof DOMException) return false;
    throw error;
  }
};
