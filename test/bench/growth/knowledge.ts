/**
 * As much knowledge again as there is, and again: each copy has flaws, questions, repairs, cautions, lessons, words and
 * sources of its own, linked among themselves. First questions, which are asked of every flaw, are the same for all.
 */

import { dump } from 'js-yaml';
import { ASKED } from '#engine/knowledge/known-questions.ts';
import { ENTRY_KINDS, type EntryKind, FOLDERS } from '#engine/model/kinds.ts';
import type { RawEntry } from '#engine/model/knowledge.ts';
import { type ContentRoot, filesIn, textOf } from '../../../content/tools/files.ts';
import { dataOf, yamlOf } from '../../../content/tools/front-matter.ts';
import { HOUSE_STYLE } from '../../../content/tools/prose/house-style.ts';
import { chanceFrom } from '../chance.ts';
import { wordsOfCopy } from './words.ts';

type Data = Readonly<Record<string, unknown>>;
type Rename = (kind: EntryKind, id: string) => string;

/** Kinds of top coat and doings are what the engine knows by name. */
const SHARED: readonly EntryKind[] = ['product', 'doing'];
/** What a search reads of an entry. The words of steps and checks stay: the proofs know them. */
const PROSE: ReadonlySet<string> = new Set(['summary', 'also', 'looks', 'shows']);
const NAMES: ReadonlySet<string> = new Set(['name', 'title', 'term']);

const isData = (value: unknown): value is Data =>
  typeof value === 'object' && value !== null && !Array.isArray(value) && !(value instanceof Date);
const asksOn = (branch: unknown): branch is Data => isData(branch) && 'ask' in branch;

/** What a search reads in the words of the copy, and names that no other has. */
const inWords = (data: Data, copy: number): Data =>
  Object.fromEntries(
    Object.entries(data).map(([field, value]) => {
      const say = (text: unknown): unknown =>
        typeof text !== 'string'
          ? text
          : field === 'ask'
            ? text.replace(/\?$/, ` (${copy})?`)
            : `${wordsOfCopy(text, copy)}${NAMES.has(field) ? ` ${copy}` : ''}`;
      if (field !== 'ask' && !NAMES.has(field) && !PROSE.has(field)) return [field, value];
      return [field, Array.isArray(value) ? value.map(say) : say(value)];
    }),
  );

/** Facts that are answers to questions, under their new names. */
const condition = (value: unknown, rename: Rename): unknown => {
  if (Array.isArray(value)) return value.map((one: unknown) => condition(one, rename));
  if (!isData(value)) return value;
  return Object.fromEntries(
    Object.entries(value).map(([fact, wanted]) => [
      rename('question', fact),
      fact === 'any' || fact === 'not' ? condition(wanted, rename) : wanted,
    ]),
  );
};

const isHandover = (end: unknown): boolean => isData(end) && 'defect' in end;
const endsOf = (branch: unknown): unknown[] =>
  asksOn(branch) ? [...endsOf(branch['yes']), ...endsOf(branch['no'])] : [branch];

/** The same questions with the ends in another order. One that leads on to another flaw rests on its signs, and stays. */
const reshuffled = (tree: unknown, rename: Rename, shuffle: (ends: unknown[]) => unknown[]): unknown => {
  const ends = shuffle(endsOf(tree).filter((end) => !isHandover(end)));
  const renamed = (end: unknown): unknown => {
    if (!isData(end)) return end;
    const { remedy, defect } = end;
    return {
      ...end,
      ...(typeof remedy === 'string' && { remedy: rename('remedy', remedy) }),
      ...(typeof defect === 'string' && { defect: rename('defect', defect) }),
    };
  };
  const lay = (branch: unknown): unknown =>
    asksOn(branch)
      ? {
          ask: rename('question', String(branch['ask'])),
          yes: lay(branch['yes']),
          no: lay(branch['no']),
        }
      : renamed(isHandover(branch) ? branch : ends.shift());
  return lay(tree);
};

/** Fields that name entries of a kind. */
const NAMING: Readonly<Record<string, EntryKind>> = {
  source: 'source',
  remedy: 'remedy',
  flaw: 'defect',
  defect: 'defect',
  'look-alikes': 'defect',
  defects: 'defect',
  remedies: 'remedy',
  terms: 'term',
  rules: 'rule',
};

const relinked = (
  value: unknown,
  rename: Rename,
  shuffle: (ends: unknown[]) => unknown[],
  key = '',
): unknown => {
  if (key === 'tree') return reshuffled(value, rename, shuffle);
  if (key === 'when' || key === 'except') return condition(value, rename);
  const kind = NAMING[key];
  if (typeof value === 'string') return kind ? rename(kind, value) : value;
  if (Array.isArray(value)) return value.map((one: unknown) => relinked(one, rename, shuffle, key));
  if (!isData(value)) return value;
  return Object.fromEntries(
    Object.entries(value).map(([field, one]) => [
      key === 'signs' ? rename('question', field) : field,
      relinked(one, rename, shuffle, field),
    ]),
  );
};

/** The name of an entry in a copy, 1 the first. */
export const renamed = (id: string, copy: number): string => (copy === 1 ? id : `${id}-c${copy}`);

/** All copies of the entries but the first, the names of those that are shared left as they are. */
const copiesOf = (entries: readonly RawEntry[], times: number, say: typeof inWords): RawEntry[] => {
  // A question that the engine asks by its name is one, however much there is to know.
  const isShared = ({ kind, id, data }: RawEntry): boolean =>
    SHARED.includes(kind) ||
    (kind === 'question' &&
      ((isData(data) && data['every-flaw'] !== undefined) || Object.values<string>(ASKED).includes(id)));
  const own = entries.filter((entry) => !isShared(entry));
  const names = new Set(own.map(({ kind, id }) => `${kind}/${id}`));
  const all: RawEntry[] = [];
  for (let copy = 2; copy <= times; copy++) {
    const { shuffled } = chanceFrom(20_261_131 + copy);
    const rename: Rename = (kind, id) => (names.has(`${kind}/${id}`) ? renamed(id, copy) : id);
    for (const { kind, id, file, data } of own) {
      const named = renamed(id, copy);
      all.push({
        kind,
        id: named,
        file: file.replace(`/${id}.mdx`, `/${named}.mdx`),
        data: relinked(isData(data) ? say(data, copy) : data, rename, shuffled),
        lineOf: () => 1,
      });
    }
  }
  return all;
};

/** The entries `times` over, the first as they are. */
export const grown = (entries: readonly RawEntry[], times: number): RawEntry[] => [
  ...entries,
  ...copiesOf(entries, times, inWords),
];

/** A word that no text has, for a copy: a search hardly reads bare figures. */
const markOf = (copy: number): string =>
  `z${[...copy.toString(20)].map((digit) => `${'bcdfghjklmnpqrstvwxz'[Number.parseInt(digit, 20)]}a`).join('')}`;

/** Names of its own, all else in the words of the first: what an author writes is spelled right. */
const inItsNames = (data: Data, copy: number): Data =>
  Object.fromEntries(
    Object.entries(data).map(([field, value]) => {
      const say = (text: unknown): unknown =>
        typeof text !== 'string'
          ? text
          : field === 'ask'
            ? text.replace(/\?$/, ` (${markOf(copy)})?`)
            : `${text} ${markOf(copy)}`;
      if (field !== 'ask' && field !== 'also' && !NAMES.has(field)) return [field, value];
      return [field, Array.isArray(value) ? value.map(say) : say(value)];
    }),
  );

/** The content below a folder with all copies of its entries as files beside them, in memory. */
export const grownRoot = (folder: string, times: number): Exclude<ContentRoot, string> => {
  const files = ENTRY_KINDS.flatMap((kind) =>
    filesIn(folder, `content/${FOLDERS[kind]}`, '.mdx').map((name) => ({
      kind,
      id: name.slice(0, -'.mdx'.length),
      file: `content/${FOLDERS[kind]}/${name}`,
    })),
  );
  const bodies = new Map<string, string>();
  const entries = files.map(({ kind, id, file }): RawEntry => {
    const text = textOf(folder, file) ?? '';
    const yaml = yamlOf(text) ?? '';
    bodies.set(`${kind}/${id}`, text.slice(text.indexOf('\n---', 3) + '\n---'.length));
    return { kind, id, file, data: dataOf(yaml), lineOf: () => 1 };
  });
  const texts = new Map<string, string>();
  for (const { kind, id, file, data } of copiesOf(entries, times, inItsNames)) {
    const body = bodies.get(`${kind}/${id.replace(/-c\d+$/, '')}`) ?? '';
    texts.set(file, `---\n${dump(data, { lineWidth: -1, noRefs: true })}---${body}`);
  }
  const marks = Array.from({ length: Math.max(0, times - 1) }, (_, at) => markOf(at + 2));
  const style = textOf(folder, HOUSE_STYLE) ?? '';
  texts.set(
    HOUSE_STYLE,
    style.replace(/^spelled:\n/m, (line) => line + marks.map((mark) => `  - ${mark}\n`).join('')),
  );
  return { folder, texts };
};
