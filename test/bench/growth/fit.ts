/** The exponent of a power law through points, by least squares of their logarithms. */
export const exponentOf = (points: readonly (readonly [number, number])[]): number => {
  const logs = points
    .filter(([, value]) => value > 0)
    .map(([size, value]) => [Math.log(size), Math.log(value)] as const);
  const mean = (at: 0 | 1) => logs.reduce((sum, log) => sum + log[at], 0) / logs.length;
  const [x, y] = [mean(0), mean(1)];
  const over = logs.reduce((sum, log) => sum + (log[0] - x) * (log[1] - y), 0);
  return over / logs.reduce((sum, log) => sum + (log[0] - x) ** 2, 0);
};
