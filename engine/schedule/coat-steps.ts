import { twoPartIn } from '../clock/hardener.ts';
import { lateAt } from '../clock/late.ts';
import { riskOfFilm } from '../fitness/film-risk.ts';
import { inARow } from '../plain/filled.ts';
import { MINUTE_MS, type Stretch } from '../plain/time.ts';
import type { Laying } from './layings.ts';
import type { CoatTimes } from './outcome.ts';
import type { Planning } from './planning.ts';
import type { Raw } from './steps.ts';

/** How a coat is buffed; nothing where its kind is not. */
export const buffOf = ({ plan, product }: Planning) =>
  plan.buff.find(({ families }) => families.includes(product.family));

/** Minutes of what is done in one session, in this order; the coat is laid last. */
export type Work = {
  readonly turn: number;
  readonly look: number;
  readonly rub: number;
  readonly wipe: number;
};

export const minutesBefore = ({ turn, look, rub, wipe }: Work): number => turn + look + rub + wipe;

/** How the base, or the coat below, is made ready for a coat, from 1. */
export const rowOf = ({ plan, job, product }: Planning, number: number) =>
  number === 1
    ? plan.prepare.find(({ bases }) => bases.includes(job.base))
    : plan.between.find(({ families }) => families.includes(product.family));

/** Whether a film of this job may be sanded before the next coat: not with isocyanate in it, and perhaps not. */
export const twoPartOf = ({ job, product }: Planning) => twoPartIn(product, job);

/** How a part is turned. */
const turnSays = ({ plan, job }: Planning, { face }: Laying): string | undefined => {
  const { says } = plan.turn;
  if (!face) return undefined;
  return job.both?.turned === 'each-face' ? says.once.say : says[`${face}-up`].say;
};

/** What is coated with the fronts, and once. */
const frontSays = ({ plan, job }: Planning, { face, number }: Laying): string | undefined => {
  const { edges, rest } = plan.turn.says;
  if (face !== 'front' || number !== 1) return undefined;
  const stands = Object.entries(job.parts).some(
    ([part, { count }]) => count > 0 && !job.both?.parts.some((loose) => loose === part),
  );
  return stands ? `${edges.say} ${rest.say}` : edges.say;
};

/** The turning, the look at the coat below, sanding, wiping and laying, and the buffing after it. */
export const stepsOf = (
  planning: Planning,
  work: Work,
  coat: CoatTimes,
  below: CoatTimes | undefined,
  {
    at,
    buffed,
    say,
  }: { readonly at: Stretch; readonly buffed: Stretch | undefined; readonly say?: string | undefined },
): readonly Raw[] => {
  const { plan, build } = planning;
  const { number, touch, face } = coat;
  const on = face && { face };
  const row = rowOf(planning, number);
  const lookFrom = at.from + work.turn * MINUTE_MS;
  const rubFrom = lookFrom + work.look * MINUTE_MS;
  const wipeFrom = rubFrom + work.rub * MINUTE_MS;
  const must = below && lateAt(coat.from, below.deadline, below.recoat);
  const thin = below && riskOfFilm(plan.sanding, below.number, below.number * build.dry.from) === 'high';
  const twoPart = below && twoPartOf(planning);
  const unsanded = twoPart === 'surely' && row?.grit !== undefined;
  const edges = frontSays(planning, coat);
  return [
    ...(work.turn
      ? [
          {
            kind: 'turn' as const,
            coat: number,
            ...on,
            from: at.from,
            to: lookFrom,
            say: turnSays(planning, coat),
          },
        ]
      : []),
    ...(below ? [{ kind: 'look' as const, coat: below.number, ...on, from: lookFrom, to: rubFrom }] : []),
    ...(work.rub && row?.grit
      ? [
          {
            kind: 'sand' as const,
            coat: number,
            ...on,
            ...(thin && { thin }),
            ...(twoPart && { ifOnePart: true as const }),
            from: rubFrom,
            to: wipeFrom,
            grit: row.grit,
            say: row.say,
            does: row.does,
            must,
          },
        ]
      : []),
    // A film that is still soft is neither rubbed nor wiped.
    ...(work.wipe
      ? [
          {
            kind: 'wipe' as const,
            coat: number,
            ...on,
            from: wipeFrom,
            to: wipeFrom + work.wipe * MINUTE_MS,
            ...(unsanded
              ? { unsanded: must ? ('late' as const) : ('ready' as const) }
              : work.rub
                ? {}
                : { say: row?.say }),
          },
        ]
      : []),
    {
      kind: 'coat',
      coat: number,
      ...on,
      from: coat.from,
      to: coat.to,
      ...((edges || say) && { say: inARow(say, edges) }),
    },
    ...(buffed
      ? [
          { kind: 'wait' as const, coat: number, ...on, from: at.to, to: touch.from, surely: touch.to },
          { kind: 'buff' as const, coat: number, ...on, ...buffed, say: buffOf(planning)?.say },
        ]
      : []),
  ];
};
