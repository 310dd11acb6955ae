/** The soak itself: acts by weight, what went wrong, and whether memory and storage stay as they are. */
import { HOUR_MS } from '#engine/plain/time.ts';
import { dice } from '../dice.ts';
import { ACTS, type Done, draw } from './acts/index.ts';
import { type Held, heldBy, storedBy } from './memory.ts';
import { type Slope, slopeOf } from './slope.ts';
import { type How, type Visit, visit } from './visit.ts';

/** Acts from one measurement of the memory to the next, going about. */
const EVERY = 100;
/** The same while one page stays open. */
const EVERY_SITTING = 10;
/** Acts at the beginning that are not measured: each kind of page is met, and its code made ready, once. */
const WARM_UP = 100;
const WARM_UP_SITTING = 40;
/** Pages that stay open while much is done on them. */
const SEATS = ['/clock/', '/jobs/', '/tell/', '/schedule/', '/learn/practice/'] as const;

/** Bytes an act that memory may surely grow by. Sitting, what she writes on a card and what she tells stays, by right. */
const MOST_BYTES_AN_ACT = { about: 500, sitting: 4000 } as const;
/** Bytes that the storage may grow by once everything is on the device: eight cards with photos, twice. */
const MOST_STORED = 5_000_000;
/** Letters in the small notes. */
const MOST_NOTES = 50_000;

export type Fault = {
  readonly seed: number;
  /** The number of the act. */
  readonly at: number;
  readonly says: readonly string[];
  /** All acts since the browser was started, the faulty one last. */
  readonly acts: readonly Done[];
};
type Growth = {
  readonly where: string;
  readonly bytes: Slope;
  readonly nodes: Slope;
  readonly listeners: Slope;
  readonly held: readonly Held[];
};
export type Soaked = {
  readonly seed: number;
  readonly counts: Readonly<Record<How, number>>;
  readonly hours: number;
  readonly growth: readonly Growth[];
  readonly stored: { readonly first: number; readonly last: number; readonly notes: number };
  readonly fault?: Fault;
};

const growthOf = (where: string, held: readonly Held[]): Growth => {
  const by = (what: 'heap' | 'nodes' | 'listeners') => slopeOf(held.map((one) => [one.act, one[what]]));
  return { where, bytes: by('heap'), nodes: by('nodes'), listeners: by('listeners'), held };
};

type Run = {
  readonly visit: Visit;
  readonly seed: number;
  readonly roll: () => number;
  readonly done: Done[];
  readonly counts: Record<How, number>;
  fault: Fault | undefined;
};

/** Does the next act; false once something went wrong. */
const step = async (run: Run, act: Done): Promise<boolean> => {
  run.done.push(act);
  const { how, faults } = await run.visit.act(act);
  run.counts[how] += 1;
  if (!faults.length) return true;
  run.fault = { seed: run.seed, at: run.done.length, says: faults, acts: run.done };
  return false;
};

/** The first page, with a network: what all measurements are taken on. */
const home = async ({ visit: { page, online } }: Run): Promise<void> => {
  await online();
  await page.goto('/');
  await page.waitForTimeout(300);
};

/** What is held an hour later: what only waits for a timer to end is no leak. */
const measured = async ({ visit: { page, session, jump } }: Run, act: number): Promise<Held> => {
  await jump(HOUR_MS);
  await page.waitForTimeout(200);
  return heldBy(session, act);
};

/** Goes about the site until the time is over. */
const goAbout = async (run: Run, until: number): Promise<Growth> => {
  const held: Held[] = [];
  while (performance.now() < until && !run.fault) {
    if (!(await step(run, draw(run.roll)))) break;
    if (run.done.length % EVERY || run.done.length < WARM_UP) continue;
    await home(run);
    held.push(await measured(run, run.done.length));
  }
  return growthOf('about', held);
};

/** Sits before one page until the time is over: no document takes the place of another, so what is left behind stays. */
const sit = async (run: Run, seat: string, until: number): Promise<Growth> => {
  const acts = ACTS.filter(({ on, name }) => on === seat && name !== 'plan by the usual');
  const { page } = run.visit;
  const held: Held[] = [];
  await home(run);
  await page.goto(seat);
  let sat = 0;
  while (performance.now() < until && !run.fault) {
    const here = await page.evaluate(() => performance.timeOrigin);
    if (!(await step(run, draw(run.roll, acts)))) break;
    sat += 1;
    // A link of a verdict led away: the measurements of the document before count no more.
    if (new URL(page.url()).pathname !== seat) await page.goto(seat);
    if ((await page.evaluate(() => performance.timeOrigin)) !== here) {
      held.length = 0;
      sat = 0;
    } else if (sat >= WARM_UP_SITTING && sat % EVERY_SITTING === 0) held.push(await measured(run, sat));
  }
  return growthOf(seat, held);
};

/** What is wrong with the memory or the storage, in words. */
export const grown = ({ growth, stored }: Pick<Soaked, 'growth' | 'stored'>): readonly string[] => [
  ...growth.flatMap(({ where, bytes }) => {
    const most = where === 'about' ? MOST_BYTES_AN_ACT.about : MOST_BYTES_AN_ACT.sitting;
    return bytes.least > most
      ? [`memory grows on ${where} by at least ${Math.round(bytes.least)} bytes an act; ${most} are allowed`]
      : [];
  }),
  ...(stored.last - stored.first > MOST_STORED
    ? [`the storage grew by ${stored.last - stored.first} bytes; ${MOST_STORED} are allowed`]
    : []),
  ...(stored.notes > MOST_NOTES ? [`the small notes have ${stored.notes} letters`] : []),
];

export type Span = {
  /** Minutes of going about. */
  readonly about: number;
  /** Minutes on each page that stays open. */
  readonly sitting: number;
  readonly seats: readonly string[];
};
/** Minutes shared out: most for going about, the rest for the pages that stay open. */
export const spanOf = (minutes: number): Span => ({
  about: minutes * 0.35,
  sitting: (minutes * 0.65) / SEATS.length,
  seats: SEATS,
});

/** A user of chance for such a time. `plant` is put into every page: a leak, to see that it is found. */
export const soak = (span: Span, seed: number, plant?: () => void): Promise<Soaked> =>
  visit(async (visit) => {
    const run: Run = {
      visit,
      seed,
      roll: dice(seed),
      done: [],
      counts: { done: 0, nothing: 0, missed: 0 },
      fault: undefined,
    };
    const first = (await storedBy(visit.page)).bytes;
    const inMinutes = (minutes: number) => performance.now() + minutes * 60_000;
    const growth = [await goAbout(run, inMinutes(span.about))];
    for (const seat of span.seats) if (!run.fault) growth.push(await sit(run, seat, inMinutes(span.sitting)));
    if (!run.fault) await home(run);
    const { bytes: last, notes } = run.fault ? { bytes: first, notes: 0 } : await storedBy(visit.page);
    return {
      seed,
      counts: run.counts,
      hours: visit.hours(),
      growth,
      stored: { first, last, notes },
      ...(run.fault && { fault: run.fault }),
    };
  }, plant);
