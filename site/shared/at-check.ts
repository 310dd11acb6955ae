import type { ConditionInput } from '#engine/model/condition.ts';

/** Stops that ask something of a check, as the page of its question keeps them: the facts that each stands by, by its id. */
export type StopsAtCheck = Readonly<Record<string, ConditionInput>>;
