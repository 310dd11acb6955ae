import { JobsFault } from './fault.ts';

/** A store that has not answered in so many milliseconds is taken as silent. A slow phone writes a photo in two seconds. */
const LIMIT = 15_000;

/** Fails with a `JobsFault` where the store never answers, as some browsers do after long sleep. */
export const withinTime = <T>(work: Promise<T>, limit = LIMIT): Promise<T> =>
  new Promise((done, failed) => {
    const timer = setTimeout(() => failed(new JobsFault('silent')), limit);
    work.then(done, failed).finally(() => clearTimeout(timer));
  });
