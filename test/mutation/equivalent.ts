/**
 * Slips that change nothing: what is built of the content is the same, or the same for every kind of top coat but for the
 * order of waits that follow one another, which end at the same time whichever stands first. Reckoned, never listed.
 */

import { emptyCase, withFact } from '#engine/case/case.ts';
import type { Knowledge } from '#engine/knowledge/knowledge.ts';
import { link } from '#engine/link.ts';
import { FAMILIES } from '#engine/model/family.ts';
import type { Entry } from '#engine/model/knowledge.ts';
import type { Step } from '#engine/model/step.ts';
import { takingOf } from '#engine/steps/resolve.ts';
import type { ContentRoot } from '../../content/tools/files.ts';
import { readRetired } from '../../content/tools/knowledge.ts';
import { readContent } from '../../content/tools/read.ts';

type Remedy = Entry<'remedy'>;

/** Text of a value whose fields stand in whatever order. */
const plain = (value: unknown): string =>
  JSON.stringify(value, (_, inner: unknown) =>
    typeof inner === 'object' && inner !== null && !Array.isArray(inner)
      ? Object.fromEntries(Object.entries(inner).sort(([a], [b]) => (a < b ? -1 : 1)))
      : inner,
  );

/** All that is built, as text by kind and id. Places in files are functions, and no part of it. */
const builtOf = (known: Knowledge): Map<string, string> =>
  new Map(
    [
      known.defects,
      known.questions,
      known.remedies,
      known.rules,
      known.products,
      known.lessons,
      known.sources,
      known.terms,
    ]
      .flat()
      .map((entry) => [`${entry.kindOf}/${entry.id}`, plain(entry)]),
  );

/** Steps with each run of waits in one order. Waits that count from the coat, or show when they are done, stay in place. */
const waitsInOneOrder = (steps: readonly Step[]): string[] => {
  const free = (step: Step | undefined) => step?.kind === 'wait' && !step.from && !step['worked-if'];
  const out: string[] = [];
  for (let at = 0; at < steps.length; ) {
    let end = at;
    while (free(steps[end])) end += 1;
    out.push(...steps.slice(at, end).map(plain).sort());
    if (end < steps.length) out.push(plain(steps[end]));
    at = end + 1;
  }
  return out;
};

/** Whether whoever has this kind of top coat is told the same steps, whatever else is known. */
const sameForEach = (known: Knowledge, one: Remedy, other: Remedy): boolean =>
  plain({ ...one, steps: [] }) === plain({ ...other, steps: [] }) &&
  FAMILIES.every((family) => {
    const on = withFact(emptyCase(), 'family', family);
    const told = ({ steps }: Remedy) =>
      waitsInOneOrder(steps.filter((step) => takingOf(known, on, step) !== 'no')).join('\n');
    return told(one) === told(other);
  });

/** What the slips of `root` change of what is built: undefined where nothing, else what. */
export const whatChanges = (root: ContentRoot, folder: string): string | undefined => {
  const read = (from: ContentRoot) => link(readContent(from), readRetired(from));
  const [was, is] = [read(folder), read(root)];
  if (!was.ok || !is.ok) return 'it does not link';
  const [before, after] = [builtOf(was.value), builtOf(is.value)];
  for (const key of new Set([...before.keys(), ...after.keys()])) {
    if (before.get(key) === after.get(key)) continue;
    const [kind, id = ''] = key.split('/');
    const both = kind === 'remedy' && before.has(key) && after.has(key);
    if (!both || !sameForEach(was.value, was.value.get('remedy', id), is.value.get('remedy', id))) return key;
  }
  return undefined;
};
