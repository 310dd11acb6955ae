import { ASKED } from '../knowledge/known-questions.ts';
import { signOf } from '../knowledge/sign.ts';
import type { Defect } from '../model/defect.ts';
import { STAGES, type Stage } from '../model/stage.ts';

export type PlainAnswer = 'yes' | 'no';

/** What the flaw shows of a question for certain. */
export const strictly = (defect: Pick<Defect, 'signs'>, question: string): PlainAnswer | undefined => {
  const sign = signOf(defect, question);
  return sign === 'yes' || sign === 'no' ? sign : undefined;
};
/** And what it usually shows. */
export const mostly = (defect: Pick<Defect, 'signs'>, question: string): PlainAnswer | undefined => {
  const sign = signOf(defect, question);
  return sign === 'yes' || sign === 'mostly-yes'
    ? 'yes'
    : sign === 'no' || sign === 'mostly-no'
      ? 'no'
      : undefined;
};

/**
 * When somebody asks, by our estimate: half of the time while the coat is still too fresh to be worked on, since that is
 * when it looks worst.
 */
const WHEN: Readonly<Record<Stage, number>> = {
  wet: 22,
  setting: 24,
  'dry-to-touch': 16,
  recoatable: 26,
  cured: 12,
};

/** Flaws that come later than the coat, or only from work on a dry one, are not met on a fresh film. */
const metAt = (defect: Pick<Defect, 'signs'>, stage: Stage): boolean => {
  const later = [ASKED.cameInUse, ASKED.fineWhenFirstDry, ASKED.appearedAfterSanding, ASKED.comesOffInFlakes];
  if (later.some((question) => mostly(defect, question) === 'yes'))
    return stage === 'recoatable' || stage === 'cured';
  if (strictly(defect, ASKED.stillTacky) === 'yes') return stage === 'dry-to-touch';
  const atOnce = mostly(defect, ASKED.thereWhileCoating);
  if (stage === 'wet') return atOnce !== 'no';
  // What a nail or a finger must find is not yet there in a film that is open.
  return stage !== 'setting' || mostly(defect, ASKED.filmIsWeak) !== 'yes';
};

/** Each stage at which the flaw is met, with its weight: one at least. */
export const stagesMet = (defect: Pick<Defect, 'signs'>): readonly (readonly [Stage, number])[] =>
  STAGES.filter((stage) => metAt(defect, stage)).map((stage) => [stage, WHEN[stage]] as const);
