/**
 * A thousand slips of an author's hand in the text of the content, seeded, of every kind that is met, and what `npm run
 * check` (here its functions) tells of them: 98 of 100 at least. What passes most: a sign turned round, and steps swapped
 * that hardly need to stand so.
 */
import { describe, expect, it } from 'vitest';
import type { Issue } from '#engine/faults/issue.ts';
import { FOLDERS } from '#engine/model/index.ts';
import { everyFault } from '../../content/tools/every-fault.ts';
import { filesIn, textOf } from '../../content/tools/files.ts';
import { linkedKnowledge, provenKnowledge } from '../../content/tools/knowledge.ts';
import { whatChanges } from './equivalent.ts';
import { type TextMutant, textMutants } from './text-mutants.ts';

const SEED = Number(process.env['MUTANT_SEED'] ?? 20_261_129);
const WANTED = Number(process.env['MUTANTS'] ?? 1000);
const folder = process.cwd();

const TOLD = 0.98;
/**
 * Each edit of the content draws other slips, and of so few the share strays: by two standard errors of a share (the
 * binomial law) where luck is bad. Below that the check itself tells less.
 */
const STRAYS = 2 * Math.sqrt((TOLD * (1 - TOLD)) / WANTED);

const files = Object.values(FOLDERS).flatMap((one) =>
  filesIn(folder, `content/${one}`, '.mdx').map((name) => `content/${one}/${name}`),
);
const texts = new Map(files.map((file) => [file, textOf(folder, file) ?? '']));

const idOf = (file: string): string => file.slice(file.lastIndexOf('/') + 1).replace(/\..*$/, '');
/** Whether an issue is about what a mutant changed: in one of its files, or about an id that is gone with it. */
const isAbout = (issue: Issue, { texts: changed }: TextMutant): boolean =>
  changed.has(issue.file) ||
  [...changed].some(
    ([file, text]) => text === undefined && JSON.stringify(issue).includes(`"${idOf(file)}"`),
  );

/** Mutants in lots whose files do not name one another, so that what is told of one is not told of another. */
const lotsOf = (mutants: readonly TextMutant[], most: number): TextMutant[][] => {
  const lots: TextMutant[][] = [];
  const related = (one: TextMutant, other: TextMutant): boolean => {
    const [a, b] = [texts.get(one.file) ?? '', texts.get(other.file) ?? ''];
    return one.file === other.file || a.includes(idOf(other.file)) || b.includes(idOf(one.file));
  };
  for (const mutant of mutants) {
    const lot = lots.find((all) => all.length < most && !all.some((one) => related(one, mutant)));
    if (lot) lot.push(mutant);
    else lots.push([mutant]);
  }
  return lots;
};

const rootOf = (mutants: readonly TextMutant[]) => ({
  folder,
  texts: new Map(mutants.flatMap((one) => [...one.texts])),
});

type Read = (root: ReturnType<typeof rootOf>) => readonly Issue[];

/**
 * Those of a lot that `read` does not tell. It is read again without what was told, for one slip may hide another; a
 * fault that names no file of the lot, as that of a source which nothing rests on any more, is looked for in its halves.
 */
const leftOf = (lot: readonly TextMutant[], read: Read): readonly TextMutant[] => {
  if (lot.length === 0) return [];
  const issues = read(rootOf(lot));
  if (issues.length === 0) return lot;
  if (lot.length === 1) return [];
  const still = lot.filter((mutant) => !issues.some((issue) => isAbout(issue, mutant)));
  if (still.length < lot.length) return leftOf(still, read);
  const middle = lot.length >> 1;
  return [lot.slice(0, middle), lot.slice(middle)].flatMap((half) => leftOf(half, read));
};

const untold = (mutants: readonly TextMutant[], most: number, read: Read): TextMutant[] =>
  lotsOf(mutants, most).flatMap((lot) => leftOf(lot, read));

describe('slips in the text of the content', () => {
  it('are told by the check', { timeout: 3_600_000 }, () => {
    expect(everyFault(folder).issues).toEqual([]);
    const mutants = textMutants(texts, WANTED, SEED);
    const unlinked = untold(mutants, 40, (root) => linkedKnowledge(root).issues);
    const unproven = untold(unlinked, 24, (root) => provenKnowledge(root).issues);
    // Only flaws, coatings and words have names that must be found, and only flaws are told apart by signs.
    const alive = unproven.filter(
      (mutant) =>
        !/^content\/(defects|questions|products|terms)\//.test(mutant.file) ||
        everyFault(rootOf([mutant])).issues.length === 0,
    );
    const same = new Set(alive.filter((one) => whatChanges(rootOf([one]), folder) === undefined));
    const missed = alive.filter((one) => !same.has(one));
    const share = 1 - missed.length / (mutants.length - same.size);
    const kinds = [...Map.groupBy(mutants, ({ slip }) => slip)].map(
      ([slip, all]) =>
        `  ${slip}: ${all.length - alive.filter((one) => one.slip === slip).length} of ${all.length}`,
    );
    const listed = (list: readonly TextMutant[]) =>
      list
        .map(
          ({ slip, file, line, before, after }) =>
            `\n  ${slip}: ${file}:${line}\n    ${before}\n    ${after}`,
        )
        .join('');
    const report =
      `${mutants.length} slips of ${kinds.length} kinds, ${same.size} of them change nothing; ` +
      `the check tells ${(100 * share).toFixed(1)} % of the others\n${kinds.join('\n')}` +
      `\nchange nothing:${listed([...same])}\nnot told:${listed(missed)}`;
    console.log(report);
    expect(mutants.length).toBeGreaterThanOrEqual(WANTED);
    expect(share).toBeGreaterThanOrEqual(TOLD - STRAYS);
  });
});
