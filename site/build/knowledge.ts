import { say } from '#engine/faults/say.ts';
import type { Knowledge } from '#engine/knowledge/knowledge.ts';
import { linkedKnowledge, provenKnowledge } from '../../content/tools/knowledge.ts';

/**
 * In the preview this module is read anew at every edit; what was whole before the edit is kept beside it. So is what the
 * command that builds has proven: the pages are made in its own process, from modules of their own.
 */
const kept = globalThis as { halfdryLastWhole?: Knowledge; halfdryProven?: Knowledge };

/** The preview shows what links, at once; the proofs run beside it and stand over the page (`site/tools/fault-watch.ts`). */
const readForPreview = (): Knowledge => {
  const { known = kept.halfdryLastWhole, issues } = linkedKnowledge(process.cwd());
  if (!known) throw new Error(`content/ has faults:\n${issues.map(say).join('\n')}`);
  kept.halfdryLastWhole = known;
  return known;
};

/** The command that builds has proven the content before the first page (`site/tools/build.ts`); a bare build proves it here. */
const read = (): Knowledge => {
  if (kept.halfdryProven) return kept.halfdryProven;
  const { known, issues } = provenKnowledge(process.cwd());
  if (!known || issues.length) throw new Error(`content/ has faults:\n${issues.map(say).join('\n')}`);
  return known;
};

/** Everything that the content says, read once for the whole build. */
export const knowledge = import.meta.env.DEV ? readForPreview() : read();
