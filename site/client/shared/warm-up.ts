import { type FindIndex, find } from '#engine/find.ts';
import { consider, flawWords, hear } from '#engine/hear.ts';
import type { Ear } from '../../shared/ear.ts';
import { idle } from './idle.ts';

/** Slips, times, coats and flaws: such words open every table that words can open. Invented for it. */
const WORDS = [
  'brushd water based poly ovr dark blue paint last nite, third coat, stil sticky and clowdy at 60 degrees',
  'wiped oil on an oak table two weeks ago; it is not hard, the rag left lint, no rings. What do I do now?',
];

/** What the first words would have to wait for, tables unpacked and code compiled, in steps that a tap gets between. */
export const warmUpSteps = ({ hearing, mind }: Ear, index: FindIndex): readonly (() => void)[] =>
  WORDS.flatMap((words) => {
    const heard = () => hear(hearing, words);
    return [
      () => void heard(),
      () => void find(index, words, { typing: true }),
      () => void consider(mind, { told: {}, heard: heard(), words: flawWords(index, mind, words) }),
    ];
  });

/** Runs them while nothing else is asked for. */
export const warmUp = async (ear: Ear, index: FindIndex): Promise<void> => {
  for (const step of warmUpSteps(ear, index)) {
    await idle();
    step();
  }
};
