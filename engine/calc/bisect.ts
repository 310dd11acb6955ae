/** The point between `low` and `high` where a rising function crosses zero, to 1e-9 of the bracket. */
export const bisect = (rising: (x: number) => number, low: number, high: number): number => {
  let [from, to] = [low, high];
  for (let halvings = 0; halvings < 50; halvings++) {
    const middle = (from + to) / 2;
    if (rising(middle) < 0) from = middle;
    else to = middle;
  }
  return (from + to) / 2;
};
