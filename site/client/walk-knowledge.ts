import { type AnyEntry, type Knowledge, knowledgeOf } from '#engine/index.ts';
import type { WalkData } from '../lib/walk-data.ts';
import { walkDataUrl } from '../lib/urls.ts';

/** The part of the knowledge that a defect's walk needs, fetched; nothing where there is no such defect. */
export const walkKnowledge = async (defect: string): Promise<Knowledge | undefined> => {
  const response = await fetch(walkDataUrl(encodeURIComponent(defect)));
  if (!response.ok) return undefined;
  const data = (await response.json()) as WalkData;
  const entries = [
    ...data.defects.map((one) => ({ ...one, kindOf: 'defect' })),
    ...data.questions.map((one) => ({ ...one, kindOf: 'question' })),
    ...data.remedies.map((one) => ({ ...one, kindOf: 'remedy' })),
    ...data.doings.map((one) => ({ ...one, kindOf: 'doing' })),
  ];
  // Cut down at build time to what `walk` reads; the words stay on the pages.
  return knowledgeOf(entries as unknown as AnyEntry[]);
};
