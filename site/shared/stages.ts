import type { Running } from '#engine/clock.ts';
import type { Stage, Standing } from '#engine/index.ts';

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
  cured: { name: 'Cured', tell: 'Past the can’s full cure time, or you bought it finished.' },
  overdue: {
    name: 'Sticky long past its time',
    tell: 'It still grips after three times the drying time on the can.',
  },
} as const satisfies Record<Standing, { name: string; tell: string }>;

/** How a stage is called where it is asked for: a film of years is cured, and whoever asks of an old table must see that. */
export const stageAsked = (stage: Standing): string =>
  stage === 'cured' ? 'Cured, or years old' : STAGE_WORDS[stage].name;

/**
 * What must be sure before a check that harms a wetter film, where nobody has told how dry it is: hands are off until it
 * is told without the piece.
 */
export const FIRST_SURE = {
  setting: { hold: 'Hands off while it flows', ask: 'Has a drip of it on paper stopped flowing?' },
  'dry-to-touch': { hold: 'Hands off while it may be wet', ask: 'Is a drip of it on paper dry?' },
  recoatable: {
    hold: 'Hands off while it may be soft',
    ask: 'Is a drip of it on paper hard, and the can’s recoat time past?',
  },
  cured: { hold: 'Hands off while it may be soft', ask: 'Is the can’s full cure time past?' },
} as const satisfies Record<Exclude<Stage, 'wet'>, { hold: string; ask: string }>;

/** How dry a coat is by the clock, as it stands in a sentence. */
export const standingNow = ({
  stage,
  sureness,
  closed,
}: Pick<Running, 'stage' | 'sureness' | 'closed'>): string =>
  closed && stage === 'recoatable'
    ? 'dry, and takes no coat for now'
    : `${sureness === 'surely' ? '' : 'probably '}${STAGE_WORDS[stage].name.toLowerCase()}`;

/** The stage at which it is worth looking again. */
export const LOOK_AGAIN: Partial<Record<Standing, Stage>> = {
  wet: 'dry-to-touch',
  setting: 'dry-to-touch',
  'dry-to-touch': 'recoatable',
};

/** By when a check must have decided, where what is to be done does not pass. */
export const DECIDE_BY: Record<Standing, string> = {
  wet: 'There is time: hands stay off until it is dry to the touch.',
  setting: 'There is time: hands stay off until it is dry to the touch.',
  'dry-to-touch': 'Make it before you do anything to the film.',
  recoatable: 'Make it before the next coat.',
  cured: 'Make it before you begin on the piece.',
  overdue: 'Make it before you do anything to the film.',
};
/** Before the check of a piece that came finished, of which nobody knows the can or the day. */
export const NO_CAN = 'No can, or bought finished?';
/** The same where what is to be done passes with the open film. */
export const WHILE_IT_FLOWS = 'Only while the film still flows. Once it drags, it is too late: hands off.';
