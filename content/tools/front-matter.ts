import { CORE_SCHEMA, load } from 'js-yaml';

const FENCE = /^---\r?\n([\s\S]*?)^---\s*$/m;

/** What stands between the first two lines of `---`, where the first of them begins the text. */
export const yamlOf = (text: string): string | undefined => {
  const found = FENCE.exec(text);
  return found?.index === 0 ? (found[1] ?? '') : undefined;
};

/** What YAML says; throws where the stricter parser does not take it. */
export const dataOf = (yaml: string): unknown => load(yaml, { schema: CORE_SCHEMA }) ?? null;

/** A table, between the fences that the reader of pages needs. */
export const fenced = (table: string): string => `---\n${table}\n---\n`;
