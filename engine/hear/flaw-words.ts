import type { FindIndex } from '../find/document.ts';
import { weighed } from '../find/rank.ts';
import type { Mind } from './mind.ts';

/** The chance of each flaw of the table by the words of a text alone, as the search weighs it. */
export const flawWords = (index: FindIndex, mind: Mind, text: string): Float64Array => {
  const { chances } = weighed(index, text);
  const byId = new Map(
    index.documents.flatMap(({ id, kind }, row) =>
      kind === 'defect' ? [[id, chances[row] ?? 0] as const] : [],
    ),
  );
  const flaws = Float64Array.from(mind.matrix.defects, (id) => byId.get(id) ?? 0);
  const total = flaws.reduce((sum, chance) => sum + chance, 0) || 1;
  return flaws.map((chance) => chance / total);
};
