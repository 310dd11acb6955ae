import type { Knowledge } from '#engine/index.ts';

/** The stops that ask something of a check, with the facts that each stands by: a file of its own, as small as they are few. */
export const atCheckData = (known: Pick<Knowledge, 'rules'>) =>
  known.rules.flatMap(({ id, title, when, checks }) =>
    when && checks.length ? [{ id, title, when, checks }] : [],
  );
export type AtCheckData = ReturnType<typeof atCheckData>;
