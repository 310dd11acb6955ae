import { type Family, WIPED_OFF } from '../../model/family.ts';
import { type DryHours, UNKNOWN_AIR } from '../film/dry-hours.ts';
import type { Heard } from '../words/heard.ts';
import { type Match, spanOf } from '../words/match.ts';
import type { Word } from '../words/words.ts';
import { isSeen } from './asks-for.ts';

/**
 * "Poly 20 minutes ago, still sticky": a film that sets, at most as old as its kind takes to be dry to the touch, of which
 * nothing is told that is seen. Where no kind is told nothing is known of its time; oil and wax that stick lie too thick,
 * whatever their age.
 */
export const isStillDrying = (
  words: readonly Word[],
  matches: readonly Match[],
  { facts, among, signs, named }: Pick<Heard, 'facts' | 'among' | 'signs' | 'named'>,
  families: readonly string[],
  dry: DryHours,
): boolean => {
  const told = (name: string) => facts.find(({ fact }) => fact === name);
  const laid = told('hours-since-coat');
  if (!laid || told('stage')?.value !== 'setting' || told('overdue')?.value === 'yes') return false;
  const isWiped = (family: string): boolean => (WIPED_OFF as readonly string[]).includes(family);
  if (!families.length || families.some(isWiped)) return false;
  const touch = families.map((family) => dry[family as Family]?.[0] ?? 0);
  if (Number(laid.value) > UNKNOWN_AIR * Math.min(...touch)) return false;
  const spans = [
    ...[...facts, ...among].flatMap(({ rests }) => rests),
    // "this morning" answers when it came, and is nothing that is seen
    ...matches.filter(({ kind }) => kind === 'times').map((match) => spanOf(words, match)),
  ];
  return !signs.some((sign) => isSeen(sign, spans, named));
};
