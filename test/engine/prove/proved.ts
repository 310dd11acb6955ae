/** Small invented knowledge for one proof at a time, whose lines tell the path that they stand for. */
import type { Issue } from '#engine/faults/issue.ts';
import type { Knowledge } from '#engine/knowledge/knowledge.ts';

type Data = Record<string, unknown>;
const PLURALS = [
  'defects',
  'questions',
  'remedies',
  'rules',
  'products',
  'lessons',
  'sources',
  'terms',
  'doings',
] as const;
type Lists = Partial<Record<(typeof PLURALS)[number], readonly (Data & { id: string })[]>>;

/** A path is known again by its number; `isFlat`: whatever is deeper than a step or an act stands on its line. */
const lines = () => {
  const places: string[] = [''];
  const lineOf =
    (isFlat: boolean) =>
    (path: readonly PropertyKey[]): number => {
      const key = (isFlat ? path.slice(0, 2) : path).join('.');
      const at = places.indexOf(key);
      return at < 0 ? places.push(key) - 1 : at;
    };
  return { places, lineOf };
};

/** What a proof tells of the lists: each issue with the path of its line in place of the line; line 1 is the file. */
export const proved = (
  proof: (known: Knowledge) => Iterable<Issue>,
  lists: Lists,
  isFlat = false,
): (Data & { readonly code: string; readonly at: string })[] => {
  const { places, lineOf } = lines();
  const FILE = 1;
  places.push('(file)');
  const filled = Object.fromEntries(
    PLURALS.map((plural) => [
      plural,
      (lists[plural] ?? []).map((one) => ({
        claims: [],
        file: `${one.id}.mdx`,
        lineOf: lineOf(isFlat),
        ...one,
      })),
    ]),
  ) as Record<string, (Data & { id: string })[]>;
  const listOf = (kind: string) => filled[kind === 'remedy' ? 'remedies' : `${kind}s`] ?? [];
  const known = {
    ...filled,
    has: (kind: string, id: string) => listOf(kind).some((one) => one.id === id),
    get: (kind: string, id: string) => {
      const found = listOf(kind).find((one) => one.id === id);
      if (!found) throw new Error(`no ${kind} ${id}`);
      return found;
    },
  };
  return [...proof(known as unknown as Knowledge)].map(({ line, ...issue }) => ({
    ...issue,
    at: line === FILE ? '(file)' : (places[line] ?? ''),
  }));
};
