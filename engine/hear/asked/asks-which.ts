import type { Match } from '../words/match.ts';

const says = (matches: readonly Match[], cue: string): boolean =>
  matches.some(({ sense }) => sense === `cue ${cue}`);

/** Whether a text asks which top coat to take, and tells of none that lies there nor asks for anything else. */
export const asksWhich = (matches: readonly Match[]): boolean =>
  says(matches, 'asks-which') && !says(matches, 'not-which');
