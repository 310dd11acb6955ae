/** The drying stages of a film, in the order in which every film passes them. */
export const STAGES = ['wet', 'setting', 'dry-to-touch', 'recoatable', 'cured'] as const;

export type Stage = (typeof STAGES)[number];

/** True where `stage` has come at least as far as `from`. */
export const reached = (stage: Stage, from: Stage): boolean => STAGES.indexOf(stage) >= STAGES.indexOf(from);

/** What can be told of how dry a film is: its stage, or that it is still sticky after three times its drying time. */
export const STANDINGS = [...STAGES, 'overdue'] as const;

export type Standing = (typeof STANDINGS)[number];
