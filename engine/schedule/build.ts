import type { Span } from '../plain/span.ts';
import type { Job, PlanProduct, PlanTables } from './job.ts';

/** Coats and film. Wet and dry film in µm; `dry` and `total` as from–to, since cans differ in solids. */
export type Build = {
  readonly coats: number;
  readonly wet: number;
  /**
   * What a coat takes out of the can over its area, µm: more than `wet` where most of it sinks in or is wiped off
   * again.
   */
  readonly taken: number;
  readonly dry: Span;
  readonly total: Span;
  /** Nothing where the finish lies in the wood and makes no film to speak of. */
  readonly target?: number | undefined;
  readonly most?: number | undefined;
  /** Laid thinner than usual so that all coats together stay below the most. */
  readonly thinned: boolean;
  /** The can asks for more than the most: it wins, and this is told. */
  readonly over: boolean;
  /** Less than the target, because more coats are not laid of this product. */
  readonly short: boolean;
};

/** Whether a row of a table is for this product. */
export const isFor = (
  row: { families: readonly string[]; products?: readonly string[] | undefined },
  product: PlanProduct,
) => row.families.includes(product.family) && (!row.products || row.products.includes(product.id));

/** The wet film that a coat usually has, with the least that this tool can lay, µm. The can's coverage fixes both. */
const wetOf = (job: Job, product: PlanProduct): { least: number; usual: number } | undefined => {
  const coverage = job.label?.squareMetersPerLiter;
  if (coverage) return { least: 1000 / coverage, usual: 1000 / coverage };
  const film = product['wet-film-micrometers'][job.applicator];
  return film && { least: film[0], usual: Math.sqrt(film[0] * film[1]) };
};

/** What makes no film to speak of sinks in or is wiped off: the can tells how far it goes, not the film that stays. */
const takenBy = (job: Job, product: PlanProduct, wet: number, leavesFilm: boolean): number => {
  if (leavesFilm || job.label?.squareMetersPerLiter) return wet;
  const [least, most] = product['square-meters-per-liter'];
  return Math.max(wet, 1000 / Math.sqrt(least * most));
};

/** Small enough to lose nothing, large enough to swallow a rounding. */
const HAIR = 1e-9;

/**
 * How many coats, and how thick. The wear sets the count, the target may add to it, the greatest film takes away:
 * first by thinner coats, then by fewer. Nothing where the tool does not suit the product.
 */
export const buildOf = (plan: PlanTables, job: Job, product: PlanProduct): Build | undefined => {
  const wetFilm = wetOf(job, product);
  const row = plan.coats.find((one) => isFor(one, product));
  if (!wetFilm || !row) return undefined;
  const film = plan.film.find((one) => isFor(one, product));
  const [low, high] = job.label?.volumeSolids
    ? [job.label.volumeSolids, job.label.volumeSolids]
    : product['volume-solids'];
  const middle = (low + high) / 2;
  const target = film?.target[job.wear];
  const most = film?.most;
  const told = job.label?.coats;
  const wanted = target ? Math.ceil(target / (wetFilm.usual * middle) - HAIR) : 0;
  let coats = told ?? Math.min(Math.max(row.wear[job.wear], wanted), row.most);
  if (!told && most) coats = Math.max(1, Math.min(coats, Math.floor(most / (wetFilm.least * high) + HAIR)));
  const ceiling = most ? most / (coats * high) : Number.POSITIVE_INFINITY;
  const wet = Math.max(wetFilm.least, Math.min(wetFilm.usual, ceiling));
  const dry = { from: wet * low, to: wet * high };
  const total = { from: coats * dry.from, to: coats * dry.to };
  return {
    coats,
    wet,
    taken: takenBy(job, product, wet, film !== undefined),
    dry,
    total,
    target,
    most,
    thinned: wet < wetFilm.usual - HAIR,
    over: total.to > (most ?? Number.POSITIVE_INFINITY) + HAIR,
    short: coats * wet * middle < (target ?? 0) - HAIR,
  };
};
