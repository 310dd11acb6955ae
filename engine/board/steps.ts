/** Work that can be laid down between its steps, done in one go. */
export const toTheEnd = <T>(steps: Generator<undefined, T>): T => {
  let step = steps.next();
  while (!step.done) step = steps.next();
  return step.value;
};
