import { useRef, useState } from 'preact/hooks';
import type { JobCard } from '#engine/model/job-card.ts';
import type { KeptClash } from '../store/index.ts';
import { useRedraw } from './controls.tsx';
import { useFrame } from './frame.ts';
import type { CardHands } from './hands.ts';
import { CardSaver } from './saver.ts';
import { tellSaver } from './saver-words.tsx';

/** A card that is open, with all that writes it. It is the same one for as long as its view stands. */
export type OpenCard = {
  readonly saver: CardSaver;
  readonly hands: CardHands;
  /** How far the card is saved, in a line. */
  readonly saved: string;
  readonly clashes: readonly KeptClash[];
  readonly setClashes: (change: (open: readonly KeptClash[]) => readonly KeptClash[]) => void;
  /** Whether something is not written: it waits, or stands in a field that can not be saved as it is. */
  readonly unwritten: () => boolean;
  /** The card once all of it is written. */
  readonly written: () => Promise<JobCard>;
};

/** Writes the changes of a card, and draws its view anew with each. `about` is the form where a refusal is told. */
export const useSaver = (first: JobCard, found: readonly KeptClash[], about: HTMLFormElement): OpenCard => {
  const frame = useFrame();
  const redraw = useRedraw();
  const [saved, setSaved] = useState('');
  const [clashes, setClashes] = useState(found);
  const held = useRef(false);
  const [saver] = useState(() => {
    const made: CardSaver = new CardSaver(first, (event) => {
      setSaved(tellSaver(event, frame, made, about));
      if (event.kind === 'saved' && event.clashes.length)
        setClashes((before) => [...before, ...event.clashes]);
      redraw();
    });
    return made;
  });
  const [hands] = useState(
    (): CardHands => ({
      card: () => saver.card,
      now: (by) => saver.now(by),
      soon: (by) => saver.soon(by),
      run: (work) => saver.run(work),
      pending: () => saver.pending,
      hold: (is) => {
        held.current = is;
      },
    }),
  );
  return {
    saver,
    hands,
    saved,
    clashes,
    setClashes,
    unwritten: () => saver.pending || held.current,
    written: async () => {
      await saver.flush();
      return saver.card;
    },
  };
};
