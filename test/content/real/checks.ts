/**
 * Checks of the content against the trade, beyond what the proofs hold. Each names every place that breaks it,
 * so that the mutation run can ask them too.
 */
import { resolve } from '#engine/index.ts';
import type { Knowledge } from '#engine/knowledge/knowledge.ts';
import { isAsk, visits } from '#engine/knowledge/tree.ts';
import { cautionsComeInTime } from './cautions.ts';
import { shownByTheRightFlaws } from './shown-by.ts';
import { told } from './told.ts';

export type Check = (known: Knowledge) => string[];

const CLEAR = ['same', 'same-in-gloss', 'tinted-same', 'water-based', 'mist-of-same'];
/** Grease and silicone come off with spirits only: the last wipe of these is a wash, not a dusting. */
const WASHES = ['clean-seal-and-recoat', 'wash-off-clean-and-seal', 'dull-and-recoat'];

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

export const CHECKS: Readonly<Record<string, Check>> = {
  dustedWithoutSpirits,
  unseenIsLeft,
  cautionsComeInTime,
  shownByTheRightFlaws,
};
