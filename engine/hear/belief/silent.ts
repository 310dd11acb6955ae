import type { Heard } from '../words/heard.ts';

/** Words of somebody who has trouble with a piece, whatever it is. */
const TROUBLE =
  /\b(?:wrong|ruin(?:ed|s)?|mess(?:ed)?|weird|odd|strange|awful|terrible|bad|flaws?|marks?|spots?|look(?:s|ed|ing)? (?:like|off))\b/i;

/** Nothing of a coat, a flaw or a time is told: the words look for a page. */
export const isSilent = ({
  text,
  facts,
  among,
  signs,
  dangers,
  urgent,
  named,
  otherTongue,
}: Pick<
  Heard,
  'text' | 'facts' | 'among' | 'signs' | 'dangers' | 'urgent' | 'named' | 'otherTongue'
>): boolean =>
  text.trim().length > 0 &&
  !otherTongue &&
  ![facts, among, signs, dangers, urgent, named].some(({ length }) => length > 0) &&
  !TROUBLE.test(text);
