import type { Job, Planned, PlanStep } from '#engine/schedule.ts';
import type { PlanData } from '../../shared/plan-data.ts';

/** One step in words. */
export type Line = { readonly step: PlanStep; readonly title: string; readonly notes: readonly string[] };

const titleOf = ({ kind, coat, grit, hours, final }: PlanStep, coats: number): string => {
  switch (kind) {
    case 'test-patch':
      return `Test patch on a hidden spot, then wait ${hours} h`;
    case 'sand':
      return `Sand with P${grit}`;
    case 'wipe':
      return coat === 1 ? 'Clean, and let it dry' : 'Wipe the dust off, and let it dry';
    case 'coat':
      return `Coat ${coat} of ${coats}`;
    case 'wait':
      return coat ? 'Hands off, and let it dry' : 'Let the base dry';
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

/** Every step in words, with what to mind and what to look for. */
export const linesOf = (job: Job, { steps, coats, build }: Planned, data: PlanData): readonly Line[] =>
  steps.map((step) => ({
    step,
    title: titleOf(step, coats.length),
    notes: [
      ...step.before.map(({ title, say }) => `${title}: ${say}`),
      ...(step.say ? [step.say] : []),
      ...(step.must ? ['It has dried so long that the next coat holds only on a sanded film.'] : []),
      ...(step.kind === 'coat' && step.coat === 1
        ? [
            job.sheen === 'gloss'
              ? 'Stir, do not shake; strain.'
              : 'Stir from the bottom for several minutes, then and now; do not shake; strain.',
            'Full-length strokes, end to end; do not go back.',
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
