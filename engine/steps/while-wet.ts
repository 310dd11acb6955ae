import type { Hazard } from '../model/hazard.ts';
import type { Act, Doing, Remedy } from '../model/remedy.ts';

const HANDS_OFF: readonly Doing[] = ['leave', 'wait', 'accept', 'stop', 'repair'];
const OLD_LAYERS: readonly Hazard[] = ['old-film', 'old-film-in-reach'];

/**
 * What a repair lets hands do on a film that is wet. Its minutes are few and it frees nothing of an older layer, so no
 * question stands before it; undefined where hands stay off, or where its words would reach such a layer.
 */
export const whileWet = ({ now: { wet } }: Pick<Remedy, 'now'>): Act | undefined =>
  HANDS_OFF.includes(wet.do) || wet.does?.some((hazard) => OLD_LAYERS.includes(hazard)) ? undefined : wet;
