import { bothTexts, changed, withMine } from '#engine/jobs.ts';
import type { JobCard } from '#engine/model/job-card.ts';
import { plainId } from '../../shared/plain-id.ts';
import { fileName, saveFile } from '../../shared/save-file.ts';
import { sayDateTime } from '../../shared/say-date.ts';
import { type CardEdit, type KeptClash, settleClash } from '../store/index.ts';
import { Act } from './controls.tsx';
import type { CardHands } from './hands.ts';

const sayValue = (value: unknown): string => {
  if (value === undefined || value === '') return 'nothing';
  if (typeof value === 'number') return sayDateTime(value);
  if (typeof value === 'string') return value;
  return Array.isArray(value) ? value.map(String).join(', ') || 'nothing' : 'another version of the entry';
};

const FIELDS: Readonly<Record<string, string>> = {
  baseLaidAt: 'when the base was laid',
  trials: 'what it will meet',
  finishedAt: 'the last coat',
  handedOverAt: 'the hand-over',
  coats: 'a coat',
  flaws: 'a flaw',
  repairs: 'a repair',
  photos: 'a photo',
};

type Props = {
  readonly clash: KeptClash;
  readonly card: JobCard;
  readonly hands: CardHands;
  readonly over: () => void;
};

/** What two tabs changed at once: the other tab's stands on the card, and both are kept until she has chosen. */
export const ClashChoice = ({ clash, card, hands, over }: Props) => {
  const choose = (by?: CardEdit) => async () => {
    if (await hands.run((seen) => settleClash(clash, by, seen))) over();
  };
  const both = bothTexts(clash);
  const what = 'field' in clash ? clash.field : clash.list;
  return (
    <div>
      <p>
        {`Two tabs changed “${FIELDS[what] ?? plainId(what)}”. On the card stands: `}
        <b>{sayValue(clash.theirs)}</b>
      </p>
      <p>
        {'Yours was: '}
        <b>{sayValue(clash.mine)}</b>
      </p>
      <Act act={choose((there) => withMine(there, clash, Date.now()))}>Put mine in its place</Act>
      {both !== undefined && (
        <Act act={choose((there) => changed(there, { notes: both }, Date.now()))}>Keep both</Act>
      )}
      <Act
        act={() =>
          saveFile(
            `${fileName(card.name)}-two-versions.json`,
            'application/json',
            JSON.stringify(clash, undefined, 2),
          )
        }
      >
        Save both as a file
      </Act>
      <Act act={choose()}>Leave it as it stands</Act>
    </div>
  );
};
