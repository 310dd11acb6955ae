import type { ConditionInput } from '#engine/model/condition.ts';

/** What a stop asks of a check while it stands. */
export type AtCheck = {
  readonly when: ConditionInput;
  readonly id: string;
  readonly title: string;
  /** The check is not made until the stop is settled. */
  readonly wait: boolean;
  readonly say: string;
};
