import type { Issue } from '#engine/faults/issue.ts';
import { knowledgeOf } from '#engine/knowledge/knowledge.ts';
import { SharedActs, SharedSteps } from '#engine/model/shared.ts';
import { nearestId } from '#engine/plain/nearest.ts';
import { bornBy } from '#engine/prove/touch-words.ts';
import { isHandsOff, touchesIn } from '#engine/prove/words-order-no-touch.ts';
import { type ContentRoot, filesIn, textOf } from './files.ts';
import { readTable, type Table } from './table.ts';

const ACTS = 'content/acts.yaml';
const STEPS = 'content/steps.yaml';

/** The names of usual acts and of shared steps that the remedies below `root` use. */
const namesUsed = (root: ContentRoot): ReadonlySet<string> => {
  const folder = 'content/remedies';
  const texts = filesIn(root, folder, '.mdx').map((name) => textOf(root, `${folder}/${name}`) ?? '');
  return new Set(
    texts.flatMap((text) =>
      [...text.matchAll(/^ {2}(?:- |as: )([a-z][a-z0-9-]*)$/gm)].map(([, name]) => name ?? ''),
    ),
  );
};

/** A film that sets bears no hand, and what is said here is said by every remedy that says nothing else. */
const touches = ({ value, lineOf }: Table<SharedActs> & { readonly ok: true }): readonly Issue[] =>
  Object.entries(value).flatMap(([kind, acts]) =>
    (['wet', 'setting', 'dry-to-touch'] as const).flatMap((stage) => {
      const act = acts[stage];
      if (!act || !isHandsOff(act.do)) return [];
      return [...touchesIn(act, bornBy(stage, kind !== 'film'))].map(
        ({ field, order }): Issue => ({
          file: ACTS,
          line: lineOf([kind, stage, field]),
          code: 'touch-ordered',
          order,
          where: `where "do: ${act.do}" leaves it alone (${stage})`,
          becomes: field === 'not' ? 'not' : 'remedy',
        }),
      );
    }),
  );

/** Faults of what stands once for many remedies: shape, and names that nothing uses. */
export const sharedFaults = (root: ContentRoot): readonly Issue[] => {
  const none = knowledgeOf([]);
  const read = <T>(file: string, schema: Parameters<typeof readTable<T>>[3]): Table<T> | undefined =>
    textOf(root, file) !== undefined ? readTable(none, root, file, schema) : undefined;
  const acts = read<SharedActs>(ACTS, Object.assign(SharedActs, { shape: {} }));
  const steps = read(STEPS, Object.assign(SharedSteps, { shape: {} }));
  const broken = [acts, steps].flatMap((table) => (table && !table.ok ? table.issues : []));
  if (broken.length) return broken;
  const touched = acts?.ok ? touches(acts) : [];
  const used = namesUsed(root);
  const unused = (
    table: Table<object> | undefined,
    file: string,
    what: 'kind of repair' | 'shared step',
  ): Issue[] => {
    if (!table?.ok) return [];
    const names = Object.keys(table.value);
    const lacking = [...used].filter((name) => !names.includes(name));
    return names
      .filter((name) => !used.has(name) && name !== 'film')
      .map((name) => ({
        file,
        line: table.lineOf([name], true),
        code: 'unused-name',
        what,
        name,
        nearest: nearestId(name, lacking),
      }));
  };
  return [...touched, ...unused(acts, ACTS, 'kind of repair'), ...unused(steps, STEPS, 'shared step')];
};
