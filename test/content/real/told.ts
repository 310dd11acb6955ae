import type { Case } from '#engine/index.ts';

/** A case in which she has told `facts`. */
export const told = (facts: Readonly<Record<string, string | number>>): Case =>
  Object.fromEntries(Object.entries(facts).map(([name, value]) => [name, { value, how: 'told' as const }]));
