import type { Entry, Knowledge, TreeNode } from '#engine/index.ts';

/** What a node's page is called: its question, or its verdict, and the flaw that it is about. */
export const titleOf = (
  known: Knowledge,
  defect: Entry<'defect'>,
  { walked, handover }: TreeNode,
): string => {
  if (handover) return `${known.get('defect', handover).name}? From ${defect.name.toLowerCase()}`;
  if (walked.kind === 'question') return `${known.get('question', walked.question).ask} ${defect.name}`;
  if (walked.kind === 'outcome') return `${walked.action.verdict}. ${defect.name}`;
  return `The cause. ${defect.name}`;
};
