import type { Entry } from '#engine/index.ts';
import type { AtCheck } from '../shared/at-check.ts';
import { knowledge } from './knowledge.ts';

/** What stops ask of such a check where they stand, as the page of its question keeps it. */
export const atChecks = ({ by }: Pick<Entry<'question'>, 'by'>): readonly AtCheck[] =>
  knowledge.rules.flatMap(({ id, title, when, checks }) =>
    when
      ? checks
          .filter((check) => check.by.includes(by))
          .map(({ wait, say }) => ({ when, id, title, wait, say }))
      : [],
  );
