import type { Problem } from '../calc/quantity.ts';
import { sayProblem } from '../calc/say-problem.ts';
import type { Units } from '../calc/units.ts';
import type { No } from '../fitness/judge.ts';

/** A night that spoils each coat before it is dry enough. */
export const spoiledByNight = (problem: Problem, units: Units): No => ({
  code: 'drying',
  says: `After the coat is laid the night spoils it before it is dry enough. ${sayProblem(problem, units)}`,
  instead:
    'Start earlier in the day, take a product that dries sooner, or keep the piece warmer or drier by night: with house heating, never with a flame.',
});
