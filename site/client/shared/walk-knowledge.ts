import { type Knowledge, knowledgeOf } from '#engine/index.ts';
import { walkDataUrl } from '../../shared/urls.ts';
import { entriesOf, type WalkData } from '../../shared/walk-data.ts';

/** The part of the knowledge that a defect's walk needs, fetched; nothing where there is no such defect. */
export const walkKnowledge = async (defect: string): Promise<Knowledge | undefined> => {
  const response = await fetch(walkDataUrl(encodeURIComponent(defect)));
  return response.ok ? knowledgeOf(entriesOf((await response.json()) as WalkData)) : undefined;
};
