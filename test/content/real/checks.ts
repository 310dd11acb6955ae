/**
 * Checks of the content against the trade, beyond what the proofs hold. Each names every place that breaks it,
 * so that the mutation run can ask them too.
 */
import { answerOf } from '#engine/answers.ts';
import { resolve } from '#engine/index.ts';
import type { Knowledge } from '#engine/knowledge.ts';
import type { QuestionId } from '#engine/model/ids.ts';
import { isAsk, visits } from '#engine/tree.ts';
import { cautionsComeInTime } from './cautions.ts';
import { shownByTheRightFlaws } from './shown-by.ts';
import { told } from './told.ts';

export type Check = (known: Knowledge) => string[];

const CLEAR = ['same', 'same-in-gloss', 'tinted-same', 'water-based', 'mist-of-same'];
/** Grease and silicone come off with spirits only: the last wipe of these is a wash, not a dusting. */
const WASHES = ['clean-seal-and-recoat', 'wash-off-clean-and-seal', 'dull-and-recoat'];

/** Common practice, no source: 300 grit or finer between clear coats. A stripped piece begins afresh. */
export const sandedFineBetweenCoats: Check = (known) =>
  known.remedies.flatMap((remedy) => {
    let last: number | undefined;
    let stripped = false;
    return remedy.steps.flatMap((step) => {
      if (step.kind === 'strip') stripped = true;
      if (step.kind === 'sand') last = step.grit;
      if (step.kind !== 'coat') return [];
      const [grit, bare] = [last, stripped];
      last = undefined;
      stripped = false;
      const coarse = CLEAR.includes(step.product) && grit && grit < 320 && !bare;
      return coarse ? [`${remedy.id}: P${grit} before ${step.product}`] : [];
    });
  });

/** Common practice, no source: sanding dust comes off with a clean rag, dry or barely damp. */
export const dustedWithoutSpirits: Check = (known) => {
  const waterBased = new Set(
    known.defects
      .filter((defect) => defect.families.includes('water-based'))
      .flatMap((defect) =>
        [...visits(defect.tree)].flatMap(({ branch }) =>
          'remedy' in branch ? [branch.remedy as string] : [],
        ),
      ),
  );
  return known.remedies.flatMap((remedy) => {
    if (!waterBased.has(remedy.id) || WASHES.includes(remedy.id)) return [];
    const said = resolve(known, remedy.id, told({ family: 'water-based' })).map((step) => step.say);
    const steps = remedy.steps.filter((step) => said.includes(step.say));
    return steps.flatMap((step, index) => {
      if (step.kind !== 'coat' || !CLEAR.includes(step.product)) return [];
      const sanded = steps.slice(0, index).findLastIndex((one) => one.kind === 'sand');
      if (sanded <= steps.slice(0, index).findLastIndex((one) => one.kind === 'coat')) return [];
      const wipe = steps.slice(sanded, index).findLast((one) => one.kind === 'wipe');
      return wipe?.kind === 'wipe' && !['vacuum', 'dry-cloth', 'damp-cloth'].includes(wipe.with)
        ? [`${remedy.id}: ${wipe.with} before ${step.product}`]
        : [];
    });
  });
};

/** Common practice, no source: what a buyer can not see from where she stands is left as it is. */
export const unseenIsLeft: Check = (known) =>
  known.defects.flatMap((defect) =>
    [...visits(defect.tree)].flatMap(({ branch }) => {
      if (!isAsk(branch) || branch.ask !== 'seen-at-arms-length') return [];
      const left = (end: typeof branch.no): boolean =>
        'leave' in end || ('remedy' in end && known.get('remedy', end.remedy).now.cured.do === 'accept');
      return [
        ...(left(branch.no) ? [] : [`${defect.id}: what is not seen is mended`]),
        ...(left(branch.yes) ? [`${defect.id}: what is seen is left`] : []),
      ];
    }),
  );

/** A coat dries before anything else is done to it. */
export const coatsAreWaitedFor: Check = (known) =>
  known.remedies.flatMap((remedy) =>
    remedy.steps.flatMap((step, index) =>
      step.kind === 'coat' &&
      !['wax', 'oil', 'grain-filler'].includes(step.product) &&
      remedy.steps[index + 1]?.kind !== 'wait' &&
      // Two coats for other kinds of top coat: one of them is laid.
      !(step.when && remedy.steps[index + 1]?.when && remedy.steps[index + 1]?.kind === 'coat')
        ? [`${remedy.id}: ${remedy.steps[index + 1]?.kind ?? 'nothing'} right after the coat`]
        : [],
    ),
  );

const HARD_WORK = ['sand', 'scrape', 'strip'];

/**
 * Whoever took the stage for later than it is, meets a wait before anything cuts, wets or covers the film; only a
 * coat that never hardens is stripped without one.
 */
export const repairsBeginByWaiting: Check = (known) =>
  known.remedies.flatMap((remedy) => {
    const first = remedy.steps.findIndex(
      (step) =>
        HARD_WORK.includes(step.kind) ||
        step.kind === 'coat' ||
        (step.kind === 'wipe' && step.with !== 'dry-cloth'),
    );
    const before = remedy.steps.slice(0, Math.max(first, 0));
    return first >= 0 && !before.some((step) => step.kind === 'wait') && remedy.steps[first]?.kind !== 'strip'
      ? [`${remedy.id}: begins with ${remedy.steps[first]?.kind}`]
      : [];
  });

/**
 * Extender to 15 %, water-based finish thinned to 10 % (a dealer's sheet, instructions for a waterborne clear, undated);
 * varnish to 25 % for a last coat (Flexner, 'The 7 myths of polyurethane', 2008).
 */
export const mixesStayWithinTheTrade: Check = (known) =>
  known.remedies.flatMap((remedy) =>
    remedy.steps.flatMap((step) => {
      if (step.kind !== 'mix' || !step.percent || step.what === 'tint') return [];
      const families = step.when?.['family'];
      const waterBased = [families]
        .flat()
        .some((family) => family === 'water-based' || family === 'water-lacquer');
      const most = step.what === 'extender' ? 15 : waterBased ? 10 : 25;
      return step.percent[1] > most
        ? [`${remedy.id}: ${step.what} to ${step.percent[1]} %, ${most} at most`]
        : [];
    }),
  );

/**
 * Varnish is rubbed and polished two to six weeks on (Van Dyke 2021; Dresdner), lacquer after a week (common practice):
 * a film is cured, or a week old, before polish.
 */
export const polishWaitsForCure: Check = (known) =>
  known.remedies.flatMap((remedy) => {
    const polish = remedy.steps.findIndex((step) => step.kind === 'wipe' && step.with === 'polish');
    const cured = remedy.steps
      .slice(0, Math.max(polish, 0))
      .some((step) => step.kind === 'wait' && (step.until === 'cured' || (step.hours?.[0] ?? 0) >= 168));
    return polish >= 0 && !cured ? [`${remedy.id}: polished before it is cured`] : [];
  });

/** What the kind of top coat alone tells is the sign of every defect that is met on such kinds only. */
export const signsFollowTheFamilies: Check = (known) =>
  known.defects.flatMap((defect) =>
    Object.entries(defect.signs).flatMap(([question, sign]) => {
      const answers = new Set(defect.families.map((family) => answerOf(known, told({ family }), question)));
      const [only] = answers;
      if (answers.has(undefined)) return [];
      const wanted = answers.size === 1 ? only : 'either, or mostly so';
      return wanted === sign || (answers.size > 1 && sign !== 'yes' && sign !== 'no')
        ? []
        : [`${defect.id}: ${question} is ${sign}, the families say ${wanted}`];
    }),
  );

/** A tree hands over to a defect only on an answer that this defect shows. */
export const handoversAgreeWithSigns: Check = (known) =>
  known.defects.flatMap((defect) =>
    [...visits(defect.tree)].flatMap(({ branch, answers }) => {
      if (!('defect' in branch)) return [];
      const { signs } = known.get('defect', branch.defect);
      return answers.flatMap(({ question, answer }) => {
        const sign = signs[question as QuestionId];
        return (sign === 'yes' || sign === 'no') && sign !== answer
          ? [`${defect.id} hands over to ${branch.defect} on ${question}=${answer}, whose sign is ${sign}`]
          : [];
      });
    }),
  );

export const CHECKS: Readonly<Record<string, Check>> = {
  sandedFineBetweenCoats,
  dustedWithoutSpirits,
  unseenIsLeft,
  coatsAreWaitedFor,
  repairsBeginByWaiting,
  mixesStayWithinTheTrade,
  polishWaitsForCure,
  signsFollowTheFamilies,
  handoversAgreeWithSigns,
  cautionsComeInTime,
  shownByTheRightFlaws,
};
