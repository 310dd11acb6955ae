import type { Kin } from '../model/kin.ts';
import type { Language } from './language.ts';

/** Numbers of the groups of kin by what is said: a stem, or two joined by a space. */
export type KinOf = ReadonlyMap<string, readonly number[]>;

/** The table made ready to be asked; groups are numbered in its order. */
export const kinOf = ({ kin }: Kin, say: Language): KinOf => {
  const found = new Map<string, number[]>();
  Object.values(kin).forEach((words, group) => {
    for (const word of words) {
      const said = say.all(word).map(({ stem }) => stem);
      const groups = found.get(said.join(' ')) ?? [];
      if (!groups.includes(group)) found.set(said.join(' '), [...groups, group]);
    }
  });
  return found;
};

/** A group among the features; no word of anybody's begins so. */
export const kinMark = (group: number): string => `~${group}`;

/** Words that stand farther apart than a typed phrase is long say nothing together. */
const TOGETHER = 14;

/** The groups that a text names, and each two of them that it names together. */
export const kinFeatures = (stems: readonly string[], kin: KinOf): string[] => {
  const said = stems.map((stem, at) => [
    ...(kin.get(stem) ?? []),
    ...(kin.get(`${stem} ${stems[at + 1]}`) ?? []),
  ]);
  const found = new Set<string>();
  for (const group of said.flat()) found.add(kinMark(group));
  said.forEach((groups, at) => {
    for (const other of said.slice(at, at + TOGETHER).flat())
      for (const group of groups)
        if (group !== other)
          found.add(`${kinMark(Math.min(group, other))} ${kinMark(Math.max(group, other))}`);
  });
  return [...found];
};
