import { type Case, withFact, without } from '../case/case.ts';
import type { Late } from '../clock/late.ts';
import { coatStep } from '../fitness/case.ts';
import { rubOf, washOf } from '../fitness/judge.ts';
import type { Plan } from '../model/plan.ts';
import type { GRITS, Step } from '../model/step.ts';
import type { Stretch } from '../plain/time.ts';
import { type Firing, fire, rulesForStep, type SaidRule } from '../rules/rules.ts';
import type { Job, PlanProduct, PlanTables } from './job.ts';
import type { Laying } from './layings.ts';
import type { Planning } from './planning.ts';

/** A step with its time but without its cautions. For a wait `to` is when it may be over, `surely` when it is. */
export type Raw = Stretch & {
  readonly kind:
    | 'wash'
    | 'test-patch'
    | 'turn'
    | 'sand'
    | 'wipe'
    | 'coat'
    | 'buff'
    | 'wait'
    | 'look'
    | 'light-use'
    | 'full-use';
  /** The coat that it belongs to, from 1; for a look the one looked at. */
  readonly coat?: number;
  /** The face that it is done on; of a turning the one that is up then. Nothing where no part is turned. */
  readonly face?: Laying['face'];
  /** A wait until the part can be turned. */
  readonly untilTurned?: true;
  readonly surely?: number;
  readonly grit?: (typeof GRITS)[number];
  readonly hours?: number;
  /** The film below is too thin to be sanded over the whole face. */
  readonly thin?: boolean;
  /** Nobody has said whether isocyanate is in the film below: it is sanded only if not. */
  readonly ifOnePart?: true;
  /** The film below is not sanded as it is, with isocyanate in it: only wiped. `late`: a coat may not hold on it any more. */
  readonly unsanded?: 'ready' | 'late';
  /** Why it can not be left out; nothing where it could. */
  readonly must?: Late | undefined;
  readonly final?: boolean;
  readonly say?: string | undefined;
  /** What it does that only its words tell. */
  readonly does?: Step['does'] | undefined;
};
type Look = Plan['looks'][number];
export type PlanStep = Raw & {
  /** Cautions before this step, each told once in a plan. */
  readonly before: readonly SaidRule[];
  /** Stops that an earlier step has told whole, each in its one line: what is not done once a day is done every time. */
  readonly again: readonly SaidRule[];
  /** What to look for now. */
  readonly looks: readonly Look[];
};

const ruleStep = (raw: Raw, job: Job, product: PlanProduct): Step | undefined => {
  const say = raw.say ?? 'As the plan says.';
  if (raw.kind === 'sand' && raw.grit) return rubOf({ say, does: raw.does }, raw.grit);
  if (raw.kind === 'wipe') return { kind: 'wipe', with: 'dry-cloth', say };
  if (raw.kind === 'wash') return washOf({ say, does: raw.does });
  if (raw.kind === 'buff') return { kind: 'wipe', with: 'dry-cloth', of: 'same', say };
  if (raw.kind === 'coat' || raw.kind === 'test-patch') return coatStep(job, product);
  return undefined;
};

const looksAt = (plan: PlanTables, job: Job, { family }: PlanProduct, when: Look['when']): readonly Look[] =>
  plan.looks.filter(
    (look) =>
      look.when === when &&
      (!look.families || look.families.includes(family)) &&
      (!look.bases || look.bases.includes(job.base)),
  );

/** When a step calls for looking, and at what. Wood and base show through in the first coat only. */
const looksOf = (plan: PlanTables, job: Job, product: PlanProduct, raw: Raw): readonly Look[] => {
  const at = (when: Look['when']) => looksAt(plan, job, product, when);
  if (raw.kind === 'coat') return at('laid');
  if (raw.kind === 'sand' && (raw.coat ?? 0) > 1) return at('sanded');
  if (raw.kind === 'full-use') return at('handed-over');
  if (raw.kind !== 'look') return [];
  if (raw.final) return at('last');
  return [
    ...at('dry').filter(({ bases }) => !bases || raw.coat === 1),
    ...(raw.coat === 2 ? at('second') : []),
  ];
};

/** Every step with the cautions of the rules and the flaws to look for. No plan can switch a rule off. */
export const cautioned = (
  { plan, job, product }: Planning,
  known: Firing<SaidRule>,
  on: Case,
  steps: readonly Raw[],
  whole: readonly SaidRule[],
): readonly PlanStep[] => {
  const told = new Set(whole.map(({ id }) => id));
  return steps.map((raw) => {
    const step = ruleStep(raw, job, product);
    const stage = raw.kind === 'full-use' ? 'cured' : raw.kind === 'light-use' ? 'recoatable' : undefined;
    // What is mixed into the coats is not in the base.
    const facts = raw.kind === 'sand' && raw.coat === 1 ? without(on, 'hardener') : on;
    const rules = step
      ? rulesForStep(known, facts, step)
      : stage
        ? Object.values(fire(known, withFact(on, 'stage', stage), [])).flat()
        : [];
    const before = rules.filter((rule) => rule.kind !== 'adjustment' && !told.has(rule.id));
    const again = step ? rules.filter(({ kind, lead, id }) => kind === 'stop' && lead && told.has(id)) : [];
    for (const { id } of before) told.add(id);
    return { ...raw, before, again, looks: looksOf(plan, job, product, raw) };
  });
};
