import { sayProblem } from '#engine/calc/say-problem.ts';
import { caseFromClock, clockNow } from '#engine/clock.ts';
import { type Case, type Knowledge, reached, stageOf } from '#engine/index.ts';
import { MINUTE_MS } from '#engine/plain/time.ts';

/** What `--fact` may name beside the table of facts: a product of content/products, and when the coat was laid. */
export const CLOCK_FACTS = ['product', 'minutes-since-coat'] as const;
const USUAL = { celsius: 23, relativeHumidity: 0.5 };

export type Clock = { readonly on: Case; readonly says: string | undefined };

/**
 * The facts of a coat laid `minutes` ago in the air that `told` names (23 °C and 50 % where it does not), and what the
 * clock says of it. What was told wins over what the clock reckons.
 */
export const withClock = (known: Knowledge, told: Case, product: string, minutes: number): Clock => {
  const figures = known.get('product', product);
  const number = (fact: string) => {
    const value = told[fact]?.value;
    return typeof value === 'number' ? value : undefined;
  };
  const surface = number('surface-celsius');
  const film = {
    minutes,
    celsius: number('air-celsius') ?? USUAL.celsius,
    relativeHumidity: number('relative-humidity') ?? USUAL.relativeHumidity,
    ...(surface === undefined ? {} : { surfaceCelsius: surface }),
  };
  const coat = { ...film, id: 'now', piece: '', product, laidAt: 0, coatNumber: number('coat-number') ?? 1 };
  const now = minutes * MINUTE_MS;
  const reading = clockNow(figures, coat, now);
  const on = { ...caseFromClock(figures, film), ...told };
  if (reading.kind === 'refused')
    return { on, says: `The clock promises no time: ${sayProblem(reading.problem)}` };
  if (reading.kind === 'future') return { on, says: undefined };
  const stage = stageOf(on) ?? reading.stage;
  const next = reached(stage, 'dry-to-touch') ? reading.moments.recoat : reading.moments.touch;
  const ready = reading.thin ? 'ready for the next coat' : 'ready to sand and recoat';
  const what = reached(stage, 'dry-to-touch') ? ready : 'hands off, dry to the touch';
  const left = (at: number) => Math.max(0, Math.round((at - now) / MINUTE_MS));
  const says = reached(stage, 'recoatable')
    ? `By the clock it is ${reading.sureness} ${stage}.`
    : `By the clock it is ${reading.sureness} ${stage}; ${what} about ${left(next.from)} to ${left(next.to)} minutes from now.`;
  return { on, says };
};
