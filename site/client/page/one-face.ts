import { SESSION_KEYS } from '../../shared/storage-keys.ts';

export type Face = 'own' | 'near';
/** All that a page is set in, each asked for at its head. */
const FACES = 4;

/** Which faces a page was painted in: its own only where all of them had come by then. Times are of one clock. */
export const faceOf = (came: readonly number[], painted: number): Face =>
  came.length >= FACES && came.every((at) => at <= painted) ? 'own' : 'near';

const painted = (): Promise<number> =>
  new Promise((done) => {
    new PerformanceObserver((list) => {
      const [first] = list.getEntriesByName('first-contentful-paint');
      if (first) done(first.startTime);
    }).observe({ type: 'paint', buffered: true });
  });

/**
 * One visit, one face: the first page keeps the faces of the site if they were here as it was painted, or else those of
 * the device, and all that follow do as it did (the head of each page reads it), so that none changes from page to page.
 */
export const keepOneFace = async (): Promise<void> => {
  const { dataset } = document.documentElement;
  if (dataset['face']) return;
  const at = await painted();
  const came = performance
    .getEntriesByType('resource')
    .filter(({ name }) => name.endsWith('.woff2'))
    .map((entry) => entry.startTime + entry.duration);
  const face = faceOf(came, at);
  dataset['face'] = face;
  try {
    sessionStorage.setItem(SESSION_KEYS.face, face);
  } catch (error) {
    // A browser that keeps nothing decides on each page anew.
    if (!(error instanceof DOMException)) throw error;
  }
};
