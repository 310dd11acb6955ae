import type { Late } from '#engine/clock.ts';
import type { Family } from '#engine/model/family.ts';
import { lower, upper } from '#engine/plain/text.ts';
import { type Face, type Job, type Planned, type PlanStep, sayStep } from '#engine/schedule.ts';
import { clockWords } from '../../shared/clock-words.ts';
import type { PlanData } from '../../shared/plan-data.ts';

/** One step in words. */
export type Line = { readonly step: PlanStep; readonly title: string; readonly notes: readonly string[] };

/** Which face is meant, before what is done on it. */
const onFace = (face: Face | undefined, title: string): string =>
  face ? `${upper(face)}: ${lower(title)}` : title;

const whatOf = (
  { kind, coat, face, untilTurned, grit, hours, final, thin, must, ifOnePart, unsanded }: PlanStep,
  coats: number,
  oil: boolean,
): string => {
  switch (kind) {
    case 'test-patch':
      return `Test patch on a hidden spot, then wait ${hours} h`;
    case 'turn':
      return `Turn it, ${face} up`;
    case 'wash':
      return 'Wash it, and let it dry';
    case 'sand':
      return `${
        thin ? `${must ? 'Dull it' : 'Take off what stands up'}, P${grit} by hand` : `Sand with P${grit}`
      }${ifOnePart ? ', if it is of one part' : ''}`;
    case 'wipe':
      if (unsanded) return 'Do not sand it: wipe it, and let it dry';
      return coat === 1 ? 'Clean, and let it dry' : 'Wipe the dust off, and let it dry';
    case 'coat':
      return `Coat ${coat} of ${coats}`;
    case 'buff':
      return 'Buff it once it is dull';
    case 'wait':
      if (!coat) return 'Let the base dry';
      if (untilTurned) return 'Hands off until it can be turned';
      return oil ? 'Once it is wiped off, let it dry' : 'Hands off, and let it dry';
    case 'look':
      return final ? 'Judge it from arm’s length' : `Look at coat ${coat}`;
    case 'light-use':
      return 'Light, careful use';
    case 'full-use':
      return 'Fully cured: full use';
    default:
      return kind satisfies never;
  }
};

const titleOf = (step: PlanStep, coats: number, oil: boolean): string => {
  const what = whatOf(step, coats, oil);
  return step.kind === 'turn' ? what : onFace(step.face, what);
};

export const familyOf = ({ product }: Job, data: PlanData): Family | undefined =>
  data.products.find(({ id }) => id === product)?.family;

/** What is spread, left to soak and wiped off again: no film of it may be left standing. */
const isOil = (family: Family | undefined): boolean => family === 'oil' || family === 'hardwax-oil';

/** What lays a film without touching it. */
export const SPRAYS: readonly string[] = ['spray-gun', 'aerosol'];

/** How a coat is laid with what was chosen, in a sentence. */
export const laidHow = ({ applicator }: Pick<Job, 'applicator'>, family: Family | undefined): string => {
  if (isOil(family))
    return 'Spread it thin, let it soak in for five to ten minutes, or as long as the can says, then wipe off all that stands with clean cloths.';
  if (family === 'wax')
    return 'Rub it on as thin as you can, a part at a time, and wipe each part back at once, end to end; more does not hold better.';
  switch (applicator) {
    case 'cloth':
    case 'pad':
      return 'A pad that is only damp, in long strokes that overlap; do not go back.';
    case 'spray-gun':
    case 'aerosol':
      return 'Even passes, each half over the last, that start and stop off the edge.';
    case 'roller':
      return 'Thin and even, edge to edge; go over it once, in one direction, then leave it.';
    default:
      return 'Full-length strokes, end to end; do not go back.';
  }
};

/** How what is in the can is made even before it is laid, whole and in short; a wax is taken as it is. */
export const mixedHow = (
  { applicator, sheen }: Pick<Job, 'applicator' | 'sheen'>,
  family: Family | undefined,
): { readonly whole: string; readonly short: string } => {
  if (family === 'wax') return { whole: '', short: '' };
  if (applicator === 'aerosol')
    return { whole: 'Shake the can as long as it says, and again in between.', short: 'Shake the can.' };
  return {
    whole:
      sheen === 'gloss'
        ? 'Stir, do not shake; strain.'
        : 'Stir from the bottom for several minutes, then and now; do not shake; strain.',
    short: 'Stir from the bottom, strain.',
  };
};

/** Why a film is dulled before this coat in any case, as the clock says it. */
export const sayMust = (must: Late, thin = false): string =>
  `${thin ? 'Dull it' : 'Sand it'} in any case. ${clockWords.late[must]}`;

/** The coat before which the can is stirred and how it is laid is told: the first of all. */
export const isFirstCoat = ({ kind, coat, face }: PlanStep): boolean =>
  kind === 'coat' && coat === 1 && face !== 'front';

/** Every step in words, with what to mind and what to look for. */
export const linesOf = (job: Job, { steps, coats, build }: Planned, data: PlanData): readonly Line[] => {
  const family = familyOf(job, data);
  return steps.map((step) => ({
    step,
    title: titleOf(step, build?.coats ?? coats.length, isOil(family)),
    notes: [
      ...step.before.map(({ title, say }) => `${title}: ${say}`),
      ...step.again.flatMap(({ lead }) => lead ?? []),
      ...[sayStep(clockWords, step)].filter(Boolean),
      ...(step.must ? [sayMust(step.must, step.thin)] : []),
      ...(isFirstCoat(step)
        ? [
            ...[mixedHow(job, family).whole].filter(Boolean),
            laidHow(job, family),
            ...(build?.thinned
              ? ['A little thinner than usual, so that all coats stay below the greatest film.']
              : []),
          ]
        : []),
      ...step.looks.map(({ say }) => say),
      ...(step.looks.length
        ? [
            `Flaws: ${[...new Set(step.looks.flatMap(({ defects }) => defects))].map((id) => data.defects[id] ?? id).join(', ')}.`,
          ]
        : []),
    ],
  }));
};
