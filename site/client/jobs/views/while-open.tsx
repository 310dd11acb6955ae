import { useLayoutEffect } from 'preact/hooks';
import { changed, coatOwed, coatsInOrder } from '#engine/jobs.ts';
import { draftIn, onWhole, plainNumbers, tellFaults } from '../../shared/form/in-page.ts';
import { pageUnits } from '../../shared/say-date.ts';
import { adoptCoats, stopClock } from '../parts/clock.ts';
import type { CoatOnCard } from '../parts/coat-form.tsx';
import type { JobsData } from '../parts/data.ts';
import { PIECE_FIELDS, readPiece } from '../parts/piece-form.ts';
import { readClashes, readOne } from '../store/index.ts';
import { LIST, useRedraw } from './controls.tsx';
import { useFrame } from './frame.ts';
import type { OpenCard } from './use-saver.ts';

/** Puts the clock in order as the card is opened and as what all its coats hang on changes: what may run runs. */
const useClockOf = ({ saver }: OpenCard, data: JobsData): void => {
  const { night, age } = saver.card;
  useLayoutEffect(() => {
    const { card } = saver;
    // The coat below one that a repair laid says nothing any more: its clock rests until that one is on the card.
    const buried = coatOwed(card, data.lays) && coatsInOrder(card).at(-1);
    void (buried ? stopClock(buried.id) : adoptCoats(card, data.products, Date.now()));
  }, [night?.celsius, night?.relativeHumidity, age]);
};

/** Writes what waits as the page goes out of sight, and asks before what is not written would be lost. */
const useNothingLost = ({ saver, unwritten }: OpenCard, coat: CoatOnCard): void => {
  const frame = useFrame();
  useLayoutEffect(() => {
    const { signal } = frame;
    const flush = () => void saver.flush();
    document.addEventListener('visibilitychange', flush, { signal });
    addEventListener('pagehide', flush, { signal });
    addEventListener('beforeunload', (event) => (unwritten() || coat.unsaved) && event.preventDefault(), {
      signal,
    });
    frame.beforeLeaving(async () => {
      await saver.flush();
      const what = coat.unsaved
        ? 'The correction of this coat is'
        : unwritten()
          ? 'A change of this card is'
          : undefined;
      return (
        !what ||
        frame.ask({ says: `${what} not saved. Leave it all the same?`, yes: 'Leave it', no: 'Stay here' })
      );
    });
  }, []);
};

/** Takes what another tab wrote to this card. */
const useOtherTabs = ({ saver, setClashes }: OpenCard): void => {
  const frame = useFrame();
  const redraw = useRedraw();
  useLayoutEffect(() => {
    const { id } = saver.card;
    frame.onOthers(async (ids) => {
      if (!ids.includes(id)) return;
      const read = await readOne(id);
      if (read.kind === 'gone' && !saver.pending)
        frame.trouble('This card was taken away in another tab.', <a href={LIST}>All job cards</a>);
      if (read.kind !== 'card' || read.card.changedAt === saver.card.changedAt || !saver.take(read.card))
        return;
      const clashes = await readClashes(id);
      setClashes(() => clashes);
      redraw();
      frame.say('Changed in another tab: this is the newer card.');
    });
  }, []);
};

/** Writes each field of the form of the piece as it is whole. */
const usePieceForm = ({ hands }: OpenCard, about: HTMLFormElement): void => {
  const { signal } = useFrame();
  useLayoutEffect(() => {
    const units = pageUnits();
    plainNumbers(about, PIECE_FIELDS, () => units, signal);
    onWhole(
      about,
      ({ name }) => {
        const read = readPiece(draftIn(about), units);
        tellFaults(about, 'plan', read.faults);
        const change = read.changeOf(name);
        if (change) void hands.now((there) => changed(there, change, Date.now()));
      },
      signal,
    );
    about.addEventListener('submit', (event) => event.preventDefault(), { signal });
  }, []);
};

/** What goes on for as long as a card is open. */
export const useWhileOpen = (
  open: OpenCard,
  data: JobsData,
  about: HTMLFormElement,
  coat: CoatOnCard,
): void => {
  useClockOf(open, data);
  useNothingLost(open, coat);
  useOtherTabs(open);
  usePieceForm(open, about);
};
