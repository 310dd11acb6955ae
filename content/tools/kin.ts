import type { Issue } from '#engine/faults/issue.ts';
import { stem } from '#engine/find.ts';
import { type Knowledge, knowledgeOf } from '#engine/knowledge/knowledge.ts';
import { Kin } from '#engine/model/kin.ts';
import { type ContentRoot, textOf } from './files.ts';
import { searchWordsTable } from './hear.ts';
import { orThrow, readTable, type Table } from './table.ts';

const FILE = 'content/hear/kin.yaml';

type Slip = {
  readonly at: readonly [group: string, place: number];
  readonly what: string;
  readonly wants: string;
};

/** Words that add nothing to their group: those that stand there already, and those that say nothing. */
function* slipsOf(group: string, words: readonly string[], silent: ReadonlySet<string>): Generator<Slip> {
  const firsts = new Map<string, string>();
  for (const [place, word] of words.entries()) {
    const at = [group, place] as const;
    const parts = word.split(' ');
    const mute = parts.find((part) => silent.has(part));
    const same = parts.map(stem).join(' ');
    const first = firsts.get(same);
    if (mute) yield { at, what: `"${word}", of which "${mute}" says nothing,`, wants: 'leave that word out' };
    else if (first !== undefined)
      yield {
        at,
        what:
          first === word
            ? `"${word}", which stands there already,`
            : `"${word}", which is the same word to the search as "${first}",`,
        wants: 'leave it out',
      };
    else firsts.set(same, word);
  }
}

/** Words that say the same; no file is none. */
export const kinTable = (known: Knowledge, root: ContentRoot): Table<Kin> => {
  if (textOf(root, FILE) === undefined) return { ok: true, value: { kin: {} }, lineOf: () => 1 };
  const table = readTable(knowledgeOf([]), root, FILE, Kin);
  if (!table.ok) return table;
  const words = searchWordsTable(known, root);
  const silent = new Set(words.ok ? words.value.silent : []);
  const issues = Object.entries(table.value.kin).flatMap(([group, said]) =>
    [...slipsOf(group, said, silent)].map(({ at, what, wants }): Issue => {
      const path = ['kin', ...at];
      return { file: FILE, line: table.lineOf(path), code: 'bad-value', at: path, what, wants };
    }),
  );
  return issues.length ? { ok: false, issues } : table;
};

/** Words that say the same, for the search; throws every fault as a line. */
export const readKin = (root: ContentRoot): Kin => orThrow(kinTable(knowledgeOf([]), root));
