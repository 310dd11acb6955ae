import type { Stage } from '#engine/index.ts';

/** How each stage is named, and how it is told without touching the piece. */
export const STAGE_WORDS = {
  wet: { name: 'Wet', tell: 'Just laid. It shines and flows.' },
  setting: { name: 'Setting', tell: 'Flows no more. A drip on paper is sticky.' },
  'dry-to-touch': {
    name: 'Dry to the touch',
    tell: 'A drip on paper is dry; soft inside.',
  },
  recoatable: {
    name: 'Ready for a coat',
    tell: 'Recoat time is past; it sands to powder.',
  },
  cured: { name: 'Cured', tell: 'Past the can’s full cure time.' },
} as const satisfies Record<Stage, { name: string; tell: string }>;

/** The stage at which it is worth looking again. */
export const LOOK_AGAIN: Partial<Record<Stage, Stage>> = {
  wet: 'dry-to-touch',
  setting: 'dry-to-touch',
  'dry-to-touch': 'recoatable',
};
