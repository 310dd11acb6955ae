/** What one of a list is called, by the field that holds the list; of others it is told by its place. */
const ONE_OF: Readonly<Record<string, string>> = {
  steps: 'step',
  claims: 'claim',
  boards: 'board',
  features: 'feature',
  changes: 'change',
};

const NTH = ['first', 'second', 'third', 'fourth', 'fifth', 'sixth', 'seventh', 'eighth', 'ninth', 'tenth'];

/** Fields of a conversation: they nest, and their names tell nothing of where one is. */
const BRANCHES = ['tree', 'yes', 'no'];

const numbered = (list: PropertyKey | undefined, index: number): string => {
  const one = ONE_OF[String(list)];
  if (one) return `${one} ${index + 1}`;
  const entry = NTH[index] ? `the ${NTH[index]} entry` : `entry ${index + 1}`;
  return typeof list === 'string' ? `${entry} under "${list}:"` : entry;
};

/**
 * The things of lists that a path goes through, inner ones first; the last number of a path may be one of its values.
 */
const within = (path: readonly PropertyKey[]): string =>
  path
    .flatMap((key, at) => (typeof key === 'number' ? [numbered(path[at - 1], key)] : []))
    .reverse()
    .join(' of ');

/** Where in a file a value stands, as an author would say it: `after "grit:" in step 8`. Lists are counted from 1. */
export const placeOf = (path: readonly PropertyKey[]): string => {
  const last = path.at(-1);
  if (last === undefined) return 'in this file';
  if (typeof last === 'number') {
    const list = path.at(-2);
    // One of a list of words stands behind the name of the list, as they all do.
    if (typeof list === 'string' && !ONE_OF[list]) return placeOf(path.slice(0, -1));
    return `in ${within(path)}`;
  }
  const parent = path.at(-2);
  const under = typeof parent === 'string' && !BRANCHES.includes(parent) ? ` under "${parent}:"` : '';
  const inside = within(path);
  return `after "${String(last)}:"${under}${inside && ` in ${inside}`}`;
};
