import { z } from 'zod';
import { Act } from './remedy.ts';
import { Step } from './step.ts';

const named = (what: string) =>
  z.string().regex(/^[a-z][a-z0-9-]*$/, `write ${what} in small letters, its words joined by hyphens`);

/** What hands do with a kind of top coat before it can be mended, where a remedy says nothing else. */
const Usual = z.strictObject({
  do: Act.shape.do,
  say: Act.shape.say.optional(),
  not: Act.shape.not.optional(),
});
const UsualActs = z.strictObject({
  wet: Usual.optional(),
  setting: Usual.optional(),
  'dry-to-touch': Usual.optional(),
  recoatable: Usual.optional(),
});

/** content/acts.yaml: the usual acts of each kind of repair. */
export const SharedActs = z.record(named('a kind of repair'), UsualActs);
export type SharedActs = z.infer<typeof SharedActs>;

/** content/steps.yaml: steps that many remedies share, one or several to a name. */
export const SharedSteps = z.record(named('the name of a step'), z.array(Step).min(1));
export type SharedSteps = z.infer<typeof SharedSteps>;
