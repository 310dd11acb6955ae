import type { Fault, Issue } from './issue.ts';
import { OF_BOARDS } from './say-boards.ts';
import { OF_FIELDS } from './say-fields.ts';
import { OF_NAMES } from './say-names.ts';
import { OF_SAFETY } from './say-safety.ts';
import { OF_TREES } from './say-trees.ts';
import { OF_WORDS } from './say-words.ts';
import type { Say, Told } from './told.ts';

/** The words for every fault: a code without any does not compile. */
const SAY: Say<Fault['code']> = {
  ...OF_FIELDS,
  ...OF_NAMES,
  ...OF_TREES,
  ...OF_SAFETY,
  ...OF_BOARDS,
  ...OF_WORDS,
};

/** One line: `file:line: what; what to do`. */
export const say = (issue: Issue): string => {
  // That the words are those of this very code is plain here, and beyond what a type can follow.
  const [what, mend] = (SAY[issue.code] as (issue: Issue) => Told)(issue);
  return `${issue.file}:${issue.line}: ${what}; ${mend}`;
};
