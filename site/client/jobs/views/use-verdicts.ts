import { useLayoutEffect, useState } from 'preact/hooks';
import { unlessOffline } from '../../shared/fetch-json.ts';
import { jobsData } from '../parts/data.ts';
import { cardVerdict } from '../parts/verdict.ts';
import { JobsFault, readOne } from '../store/index.ts';
import type { Listed } from '../store/listed.ts';
import type { JobsFrame } from './frame.ts';

/** Time for the rows to stand before their cards are read. */
const REST = 300;

export type Verdicts = {
  /** Cards that can not be read: none must look sound in the list until it is opened. */
  readonly broken: ReadonlySet<string>;
  /** What may be done now with each piece, by its card. */
  readonly nows: ReadonlyMap<string, string>;
};

/** What the cards of these rows say, read one after another. */
export const useVerdicts = (shown: readonly Listed[], trouble: JobsFrame['trouble']): Verdicts => {
  const [broken, setBroken] = useState<Verdicts['broken']>(new Set());
  const [nows, setNows] = useState<Verdicts['nows']>(new Map());
  useLayoutEffect(() => {
    let on = true;
    const look = async () => {
      const data = await unlessOffline(jobsData());
      for (const { id } of shown) {
        if (!on) return;
        const one = await readOne(id);
        if (one.kind === 'unreadable') setBroken((before) => new Set([...before, id]));
        else if (
          one.kind === 'card' &&
          data &&
          one.card.coats.length &&
          one.card.handedOverAt === undefined
        ) {
          const { verdict } = cardVerdict(one.card, data, Date.now());
          setNows((before) => new Map([...before, [id, verdict]]));
        }
      }
    };
    // That the store is closed or full the list has said.
    const timer = setTimeout(
      () => void look().catch((error) => error instanceof JobsFault || trouble(error)),
      REST,
    );
    return () => {
      on = false;
      clearTimeout(timer);
    };
  }, [shown.map(({ id }) => id).join(' ')]);
  return { broken, nows };
};
