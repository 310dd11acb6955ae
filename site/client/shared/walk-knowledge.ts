import { partOf } from '#engine/index.ts';
import { walkDataFile } from '../../shared/data-files.ts';
import type { WalkData, WalkKnowledge } from '../../shared/walk-data.ts';
import { fetchJson, unlessOffline } from './fetch-json.ts';

export const walkDataOf = (defect: string): Promise<WalkData> =>
  fetchJson(walkDataFile(encodeURIComponent(defect)));

/** The part of the knowledge that a defect's walk needs; nothing where it does not come, or there is no such defect. */
export const walkKnowledge = async (defect: string): Promise<WalkKnowledge | undefined> => {
  const data = await unlessOffline(walkDataOf(defect));
  return data && partOf(data);
};
