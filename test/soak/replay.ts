/** Does acts again in a fresh browser, and finds the fewest of them that still go wrong. */
import fc from 'fast-check';
import { ACTS, type Done } from './acts/index.ts';
import { visit } from './visit.ts';

/** What goes wrong in these acts; nothing where all goes well. */
type WrongIn = (acts: readonly Done[]) => Promise<readonly string[]>;
const inBrowser: WrongIn = (acts) =>
  visit(async (there) => {
    for (const act of acts) {
      const { faults } = await there.act(act);
      if (faults.length) return faults;
    }
    return [];
  });

/** How many of the last acts are tried first: most faults need few. */
const TAILS = [10, 40, 200, Number.POSITIVE_INFINITY];

/**
 * The fewest acts found within the minutes, with what they do. The lists are shrunk by fast-check, which is handed the
 * faulty one as its example; nothing where it does not go wrong again.
 */
export const fewest = async (
  acts: readonly Done[],
  minutes: number,
  wrongIn: WrongIn = inBrowser,
): Promise<{ readonly acts: readonly Done[]; readonly says: readonly string[] } | undefined> => {
  for (const tail of TAILS) {
    const last = acts.slice(-tail);
    const says = await wrongIn(last);
    if (says.length) return shrunk(last, says, minutes, wrongIn);
    if (last.length === acts.length) return undefined;
  }
  return undefined;
};

const shrunk = async (acts: readonly Done[], first: readonly string[], minutes: number, wrongIn: WrongIn) => {
  let least = { acts, says: first };
  const act = fc.tuple(fc.constantFrom(...ACTS.map(({ name }) => name)), fc.noShrink(fc.nat()));
  const property = fc.asyncProperty(fc.array(act, { maxLength: acts.length }), async (some) => {
    const says = some.length ? await wrongIn(some) : [];
    if (says.length && some.length <= least.acts.length) least = { acts: some, says };
    return !says.length;
  });
  await fc.check(property, {
    examples: [[acts.map(([name, seed]): [string, number] => [name, seed])]],
    numRuns: 1,
    interruptAfterTimeLimit: minutes * 60_000,
  });
  return least;
};
