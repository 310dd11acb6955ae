/** Steps of work that gives nothing back: a phone can answer a finger in between. */
export type Steps = Generator<undefined, void>;

/** Work that can be laid down between its steps, done in one go. */
export const toTheEnd = <T>(steps: Generator<undefined, T>): T => {
  let step = steps.next();
  while (!step.done) step = steps.next();
  return step.value;
};
