import type { HeardFact } from '../words/heard.ts';
import { isOfTheCan } from '../words/laying.ts';
import type { Manner } from '../words/manner.ts';
import type { Match } from '../words/match.ts';
import type { Word } from '../words/words.ts';
import type { DryHours } from './dry-hours.ts';
import { filmTold } from './film-told.ts';
import { firmFilm } from './firm-film.ts';
import { softFilm } from './soft-film.ts';

/**
 * How dry the film is, from what is said of it and from the hours since it was laid. Never drier than both allow;
 * where words contradict each other nothing is taken as told.
 */
export const stageFacts = (
  words: readonly Word[],
  matches: readonly Match[],
  manner: Manner,
  heard: readonly HeardFact[],
  families: readonly string[],
  dry: DryHours,
  labelHours?: number,
): HeardFact[] => {
  if (isOfTheCan(words)) return [];
  const film = filmTold(words, matches, manner, heard, families, dry, labelHours);
  return film.soft.length ? softFilm(film) : firmFilm(film);
};
