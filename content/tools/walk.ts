/** `npm run walk -- <defect> [--fact name=value …] [question=yes|no|unsure …] [--for-cause] [--settled] [--json]` */

import { say } from '#engine/faults/say.ts';
import { walk } from '#engine/index.ts';
import type { Knowledge } from '#engine/knowledge/knowledge.ts';
import { linkedKnowledge } from './knowledge.ts';
import { Refused, readWalk } from './walk-args.ts';
import { walkLines } from './walk-lines.ts';

/** What the command prints. Throws `Refused` for arguments that it can not use. */
export const walkCommand = (known: Knowledge, args: readonly string[]): string => {
  const { defect, on, clockSays, forCause, settled, json } = readWalk(known, args);
  const walked = walk(known, on, defect, { forCause });
  if (json) return JSON.stringify(walked, (key, value) => (key === 'lineOf' ? undefined : value), 2);
  return [...(clockSays ? [clockSays] : []), ...walkLines(known, on, walked, settled)].join('\n');
};

if (import.meta.main) {
  try {
    const { known, issues } = linkedKnowledge(process.cwd());
    if (!known) throw new Refused(`the content does not link:\n${issues.map(say).join('\n')}`);
    console.log(walkCommand(known, process.argv.slice(2)));
  } catch (error) {
    if (!(error instanceof Refused)) throw error;
    console.error(error.message);
    process.exitCode = 1;
  }
}
