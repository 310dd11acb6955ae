import type { ClockDoubt } from '#engine/clock.ts';
import { counted } from '../shared/counted.ts';
import { saveFile } from '../shared/save-file.ts';

type Props = {
  readonly doubt: (Pick<ClockDoubt, 'kind'> & { readonly says: string }) | undefined;
  /** What could not be read and is kept aside. */
  readonly aside: readonly unknown[];
  readonly onDisk: boolean;
  /** A bug of ours kept what she did last from the clock. */
  readonly broken: boolean;
  /** So many coats were put back from the second copy. */
  readonly back: number;
  /** She says that the device's clock is right now. */
  readonly right: () => void;
  /** She lets go of what could not be read. */
  readonly drop: () => void;
};

/** What stands against the clock, each with a way on. */
export const Trouble = ({ doubt, aside, onDisk, broken, back, right, drop }: Props) => (
  <>
    {doubt && (
      <div class="trouble" role="alert">
        <p>
          {doubt.says}
          {doubt.kind === 'back' && ' Coats that would be laid later than now have to be laid again.'}
        </p>
        {doubt.kind !== 'unset' && (
          <button type="button" class="quiet" onClick={right}>
            The clock is right now
          </button>
        )}
      </div>
    )}
    {back > 0 && (
      <p class="trouble" role="status">
        {`This browser had lost its store; ${counted(back, 'coat')} ${back === 1 ? 'was' : 'were'} put back on the clock from the second copy.`}
      </p>
    )}
    {broken && (
      <p class="trouble" role="alert">
        This page has a fault of its own: what you just did is not on the clock. Write the times down, then
        load the page again.
      </p>
    )}
    {!onDisk && (
      <p class="trouble" role="alert">
        This browser keeps nothing (its storage is full or closed). The clock runs as long as this page stays
        open: write the times down.
      </p>
    )}
    {aside.length > 0 && (
      <div class="trouble" role="alert">
        <p>
          A coat that was kept here could not be read and is left out. Lay it again with its time. What was
          found is still here.
        </p>
        <button
          type="button"
          class="quiet"
          onClick={() =>
            saveFile('halfdry-clock-as-found.json', 'application/json', JSON.stringify(aside, undefined, 2))
          }
        >
          Save what was found as a file
        </button>
        <button type="button" class="quiet" onClick={drop}>
          Let it go
        </button>
      </div>
    )}
  </>
);
