/** What notices a slip: the link, the proofs, the hard words, the checks of the trade, or a case of real trouble. */
import type { Issue } from '#engine/faults/issue.ts';
import type { Knowledge } from '#engine/knowledge/knowledge.ts';
import { link, type Retired } from '#engine/link.ts';
import type { RawEntry } from '#engine/model/knowledge.ts';
import { prove } from '#engine/prove/prove.ts';
import { tooHard } from '../../content/tools/hard-words.ts';
import { advise, caseOf, forbiddenIn, isAcceptable, namesTheCause } from '../cases/advise.ts';
import type { TroubleCase } from '../cases/case-file.ts';
import { signsAgainstCases } from '../cases/signs.ts';
import { CHECKS } from '../content/real/checks.ts';
import type { Mutant } from './mutants.ts';

const keyOf = (issue: Issue) => JSON.stringify({ ...issue, line: 0 });

/** Cases whose outcome is wrong, with those that the content as it stands gets wrong too. */
const wrongCases = (known: Knowledge, cases: readonly TroubleCase[]): string[] =>
  cases.flatMap((one) => {
    const advice = advise(known, one, one.defect, caseOf(one));
    const good = isAcceptable(known, advice, one.acceptable, one.stops) && namesTheCause(known, one);
    return good && forbiddenIn(known, advice, one.forbidden, one.stops).length === 0 ? [] : [one.title];
  });

const withSlips = (entries: readonly RawEntry[], mutants: readonly Mutant[]): RawEntry[] => {
  const slips = new Map(mutants.map((mutant) => [mutant.entry, mutant]));
  return entries.flatMap((entry) => {
    const slip = slips.get(entry);
    if (!slip) return [entry];
    return slip.after ? [slip.after] : [];
  });
};

/**
 * Slips of one kind, each in a file of its own, linked at once: those that an issue names, by the file that was
 * changed or by the id that is gone. Spares a link for each.
 */
export const toldTogether = (
  entries: readonly RawEntry[],
  retired: Retired,
  mutants: readonly Mutant[],
): ReadonlySet<Mutant> => {
  const linked = link(withSlips(entries, mutants), retired);
  if (linked.ok) return new Set();
  return new Set(
    mutants.filter(({ entry, after }) =>
      linked.issues.some(
        (issue) =>
          (after?.id === entry.id && issue.file === entry.file) ||
          (after?.id !== entry.id &&
            issue.code === 'dead-link' &&
            issue.kind === entry.kind &&
            issue.id === entry.id),
      ),
    ),
  );
};

/** Asks every guard in turn, cheapest first; the first that sees something new names itself. */
export const guardsOf = (
  entries: readonly RawEntry[],
  retired: Retired,
  cases: readonly TroubleCase[],
): ((mutant: Mutant) => string | undefined) => {
  const root = process.cwd();
  const linked = link(entries, retired);
  if (!linked.ok) throw new Error('the content itself does not link');
  const asks: Record<string, (known: Knowledge) => string[]> = {
    prove: (known) => prove(known).map(keyOf),
    ...CHECKS,
    cases: (known) => wrongCases(known, cases),
    signs: (known) =>
      signsAgainstCases(
        known,
        cases.filter((one) => !one.also),
      ),

    'hard words': (known) => [...tooHard(known, root)].map(keyOf),
  };
  const before = Object.fromEntries(
    Object.entries(asks).map(([name, ask]) => [name, new Set(ask(linked.value))]),
  );
  return (mutant) => {
    const changed = link(withSlips(entries, [mutant]), retired);
    if (!changed.ok) return 'link';
    for (const [name, ask] of Object.entries(asks))
      if (ask(changed.value).some((told) => !before[name]?.has(told))) return name;
    return undefined;
  };
};
