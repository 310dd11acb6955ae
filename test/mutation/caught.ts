/** What notices a slip: the link, the proofs, the plain words, the checks of the trade, or a case of real trouble. */
import type { Issue } from '#engine/issue.ts';
import type { Knowledge } from '#engine/knowledge.ts';
import { link, type Retired } from '#engine/link.ts';
import type { RawEntry } from '#engine/model/knowledge.ts';
import { prove } from '#engine/prove/index.ts';
import { plainWords } from '../../content/tools/plain-words.ts';
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

    'plain words': (known) => [...plainWords(known, root)].map(keyOf),
  };
  const before = Object.fromEntries(
    Object.entries(asks).map(([name, ask]) => [name, new Set(ask(linked.value))]),
  );
  return (mutant) => {
    const after = entries.flatMap((entry) =>
      entry === mutant.entry ? (mutant.after ? [mutant.after] : []) : [entry],
    );
    const changed = link(after, retired);
    if (!changed.ok) return 'link';
    for (const [name, ask] of Object.entries(asks))
      if (ask(changed.value).some((told) => !before[name]?.has(told))) return name;
    return undefined;
  };
};
