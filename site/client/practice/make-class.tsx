import { useState } from 'preact/hooks';
import { isOneOf } from '#engine/plain/entry-of.ts';
import {
  flawOfSeed,
  PRACTICE_LEVELS,
  type PracticeKey,
  type PracticeLevel,
  practised,
  SOUND,
} from '#engine/practice.ts';
import { PRACTICE, SHOW } from '../../shared/urls.ts';
import { CopyButton } from '../shared/copy-button.tsx';
import { Choice } from './choice.tsx';
import { FlawOptions } from './flaw-options.tsx';
import type { Dealer } from './load.ts';
import { newSeed } from './seed.ts';
import { LONGEST_TITLE, MOST_IN_A_SET, writeLink } from './state.ts';
import { TextLine } from './text-line.tsx';

const SAYS: Readonly<Record<PracticeLevel, string>> = {
  look: 'Look only',
  stage: 'Look and stage',
  case: 'Whole cases',
};

/** New boards, no flaw twice while there are others. */
const pickedBoards = (
  dealer: Dealer,
  level: PracticeLevel,
  count: number,
  from: readonly string[],
): readonly PracticeKey[] => {
  const boards: PracticeKey[] = [];
  const used = new Set<string>();
  for (let tries = 0; boards.length < count && tries < 50 * count; tries++) {
    const seed = newSeed();
    const flaw = from.length ? (from[seed % from.length] ?? SOUND) : flawOfSeed(dealer.known, level, seed);
    const all = from.length ? from.length : practised(dealer.known, level).length;
    if (used.has(flaw) && used.size < all) continue;
    used.add(flaw);
    boards.push({ level, flaw, seed });
  }
  return boards;
};

/** A teacher makes a set: the link holds all of it, so nothing is kept anywhere. */
export const MakeClass = ({ dealer }: { readonly dealer: Dealer }) => {
  const [title, setTitle] = useState('');
  const [level, setLevel] = useState<PracticeLevel>('look');
  const [count, setCount] = useState(10);
  const [flaws, setFlaws] = useState<readonly string[]>([]);
  const [boards, setBoards] = useState<readonly PracticeKey[]>([]);
  const hash = writeLink({ title, boards });
  const link = new URL(`${PRACTICE}#${hash}`, location.origin).href;
  return (
    <details class="fold make-class">
      <summary>For a class: make a set by link</summary>
      <p>Everybody who opens the link sees the same boards. No account, and nothing is sent to anybody.</p>
      <TextLine label="Title" most={LONGEST_TITLE} value={title} type={setTitle} />
      <Choice
        label="Level"
        value={level}
        choose={(one) => isOneOf(PRACTICE_LEVELS, one) && setLevel(one)}
        of={PRACTICE_LEVELS.map((one) => [one, SAYS[one]])}
      />
      <label>
        How many boards{' '}
        <input
          type="number"
          min={1}
          max={MOST_IN_A_SET}
          value={count}
          onInput={({ currentTarget }) => {
            const wanted = Math.round(Number(currentTarget.value));
            if (wanted >= 1) setCount(Math.min(MOST_IN_A_SET, wanted));
          }}
        />
      </label>
      <label>
        Only these flaws (none chosen: any, as often as they are met)
        <select
          multiple
          size={6}
          onChange={({ currentTarget }) =>
            setFlaws([...currentTarget.selectedOptions].map(({ value }) => value))
          }
        >
          <FlawOptions of={dealer} />
        </select>
      </label>
      <button type="button" class="go" onClick={() => setBoards(pickedBoards(dealer, level, count, flaws))}>
        Make the set
      </button>
      {boards.length > 0 && (
        <div class="made" role="status">
          <p class="post">{link}</p>
          <p class="acts">
            <CopyButton says="Copy the link" text={link} what="link" />
            <a class="quiet" href={`${PRACTICE}#${hash}`}>
              <b>Open the set</b>
            </a>
            <a class="quiet" href={`${SHOW}#${hash}`}>
              <b>Show it on a big screen</b>
            </a>
          </p>
        </div>
      )}
    </details>
  );
};
