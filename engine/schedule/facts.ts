import { type Case, emptyCase, withFact } from '../case.ts';
import type { Step } from '../model/step.ts';
import type { Job, PlanProduct } from './job.ts';
import { pieceOf } from './piece.ts';

/** The facts of a planned job, for the rules. Her own new paint over bare wood is as good as paint since 1993. */
export const factsOfJob = (job: Job, product: PlanProduct): Case => {
  let on = withFact(emptyCase(), 'family', product.family);
  on = withFact(on, 'piece', pieceOf(job));
  on = withFact(on, 'base', job.base);
  on = withFact(on, 'base-tone', job.tone);
  on = withFact(on, 'sheen', job.sheen);
  on = withFact(on, 'applicator', job.applicator);
  on = withFact(on, 'age', job.age === 'none' ? 'since-1993' : job.age);
  return withFact(on, 'air-celsius', Math.min(job.day.celsius, job.night.celsius));
};

/** The step of laying a coat of this product with the tool of this job, as the rules know it. */
export const coatStep = ({ applicator }: Job, { family }: PlanProduct): Step => ({
  kind: 'coat',
  say: 'Lay one coat.',
  thin: true,
  by: applicator === 'spray-gun' || applicator === 'aerosol' ? 'spray' : 'hand',
  product:
    family === 'shellac' ? 'dewaxed-shellac' : family === 'wax' ? 'wax' : family === 'oil' ? 'oil' : 'same',
});
