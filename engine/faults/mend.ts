/** How an author mends a step: the line that is to be written, and where it goes. */

const line = (step: string): string => `- { ${step}, say: … }`;

export const above = (step: string, that = ''): string => `add a step above it${that}: ${line(step)}`;
export const below = (step: string, that = ''): string => `add a step below it${that}: ${line(step)}`;

/** A mark of a step or an act, which stands on one line between braces or has a line for each field. */
export const within = (mark: string, isOneLine: boolean): string =>
  isOneLine
    ? `write , ${mark} before the } that ends it`
    : `write below it, set in like its other lines: ${mark}`;

/** What an author does: words, a mark, or words that end in a mark. */
export type WayOut = { readonly mend?: string; readonly mark?: string };
export const wayOut = ({ mend = '', mark }: WayOut, isOneLine: () => boolean): string =>
  mark ? `${mend} ${within(mark, isOneLine())}`.trim() : mend;

/** Steps that stand once for many. */
export const sharedStep = (name: string): string => `add the shared step, on a line of its own: - ${name}`;

/** A condition as an author writes it. */
export const written = (value: unknown): string => {
  if (Array.isArray(value)) return `[${value.map(written).join(', ')}]`;
  if (typeof value !== 'object' || value === null) return String(value);
  const fields = Object.entries(value).filter(([, is]) => is !== undefined);
  return `{ ${fields.map(([field, is]) => `${field}: ${written(is)}`).join(', ')} }`;
};

/** An entry of a tree, below one of the answers there. */
export const inTree = (branch: string): string =>
  `write { ${branch} } after the answer under "tree:" that should lead to it, in the file in content/defects of the flaw that it belongs to`;
