import type { Fault } from './issue.ts';

/** What a file that can not be read is told for: a colon in a plain text where that is it, else what the parser stumbled over. */
export const unreadable = ({
  message,
  mend,
  colon,
}: {
  readonly message: string;
  readonly mend?: string;
  readonly colon?: string;
}): Fault =>
  colon
    ? { code: 'needs-quotes', why: 'colon', text: colon }
    : { code: 'bad-yaml', message, ...(mend !== undefined && { mend }) };
