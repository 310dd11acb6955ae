import { say } from '#engine/say.ts';
import { provenKnowledge } from '../../content/tools/knowledge.ts';

const read = () => {
  const { known, issues } = provenKnowledge(process.cwd());
  const told = issues.map(say).join('\n');
  // While an author writes, a page with an unproved tree is still worth seeing; a broken link is not.
  if (known && import.meta.env.DEV && issues.length) console.error(told);
  else if (!known || issues.length) throw new Error(`content/ has faults:\n${told}`);
  return known;
};

/** Everything that the content says, read once for the whole build. */
export const knowledge = read();
