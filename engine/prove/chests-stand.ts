import type { Issue } from '../faults/issue.ts';
import type { Knowledge } from '../knowledge/knowledge.ts';
import type { Entry } from '../model/knowledge.ts';

const OPENS = /\b(?:open|opened|wide)\b[^.;:]*\bdrawers?\b|\bdrawers?\b[^.;:]*\bopen\b|\beverything open\b/i;
const STANDS =
  /\bdrawers? (?:out|a finger)\b|\b(?:take|lift) [^.;:]*\bdrawers?\b[^.;:]* out\b|\bfinger wide\b|\ba little\b/i;

type Said = { readonly at: readonly PropertyKey[]; readonly says: string };
const saidIn = ({ now, steps, prevent }: Entry<'remedy'>): readonly Said[] => [
  ...Object.entries(now).flatMap(([stage, act]) =>
    act ? [{ at: ['now', stage, 'say'], says: act.say }] : [],
  ),
  ...steps.map(({ say }, index) => ({ at: ['steps', index], says: say })),
  ...prevent.map((says, index) => ({ at: ['prevent', index], says })),
];

/**
 * A chest goes over where all its drawers stand open, and its weight hangs in front: of 234 deaths by tipping furniture
 * in the US from 2000 to April 2022, 199 were children (a report of the product safety commission). So where drawers air,
 * they are taken out, or stand open by no more than a finger.
 */
export function* chestsStand(known: Knowledge): Generator<Issue> {
  for (const remedy of known.remedies)
    for (const { at, says } of saidIn(remedy))
      if (OPENS.test(says) && !STANDS.test(says))
        yield {
          file: remedy.file,
          line: remedy.lineOf(at),
          code: 'against-the-trade',
          what: `"${says}" has drawers stand open: a chest with all of them pulled tips over`,
          mend: 'say that the drawers are taken out, or stand a finger wide open',
        };
}
