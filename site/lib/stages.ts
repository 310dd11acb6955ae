import type { Stage } from '#engine/index.ts';

/** How each stage is named, and how it is told without touching the piece. */
export const STAGE_WORDS = {
  wet: { name: 'Wet', tell: 'Just laid. It shines wet and still flows.' },
  setting: { name: 'Setting', tell: 'It no longer flows, but a drip on the newspaper is still sticky.' },
  'dry-to-touch': {
    name: 'Dry to the touch',
    tell: 'A drip on the newspaper is dry; the film is soft inside.',
  },
  recoatable: {
    name: 'Ready for a coat',
    tell: 'The can’s recoat time has passed. Fine paper makes dry powder.',
  },
  cured: { name: 'Cured', tell: 'Hard right through: weeks old, or past the can’s full cure time.' },
} as const satisfies Record<Stage, { name: string; tell: string }>;

/** The stage at which it is worth looking again. */
export const LOOK_AGAIN: Partial<Record<Stage, Stage>> = {
  wet: 'dry-to-touch',
  setting: 'dry-to-touch',
  'dry-to-touch': 'recoatable',
};
