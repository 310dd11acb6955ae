/**
 * What cloths, papers and strippers do to the ground that they meet: color, veneer, and what is still wet. Common practice,
 * no source.
 */
import { above } from '../faults/mend.ts';
import { bothAreTaken, each, type Held, isVacuum, since } from './held.ts';

/** Means that lie wet for long enough to be shut in. */
const WET = ['soapy-water', 'mineral-spirits', 'wood-bleach', 'thinner'];
const SAYS_DRY = /\bdr(?:y|ies|ied)\b|\bminutes|\bhours?\b|\bovernight/i;
const wetDriesBeforeACoat = each((step, _, after) => {
  if (step.kind !== 'wipe' || !WET.includes(step.with)) return undefined;
  if (SAYS_DRY.test(step.say)) return undefined;
  const next = after.find((other) => other.kind !== 'mix' && bothAreTaken(step, other));
  return next?.kind === 'coat' || next?.kind === 'test-patch'
    ? {
        what: `"${next.say}" comes on top of what is still wet`,
        mend: `${above('kind: wait, hours: [2, 4]')}, or say in "${step.say}" how long it dries`,
      }
    : undefined;
});

/** Paper over wet spirits clogs, and the motor of a vacuum lights their vapor. */
const SPIRITS = ['mineral-spirits', 'naphtha', 'alcohol', 'thinner'];
const spiritsDryBeforeDust = each((step, _, after) => {
  if (step.kind !== 'wipe' || !SPIRITS.includes(step.with) || step.of === 'oil' || SAYS_DRY.test(step.say))
    return undefined;
  const next = after.find((other) => other.kind !== 'look' && bothAreTaken(step, other));
  return next && (next.kind === 'sand' || isVacuum(next))
    ? {
        what: `"${next.say}" comes on spirits that are still wet`,
        mend: `say how long it dries after "${step.say}": paper clogs, and a vacuum lights vapor`,
      }
    : undefined;
});

/** Paper rubs grease into its own scratches. */
const washedBeforeSanding = each((step, before) =>
  step.kind === 'wipe' &&
  step.with === 'soapy-water' &&
  since(before, 'coat', 'strip').some(({ kind }) => kind === 'sand')
    ? { what: `"${step.say}" comes after the sanding`, mend: 'wash first: paper rubs grease in' }
    : undefined,
);

/** Water lifts chalk and milk paint at any age, and the paper may have bared it. */
const waterSparesBaredColor = each((step, before) => {
  if (step.kind !== 'coat' || step.product !== 'base-color') return undefined;
  const dusty = since(before, 'coat');
  const sanded = dusty.findIndex(({ kind }) => kind === 'sand');
  const damp = dusty
    .slice(sanded + 1)
    .find((one) => one.kind === 'wipe' && ['damp-cloth', 'soapy-water'].includes(one.with));
  return sanded >= 0 && damp
    ? {
        what: `"${damp.say}" brings water to color that the sanding may have bared`,
        mend: 'write with: dry-cloth in that step, since water lifts chalk or milk paint at any age',
      }
    : undefined;
});

/** Veneer is thin as card: coarse paper goes through it before the color on the paper tells. */
const COARSE = 180;
const coarsePaperSparesVeneer = each((step, before) =>
  step.kind === 'sand' && step.grit <= COARSE && ![...before, step].some(({ say }) => /\bveneer\b/i.test(say))
    ? {
        what: `"${step.say}" takes P${step.grit} to what may be veneer`,
        mend: 'say in it, or in a step above it, what is done on veneer',
      }
    : undefined,
);

/** Stripper takes paint as well, so it is tried first; where the paint is to come off, the repair lays color again. */
const stripperIsTriedOverPaint: Held = ({ steps }) =>
  steps.some((step) => step.kind === 'coat' && (step.product === 'base-color' || step.product === 'stain'))
    ? []
    : steps.flatMap((step, index) =>
        step.kind === 'strip' &&
        (step.with === 'stripper' || step.does?.includes('stripper')) &&
        !/\bpaint\b[^.]*\bhidden spot\b/i.test(step.say)
          ? [
              {
                index,
                what: `"${step.say}" brings stripper to paint that is to stay`,
                mend: 'say in it that over paint it is tried on a hidden spot first',
              },
            ]
          : [],
      );

export const GROUND_IS_SPARED: readonly Held[] = [
  wetDriesBeforeACoat,
  spiritsDryBeforeDust,
  washedBeforeSanding,
  waterSparesBaredColor,
  coarsePaperSparesVeneer,
  stripperIsTriedOverPaint,
];
