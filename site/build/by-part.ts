import type { ResolvedStep } from '#engine/index.ts';
import type { Step } from '#engine/model/step.ts';

/** A step by itself, or together the ways in which one is done off the flat face. */
export type StepRow =
  | { readonly step: ResolvedStep }
  | { readonly places: string; readonly ways: readonly ResolvedStep[] };

const OR = new Intl.ListFormat('en-US', { type: 'disjunction' });

/** The parts of a piece that a step is for, where nothing else decides it. */
const partsOf = ({ when }: Pick<Step, 'when'>): readonly string[] => {
  const [[fact, values] = [], ...others] = Object.entries(when ?? {});
  return fact === 'part' && !others.length && Array.isArray(values) ? values.map(String) : [];
};

/** "On an edge or inside corner". */
const placesOf = (parts: readonly string[]): string => {
  const names = [...new Set(parts)].map((part) => part.replaceAll('-', ' '));
  return `On ${/^[aeiou]/.test(names[0] ?? '') ? 'an' : 'a'} ${OR.format(names)}`;
};

/** The steps in order, those that stand in for one another off the flat face put together while the part is not told. */
export const stepRows = (steps: readonly ResolvedStep[], all: readonly Step[]): readonly StepRow[] => {
  const rows: { step?: ResolvedStep; parts: string[]; ways: ResolvedStep[] }[] = [];
  for (const step of steps) {
    const parts = step.only ? partsOf(all[step.at] ?? {}) : [];
    const last = rows.at(-1);
    if (!parts.length) rows.push({ step, parts: [], ways: [] });
    else if (last?.parts.length) {
      last.parts.push(...parts);
      last.ways.push(step);
    } else rows.push({ parts: [...parts], ways: [step] });
  }
  return rows.map(({ step, parts, ways }) => (step ? { step } : { places: placesOf(parts), ways }));
};
