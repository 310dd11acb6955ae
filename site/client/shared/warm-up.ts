import { type FindIndex, find } from '#engine/find.ts';
import { consider, flawWords, hear } from '#engine/hear.ts';
import type { Ear } from '../../shared/ear.ts';
import { idle } from './idle.ts';

/** Slips, times, coats and flaws: such words open every table that words can open. Invented for it. */
const WORDS = [
  'brushd water based poly ovr dark blue paint last nite, third coat, stil sticky and clowdy at 60 degrees',
  'wiped oil on an oak table two weeks ago; it is not hard, the rag left lint, no rings. What do I do now?',
];

/**
 * A whole post, for the ear alone: its code is compiled well only once it has heard a long text, and that more than once.
 * Invented for it.
 */
const POST = `Hi all. My wife bought this old oak dresser in the 80s, and the top was painted with latex by the guy before us. We stripped it to
bare wood two weeks ago, sanded to 220 and stained it dark walnut. Last Saturday I brushed on the first coat of water based satin poly,
the second on Sunday morning, after I had waited six hours. The can says recoat in 2 to 4 hours, full cure 30 days. Temps in the garage were about
58 degrees at night, and humidity was 70 percent or so. It is not hard: my nail leaves a dent, there are bubbles, a few runs on the legs and a white
haze near the edge. No cracks, no peeling, but it smells and my hand sticks to it. My neighbor says he sprays three coats of lacquer on his in one day,
never had trouble in 20 years. A hot mug stood on it for ten minutes yesterday and left a ring; I wiped it with mineral spirits, and the oily rag
is on the bench. Should I sand it and put another coat on tomorrow, or wait until it's dry? It was dry to the touch on Monday, now it is tacky again.
Before that I wiped on shellac, 3 coats over two days, and waxed the drawers a month ago. My 3 year old has a crib with the same finish. What do I do?`;
const TIMES = 4;

/** What the first words would have to wait for, tables unpacked and code compiled, in steps that a tap gets between. */
export const warmUpSteps = ({ hearing, mind }: Ear, index: FindIndex): readonly (() => void)[] => [
  ...WORDS.flatMap((words) => {
    const heard = () => hear(hearing, words);
    return [
      () => void heard(),
      () => void find(index, words, { typing: true }),
      () => void consider(mind, { told: {}, heard: heard(), words: flawWords(index, mind, words) }),
    ];
  }),
  ...Array.from({ length: TIMES }, () => () => void hear(hearing, POST)),
];

/** Runs them while nothing else is asked for. */
export const warmUp = async (ear: Ear, index: FindIndex): Promise<void> => {
  for (const step of warmUpSteps(ear, index)) {
    await idle();
    step();
  }
};
