import { matrixOf } from '#engine/see/matrix.ts';
import { type SeeNode, seeNodes } from '#engine/see/nodes.ts';
import { knowledge } from './knowledge.ts';

/** The signs of all defects as one table. */
export const signMatrix = matrixOf(knowledge);

let nodes: readonly SeeNode[] | undefined;

/** Every written-out stop of the search for the defect; planned once for the whole build. */
export const allSeeNodes = (): readonly SeeNode[] => {
  nodes ??= [...seeNodes(signMatrix)];
  return nodes;
};

/** A chance in the words shown. */
export const chanceWords = (chance: number): string =>
  chance >= 0.9 ? 'almost surely' : chance >= 0.5 ? 'most likely' : chance >= 0.15 ? 'likely' : 'possible';
