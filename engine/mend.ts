/** How an author mends a step: the line that is to be written, and where it goes. */

const line = (step: string): string => `- { ${step}, say: … }`;

export const above = (step: string, that = ''): string => `add a step above it${that}: ${line(step)}`;
export const below = (step: string, that = ''): string => `add a step below it${that}: ${line(step)}`;

/** A mark that one step carries; most steps stand on one line between braces, others have a line for each field. */
export const within = (mark: string): string =>
  `write , ${mark} before the } that ends it, or a line ${mark} where each of its fields has a line`;

/** An entry of a tree, below one of the answers there. */
export const inTree = (branch: string): string =>
  `write { ${branch} } after the answer under "tree:" that should lead to it, in the file in content/defects of the flaw that it belongs to`;
