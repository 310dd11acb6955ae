import type { StepKind } from '#engine/model/step.ts';

/** What a step is, in a word or two, where it is only named. */
export const STEP_NAMES: Readonly<Record<StepKind, string>> = {
  wait: 'wait',
  look: 'look',
  wipe: 'wipe',
  scrape: 'scrape',
  sand: 'sand',
  mix: 'mix',
  coat: 'coat',
  strip: 'strip',
  'test-patch': 'test patch',
  'ask-professional': 'ask a professional',
};
