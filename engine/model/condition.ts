import { z } from 'zod';

const Bounds = z.strictObject({ above: z.number().optional(), below: z.number().optional() });

const Test = z.union([z.string(), z.array(z.string()).min(1), Bounds], {
  error: 'write a value, a list of values, or { above: …, below: … } to compare the fact with',
});

/** What a fact is compared with: a value, some values, or bounds. */
export type Wanted = z.infer<typeof Test>;

/** What an author writes: every line must hold; `any` and `not` nest. Names are checked when linked. */
export type ConditionInput = {
  any?: ConditionInput[] | undefined;
  not?: ConditionInput | undefined;
  [fact: string]: Wanted | ConditionInput[] | ConditionInput | undefined;
};

export const Condition: z.ZodType<ConditionInput> = z.lazy(() =>
  z.object({ any: z.array(Condition).min(1).optional(), not: Condition.optional() }).catchall(Test),
) as z.ZodType<ConditionInput>;
