import type { Entry } from '#engine/index.ts';
import type { StopsAtCheck } from '../shared/at-check.ts';
import { knowledge } from './knowledge.ts';

/** The stops that ask something of such a check where they stand; nothing where there are none. */
export const stopsAtCheck = ({ by }: Pick<Entry<'question'>, 'by'>): string | undefined => {
  const stops: StopsAtCheck = Object.fromEntries(
    knowledge.rules.flatMap(({ id, when, checks }) =>
      when && checks.some((check) => check.by.includes(by)) ? [[id, when]] : [],
    ),
  );
  return Object.keys(stops).length ? JSON.stringify({ by, stops }) : undefined;
};
