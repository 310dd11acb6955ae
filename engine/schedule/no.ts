import type { Problem } from '../calc/quantity.ts';
import { sayProblem } from '../calc/say-problem.ts';
import { sayWeather } from '../calc/say-weather.ts';
import { weatherVerdict } from '../calc/weather.ts';
import type { Plan } from '../model/plan.ts';
import type { RuleEntry } from '../rules.ts';
import type { Build } from './build.ts';
import type { FitnessRow } from './fitness.ts';
import type { Job, PlanProduct } from './job.ts';

/** Why there is no plan. */
export type No = {
  readonly code: 'rule' | 'use' | 'tool' | 'weather' | 'base' | 'hours' | 'drying';
  readonly says: string;
  readonly instead?: string;
  /** From then on it would be a yes, epoch milliseconds. */
  readonly earliest?: number;
};

type Judged = {
  readonly plan: Plan;
  readonly job: Job;
  readonly product: PlanProduct;
  readonly stops: readonly RuleEntry[];
  readonly fitness: readonly FitnessRow[];
  readonly build: Build | undefined;
  readonly wait: Plan['waits'][number] | undefined;
  readonly baseReady: number;
};

/** Everything that forbids the job before a single time is reckoned, safety first. Empty: it may be planned. */
export const noesOf = ({
  plan,
  job,
  product,
  stops,
  fitness,
  build,
  wait,
  baseReady,
}: Judged): readonly No[] => {
  const sunny = weatherVerdict(product, { ...job.day, inSun: job.inSun });
  return [
    ...stops
      .filter(({ id }) => plan.refuse.includes(id as never))
      .map(({ title, say }): No => ({ code: 'rule', says: `${title}. ${say}` })),
    ...fitness
      .filter(({ verdict }) => verdict === 'no')
      .map(({ why, instead }): No => ({ code: 'use', says: why, instead })),
    ...(build
      ? []
      : [
          {
            code: 'tool' as const,
            says: `${product.name} is not laid with this tool.`,
            instead: `Take one of these: ${Object.keys(product['wet-film-micrometers']).join(', ')}.`,
          },
        ]),
    ...(wait?.refuse && baseReady > job.start
      ? [
          {
            code: 'base' as const,
            says: wait.why,
            instead: 'Wait, or take another product.',
            earliest: baseReady,
          },
        ]
      : []),
    ...(sunny.ok
      ? sunny.value.reasons
          .filter(({ verdict }) => verdict === 'no')
          .map((reason): No => ({ code: 'weather', says: sayWeather(reason, 'before') }))
      : [{ code: 'weather' as const, says: sayProblem(sunny.problem) }]),
  ];
};

/** A night that spoils each coat before it is dry enough. */
export const spoiledByNight = (problem: Problem): No => ({
  code: 'drying',
  says: `After the coat is laid the night spoils it before it is dry enough. ${sayProblem(problem)}`,
  instead:
    'Keep the piece warmer or drier by night, start earlier in the day, or take a product that dries sooner.',
});
