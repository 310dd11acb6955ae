import type { PostRead } from './choices/choice-mentions.ts';
import { choicesOf } from './choices/choices.ts';
import { coatNumberOf } from './coats/coats.ts';
import type { DryHours } from './film/dry-hours.ts';
import { stageFacts } from './film/stage.ts';
import { airOf } from './measures/measures.ts';
import { hoursByClock } from './times/clock-times.ts';
import { labelTime } from './times/label-time.ts';
import { hoursOf } from './times/times.ts';
import { type HeardAmong, type HeardFact, SURE } from './words/heard.ts';

/** What a post tells of its coat: facts, and kinds that are left open. */
export type ToldOfCoat = {
  readonly facts: readonly HeardFact[];
  readonly among: readonly HeardAmong[];
  /** The kind that is told, else those that are left open. */
  readonly families: readonly string[];
  readonly isKindTold: boolean;
};

export const toldOfCoat = (post: PostRead, text: string, dry: DryHours): ToldOfCoat => {
  const { ear, words, matches, manner } = post;
  const { facts, among } = choicesOf(text, post);
  const spans = hoursOf(ear, words, matches, manner);
  // "at seven this morning, now it is noon" is nearer than the morning alone.
  const clock = hoursByClock(text);
  const times = clock.length ? clock : spans;
  const family = facts.find(({ fact }) => fact === 'family');
  const families = family ? [String(family.value)] : (among[0]?.values ?? []);
  const kind = (family?.sure ?? 0) >= SURE ? String(family?.value) : undefined;
  const air = airOf(ear, text, words, matches, manner.denied);
  return {
    facts: [
      ...facts,
      ...times,
      ...coatNumberOf(ear, words, manner, kind !== undefined || among.length > 0, kind),
      ...air,
      ...stageFacts(
        words,
        matches,
        manner,
        [...facts, ...times, ...air],
        families,
        dry,
        labelTime(ear, words)?.hours,
      ),
    ],
    among,
    families,
    isKindTold: family !== undefined,
  };
};
