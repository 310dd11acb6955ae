/** Side by side in one run: rounds take turns, so that a busy minute of the machine meets all alike. */
const ROUNDS = 9;
/** A round of one contestant takes about this long. */
const ROUND_MS = 60;

export type Contestant = { readonly name: string; readonly run: () => void };
export type Timed = {
  readonly name: string;
  /** Nanoseconds a run, median over the rounds. */
  readonly ns: number;
  /** Of the first contestant's time in the same round: median, least, most. */
  readonly ratio: readonly [number, number, number];
};

export const median = (numbers: readonly number[]): number =>
  [...numbers].sort((a, b) => a - b)[numbers.length >> 1] ?? Number.NaN;

const timeOf = (run: () => void, times: number): number => {
  const began = process.hrtime.bigint();
  for (let time = 0; time < times; time++) run();
  return Number(process.hrtime.bigint() - began) / times;
};

/** How many runs fill a round, found by doubling; warms up on the way. */
const timesFor = (run: () => void): number => {
  let times = 1;
  while (timeOf(run, times) * times < ROUND_MS * 5e5) times *= 2;
  return times;
};

/** Times contestants against the first of them. */
export const race = (contestants: readonly Contestant[], runsIn = 1): readonly Timed[] => {
  const times = contestants.map(({ run }) => timesFor(run));
  const rounds = Array.from({ length: ROUNDS }, () =>
    contestants.map(({ run }, at) => timeOf(run, times[at] ?? 1) / runsIn),
  );
  return contestants.map(({ name }, at) => {
    const ratios = rounds.map((round) => (round[at] ?? 0) / (round[0] ?? 1));
    return {
      name,
      ns: median(rounds.map((round) => round[at] ?? 0)),
      ratio: [median(ratios), Math.min(...ratios), Math.max(...ratios)],
    };
  });
};
