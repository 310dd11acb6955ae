/** What the layer below needs before the next one is laid. Common practice, no source, where none is named. */
import { withFact } from '../case/case.ts';
import type { Issue } from '../faults/issue.ts';
import { sharedStep } from '../faults/mend.ts';
import type { Knowledge } from '../knowledge/knowledge.ts';
import { FAMILIES, type Family } from '../model/family.ts';
import type { Remedy } from '../model/remedy.ts';
import type { Step } from '../model/step.ts';
import { isOfHerOwn } from '../steps/her-own.ts';
import { isOnlyAPlace, WHOLE } from '../steps/only-a-place.ts';
import { takingOf } from '../steps/resolve.ts';
import { familiesByRemedy } from './hazards-are-cautioned.ts';
import { type Against, toldOfStep } from './held.ts';

type Indexed = { readonly step: Step; readonly index: number };
type Coat = Step & { readonly kind: 'coat' };
type HeldFor = (steps: readonly Indexed[], family: Family) => readonly Against[];

const CLEAR = ['same', 'same-in-gloss', 'tinted-same', 'water-based', 'mist-of-same'];
const OVER_PAINT = [...CLEAR, 'dewaxed-shellac'];
const ALCOHOL = ['shellac-primer', 'dewaxed-shellac', 'stain-blocking-primer'];
const WATER_BORNE: readonly Family[] = ['water-based', 'water-lacquer'];
/** Its solvent swells an oil paint that is not hard yet. */
const HOT: readonly Family[] = ['lacquer', 'shellac'];
const A_DAY = 24;
const THREE_DAYS = 72;
const A_WEEK = 168;
const DAYS = { [A_DAY]: 'a day has', [THREE_DAYS]: 'three days have', [A_WEEK]: 'a week has' };

const coatOf = (family: Family): string =>
  /-(?:based|on)$/.test(family) ? `a coat that is ${family}` : `a coat of ${family.replaceAll('-', ' ')}`;

const isCoat = (step: Step, products: readonly string[]): step is Coat =>
  step.kind === 'coat' && products.includes(step.product);
/** "If filler is new, …" is waited by those alone of whom it is so. */
const isForSome = ({ say, when }: Step): boolean => !when && /^if\b/i.test(say);
const longest = (steps: readonly Indexed[]): number =>
  Math.max(
    0,
    ...steps.map(({ step }) => (step.kind === 'wait' && step.hours && !isForSome(step) ? step.hours[1] : 0)),
  );

/**
 * Oil paint below lacquer or shellac a week, below a water-based coat three days, below the others one: as in the waits of
 * `content/plan.yaml`. The color is laid again as it was, so it may be oil paint wherever no condition shuts that out.
 */
const oilPaintHasItsDays: HeldFor = (steps, family) =>
  steps.flatMap(({ step, index }, at) => {
    if (!isCoat(step, ['base-color'])) return [];
    const bases = [step.when?.['base']].flat();
    if (step.when?.['base'] !== undefined && !bases.includes('oil-paint')) return [];
    const after = steps.slice(at + 1);
    const next = after.findIndex((one) => isCoat(one.step, OVER_PAINT));
    const over = after[next]?.step;
    if (over?.kind !== 'coat') return [];
    const laid: Family =
      over.product === 'dewaxed-shellac'
        ? 'shellac'
        : over.product === 'water-based'
          ? 'water-based'
          : family;
    const hours = HOT.includes(laid) ? A_WEEK : WATER_BORNE.includes(laid) ? THREE_DAYS : A_DAY;
    return longest(after.slice(0, next)) < hours
      ? [
          {
            index,
            what: `${coatOf(laid)} comes on the oil paint of "${step.say}" before ${DAYS[hours]} passed`,
            mend: `right below that step, ${sharedStep('color-dries-a-day')} (it gives oil paint its days, up to a week)`,
          },
        ]
      : [];
  });

/**
 * Thinner of lacquer swells and wrinkles paint even where it is long dry (two talks on a finishers’ forum, 2001 and 2004, in
 * `content/plan.yaml`): it is tried on a hidden spot, or shellac comes between.
 */
const lacquerIsTriedOnPaint: HeldFor = (steps, family) =>
  family === 'lacquer'
    ? steps.flatMap(({ step, index }, at) => {
        if (!isCoat(step, ['base-color'])) return [];
        const after = steps.slice(at + 1).map((one) => one.step);
        const next = after.findIndex((one) => isCoat(one, OVER_PAINT));
        const over = after[next];
        const tried = after.slice(0, next).some(({ kind }) => kind === 'test-patch');
        return over && isOfHerOwn(over) && !isShellac(over) && !tried
          ? [
              {
                index,
                what: `lacquer comes on the fresh paint of "${step.say}", and nobody tried it`,
                mend: `below the wait for the color, ${sharedStep('lacquer-on-paint-is-tried')}`,
              },
            ]
          : [];
      })
    : [];

/** What is still to be stripped, and a primer that is said to be oil-based, hold no alcohol that a young film minds. */
const alcoholWaitsAWeek: HeldFor = (steps, family) =>
  WATER_BORNE.includes(family)
    ? steps.flatMap(({ step, index }, at) => {
        if (!isCoat(step, ALCOHOL) || /\boil-based\b/i.test(step.say)) return [];
        const before = steps.slice(0, at);
        const bared = before.some((one) => one.step.kind === 'strip' && !one.step.when);
        return !bared && longest(before) < A_WEEK
          ? [
              {
                index,
                what: `"${step.say}" lays alcohol on a water-based coat that may be a day old, which softens it`,
                mend: `above it, ${sharedStep('a-week-below-alcohol')}`,
              },
            ]
          : [];
      })
    : [];

/** The cut is told of shellac alone. */
const isShellac = ({ say }: Step): boolean => /-lb cut\b/i.test(say);
const touchesIn = ({ say }: Step): boolean => /^(?:touch|dab)\b/i.test(say);
/**
 * A coat holds on what is dull: where a panel is coated, not only a place on it was sanded. Shellac and lacquer melt into
 * the coat below.
 */
const wholePanelIsDulled: HeldFor = (steps, family) => {
  if (HOT.includes(family)) return [];
  const first = steps.findIndex(
    ({ step }) =>
      isCoat(step, [...CLEAR, 'base-color']) &&
      !touchesIn(step) &&
      !isShellac(step) &&
      (WHOLE.test(step.say) || /\bone thin coat\.$/i.test(step.say)),
  );
  const coat = steps[first];
  const before = steps.slice(0, Math.max(first, 0)).map(({ step }) => step);
  const sanded = before.filter(({ kind }) => kind === 'sand');
  const onlyAPlace = sanded.length > 0 && sanded.every(({ say }) => isOnlyAPlace(say));
  const coveredOrBared = before.some(
    (step) => step.kind === 'strip' || (step.kind === 'coat' && WHOLE.test(step.say) && !touchesIn(step)),
  );
  return coat && onlyAPlace && !coveredOrBared
    ? [
        {
          index: coat.index,
          what: `"${coat.step.say}" coats more than was sanded: a coat lets go of what still shines`,
          mend: 'say in a sanding before it that the whole panel is scuffed until it is dull',
        },
      ]
    : [];
};

const HELD: readonly HeldFor[] = [
  oilPaintHasItsDays,
  lacquerIsTriedOnPaint,
  alcoholWaitsAWeek,
  wholePanelIsDulled,
];

const taken = (known: Knowledge, remedy: Remedy, family: Family): readonly Indexed[] => {
  const on = withFact({}, 'family', family);
  return remedy.steps.flatMap((step, index) => (takingOf(known, on, step) === 'no' ? [] : [{ step, index }]));
};

/** Every coat of a repair finds a layer below that it can be laid on, whichever kind of top coat it is. */
export function* coatsHoldOnCoats(known: Knowledge): Generator<Issue> {
  const lists = familiesByRemedy(known);
  for (const remedy of known.remedies) {
    const told = new Set<string>();
    const families = [...new Set((lists.get(remedy.id) ?? []).flat())];
    for (const family of families.length ? families : FAMILIES) {
      const steps = taken(known, remedy, family);
      for (const held of HELD)
        for (const against of held(steps, family)) {
          const key = `${against.index} ${against.mend}`;
          if (told.has(key)) continue;
          told.add(key);
          yield toldOfStep(remedy, against);
        }
    }
  }
}
