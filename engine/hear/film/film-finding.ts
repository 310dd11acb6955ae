import type { Stage } from '../../model/stage.ts';
import type { HeardFact } from '../words/heard.ts';
import type { Span } from '../words/words.ts';
import type { FilmTold } from './film-told.ts';

/** By hours alone a film has come to a stage after half as long again as its kind takes. */
export const BY_HOURS = 1.5;

/** How dry a film is, and what tells it. */
export type Finding = {
  readonly stage: Stage;
  readonly sure: number;
  readonly rests: readonly Span[];
  readonly against?: readonly Span[];
};

export const timeOf = ({ time }: FilmTold): readonly Span[] => time?.rests ?? [];

/** What the first rule that says something says. */
export const firstOf = <Film>(
  rules: readonly ((film: Film) => Finding | undefined)[],
  film: Film,
): Finding | undefined => {
  for (const rule of rules) {
    const found = rule(film);
    if (found) return found;
  }
  return undefined;
};

export const stageFact = ({ stage, sure, rests, against = [] }: Finding): HeardFact => ({
  fact: 'stage',
  value: stage,
  sure,
  rests,
  against,
});
