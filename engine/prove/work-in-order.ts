/**
 * The order in which the trade works, as far as the steps of a repair can break it. Common practice, no source, where none
 * is named.
 */
import { above, below } from '../faults/mend.ts';
import type { Step } from '../model/step.ts';
import { bothAreTaken, each, type Held, isVacuum, since } from './held.ts';

const makesDust = ({ kind }: Step): boolean => kind === 'sand' || kind === 'scrape' || kind === 'strip';
const meansOf = (step: Step): string | undefined =>
  step.kind === 'coat' ? step.product : step.kind === 'wipe' || step.kind === 'strip' ? step.with : undefined;

/** Hours since the coat was laid have no meaning once something else was done to it. */
const coatsAgeBeforeWork = each((step, before) =>
  step.kind === 'wait' && step.from === 'coat' && since(before, 'coat').some(({ kind }) => kind !== 'wait')
    ? {
        what: `"${step.say}" counts from the day the coat was laid, but stands after other work`,
        mend: 'move it up to be the first step, or delete "from: coat" on this line',
      }
    : undefined,
);

/** Dust that lies for hours settles into whatever is soft, and the room stirs it up. */
const dustGoesBeforeAWait = each((step, before) => {
  const [last] = since(before, 'wipe', 'coat', 'strip').filter(({ kind }) => kind === 'sand');
  return step.kind === 'wait' && last
    ? {
        what: `"${step.say}" comes while the sanding dust still lies`,
        mend: `${above('kind: wipe, with: vacuum', ' that takes the dust off')}, or move the wait above the sanding`,
      }
    : undefined;
});

/** A cloth over dust rubs it in, and a damp one makes paste of it. */
const vacuumBeforeCloth = each((step, before) => {
  if (!isVacuum(step)) return undefined;
  const dusty = since(before, 'coat', 'strip');
  const made = dusty.findLastIndex(({ kind }) => kind === 'sand' || kind === 'scrape');
  const wiped = made >= 0 && dusty.slice(made + 1).some((one) => one.kind === 'wipe' && !isVacuum(one));
  return wiped
    ? {
        what: `the vacuum comes after a cloth has gone over the dust: "${step.say}"`,
        mend: 'move this step above the one with the cloth',
      }
    : undefined;
});

const vacuumAfterDust = each((step, before, after) =>
  isVacuum(step) && !since(before, 'coat').some(makesDust) && after.some(makesDust)
    ? { what: `"${step.say}" comes before anything has made dust`, mend: 'move it below the sanding' }
    : undefined,
);

/** Papers for rubbing out may be tried on a spot before a coarser one is taken to the whole face. */
const RUBBING_OUT = 800;
const coarseToFine = each((step, before) => {
  const last = since(before, 'coat', 'strip').findLast((one) => one.kind === 'sand');
  return step.kind === 'sand' && last?.kind === 'sand' && last.grit < RUBBING_OUT && step.grit < last.grit
    ? {
        what: `P${step.grit} comes after P${last.grit}: it cuts its scratches in again`,
        mend: 'move the step with the coarser paper above the other, or mend its grit:',
      }
    : undefined;
});

const scrapeBeforeSanding = each((step, before) =>
  step.kind === 'scrape' && since(before, 'coat', 'strip').some(({ kind }) => kind === 'sand')
    ? { what: `"${step.say}" comes after the sanding`, mend: 'move it above the sanding' }
    : undefined,
);

const triedBeforeUse = each((step, before) =>
  step.kind === 'test-patch' &&
  before.some((other) => meansOf(other) === step.tries && bothAreTaken(step, other))
    ? {
        what: `"${step.say}" comes when ${step.tries === 'same' ? 'the finish' : step.tries.replaceAll('-', ' ')} is on the piece already`,
        mend: 'move the trial above the step that lays it',
      }
    : undefined,
);

const triedOnCleanGround = each((step, before) =>
  step.kind === 'test-patch' && since(before, 'wipe').some(({ kind }) => kind === 'sand' || kind === 'strip')
    ? {
        what: `"${step.say}" lays the trial on sanding dust`,
        mend: above('kind: wipe, with: vacuum', ' that takes the dust off'),
      }
    : undefined,
);

/** Oil and wax that are left to stand go sticky. Some are rubbed in wet with paper. */
const surplusComesOff = each((step, _, [next]) => {
  const laid =
    (step.kind === 'coat' && (step.product === 'oil' || step.product === 'wax')) ||
    (step.kind === 'wipe' && step.with === 'fresh-oil');
  return laid && !/\b(?:wipe|buff)/i.test(step.say) && next?.kind !== 'wipe' && next?.kind !== 'sand'
    ? {
        what: `what "${step.say}" lays on is not wiped off in the next step`,
        mend: below('kind: wipe, with: dry-cloth', ' that takes the surplus off'),
      }
    : undefined;
});

const onceMoreAfterOnce = each((step, before, after) => {
  const [, again] = /^(?:\w+ ){1,6}(once more|again)\b/i.exec(step.say) ?? [];
  const isAlike = ({ kind }: Step): boolean => kind === step.kind;
  if (!again || step.kind === 'look' || step.kind === 'wait' || before.some(isAlike)) return undefined;
  return {
    what: `"${step.say}" says ${again}, but nothing above it does that`,
    mend: after.some(isAlike)
      ? `move it below the step that does it first, or take "${again}" out`
      : `take "${again}" out, or add the step that does it first above this one`,
  };
});

/** "Do it again" has no other name for what it means than the step right above it; a look may stand between. */
const againAfterIt = each((step, before) => {
  const above = before.findLast(({ kind }) => kind !== 'look');
  return /^(?:Do|Repeat) (?:it|this|that|so)\b/.test(step.say) &&
    step.kind !== 'look' &&
    above?.kind !== step.kind
    ? { what: `"${step.say}" does not stand below what it repeats`, mend: 'move it right below that step' }
    : undefined;
});

/** What is to go at once has hardened after a wait. */
const atOnceBeforeAWait = each((step, before) =>
  step.kind === 'wipe' &&
  /^(?:Wipe|Buff|Blot)\b[^,:;]*\bat once\b/.test(step.say) &&
  before.at(-1)?.kind === 'wait'
    ? {
        what: `"${step.say}" comes after a wait`,
        mend: 'move it above the wait, right below what it takes off',
      }
    : undefined,
);

const ONCE_MORE = /\b(rinse|wash|wipe|sand|buff|scrape) (?:it |them )?(?:once more|again)\b/i;
/** Who is to do it once more when it does not look right has done it before. */
const looksAfterWhatTheyRepeat = each((step, before, after) => {
  const verb = step.kind === 'look' ? ONCE_MORE.exec(step.say)?.[1]?.toLowerCase() : undefined;
  const says = ({ say }: Step) => verb !== undefined && say.toLowerCase().includes(verb);
  return verb && !before.some(says) && after.some(says)
    ? {
        what: `"${step.say}" asks to ${verb} once more before that was done once`,
        mend: 'move it below the step that does it first',
      }
    : undefined;
});

/** Who has to wait after the last look would never see what came of it. */
const lastLookAfterLastWait: Held = ({ steps }) => {
  const [look, wait] = steps.slice(-2);
  return look?.kind === 'look' && wait?.kind === 'wait'
    ? [
        {
          index: steps.length - 1,
          what: `the repair ends in "${wait.say}", after the last look`,
          mend: `${below('kind: look')}, or move the last look below it`,
        },
      ]
    : [];
};

/** Flatting agent sinks within minutes. A smear may be looked at, and tint or thinner stirred in. */
const AFTER_STIRRING: readonly Step['kind'][] = ['coat', 'mix', 'test-patch', 'look'];
const stirredLast = each((step, _, [next]) =>
  step.kind === 'mix' && step.what === 'stir' && next && !AFTER_STIRRING.includes(next.kind)
    ? {
        what: `"${next.say}" comes between the stirring and the coat`,
        mend: 'move the stirring right above the coat: what makes it satin sinks meanwhile',
      }
    : undefined,
);

const lastDustComesOff: Held = ({ steps }) => {
  const index = steps.findLastIndex(({ kind }) => kind === 'sand');
  const taken = steps
    .slice(index + 1)
    .some(({ kind }) => kind === 'wipe' || kind === 'coat' || kind === 'strip');
  return index >= 0 && !taken
    ? [
        {
          index,
          what: `the dust of "${steps[index]?.say}" is never taken off`,
          mend: below('kind: wipe, with: vacuum', ' that takes the dust off'),
        },
      ]
    : [];
};

/** Hours that nothing needs: no coat, no wash and nothing bared since the last wait. */
const waitsDrySomething = each((step, before) => {
  if (step.kind !== 'wait' || step.until || step.when || step.from) return undefined;
  const waited = before.findLastIndex(({ kind }) => kind === 'wait');
  const meanwhile = before.slice(waited + 1);
  const dries = meanwhile.some(
    (one) =>
      ['coat', 'strip', 'test-patch', 'scrape'].includes(one.kind) || (one.kind === 'wipe' && !isVacuum(one)),
  );
  return waited >= 0 && meanwhile.length > 0 && !dries
    ? {
        what: `"${step.say}" waits for nothing: nothing wet was laid since the last wait`,
        mend: 'move it right below what has to dry, or delete it',
      }
    : undefined;
});

export const WORK_IN_ORDER: readonly Held[] = [
  coatsAgeBeforeWork,
  dustGoesBeforeAWait,
  vacuumBeforeCloth,
  vacuumAfterDust,
  coarseToFine,
  scrapeBeforeSanding,
  triedBeforeUse,
  triedOnCleanGround,
  surplusComesOff,
  onceMoreAfterOnce,
  againAfterIt,
  atOnceBeforeAWait,
  looksAfterWhatTheyRepeat,
  lastLookAfterLastWait,
  stirredLast,
  lastDustComesOff,
  waitsDrySomething,
];
