import { type FindIndex, type FindKind, type Hit, pageName } from './document.ts';
import { find, weighed } from './rank.ts';

/** Pages that answer a question; a word explains, and a repair belongs to a flaw. */
const ANSWERS: readonly FindKind[] = ['page', 'rule', 'lesson', 'product'];
/**
 * So likely must the page be, and all flaws together no likelier than that. Of 1,025 texts of flaws that were not learned
 * from, six get a page that does not answer them; of 365 questions on the job and on safety 203 get their page.
 */
const LIKELY = 0.5;
const FLAWS = 0.2;

/** The page that answers a text which asks for something and tells of no flaw; nothing where a flaw may be meant. `asked` names it where the words did. */
export const pageAsked = (index: FindIndex, text: string, asked?: string): Hit | undefined => {
  const known = index.documents.find((one) => pageName(one) === asked);
  if (known) return { kind: known.kind, id: known.id, title: known.title, says: known.says, score: 1 } as Hit;
  const [hit] = find(index, text, { limit: 1 });
  if (!hit || !ANSWERS.includes(hit.kind) || hit.score < LIKELY) return undefined;
  const flaws = weighed(index, text).chances.reduce(
    (sum, chance, row) => (index.documents[row]?.kind === 'defect' ? sum + chance : sum),
    0,
  );
  return flaws <= FLAWS ? hit : undefined;
};
