/** The drying stages of a film, in the order in which every film passes them. */
export const STAGES = ['wet', 'setting', 'dry-to-touch', 'recoatable', 'cured'] as const;

export type Stage = (typeof STAGES)[number];

/** True where `stage` has come at least as far as `from`. */
export const reached = (stage: Stage, from: Stage): boolean => STAGES.indexOf(stage) >= STAGES.indexOf(from);
