import { useRef, useState } from 'preact/hooks';
import { isOneOf } from '#engine/plain/entry-of.ts';
import { drawSet, PRACTICE_LEVELS, type PracticeKey, type PracticeLevel } from '#engine/practice.ts';
import { PRACTICE, SHOW } from '../../shared/urls.ts';
import { CopyButton } from '../shared/copy-button.tsx';
import { counted } from '../shared/counted.ts';
import { Choice } from './choice.tsx';
import type { Dealer } from './load.ts';
import { newSeed } from './seed.ts';
import { setSize } from './set-size.ts';
import { LONGEST_TITLE, type PracticeLink, writeLink } from './state.ts';
import { TextLine } from './text-line.tsx';

const SAYS: Readonly<Record<PracticeLevel, string>> = {
  look: 'Look only',
  stage: 'Look and stage',
  case: 'Whole cases',
};

const COUNT = 10;

type Props = {
  readonly dealer: Dealer;
  /** A set that was made before, where the address holds one: she comes back to it from wherever it leads. */
  readonly link: PracticeLink;
};

/** A teacher makes a set: the link holds all of it, so nothing is kept anywhere. */
export const MakeClass = ({ dealer, link: { title: was, boards: made, making } }: Props) => {
  const [title, setTitle] = useState(making ? was : '');
  const [level, setLevel] = useState<PracticeLevel>((making && made[0]?.level) || 'look');
  const [size, typeSize] = useState(String((making && made.length) || COUNT));
  const [fault, setFault] = useState('');
  const [flaws, setFlaws] = useState<readonly string[]>(making ?? []);
  const [boards, setBoards] = useState<readonly PracticeKey[]>(making ? made : []);
  const field = useRef<HTMLInputElement>(null);
  const hash = writeLink({ title, boards });
  const link = new URL(`${PRACTICE}#${hash}`, location.origin).href;
  const keep = (set: Partial<PracticeLink>) =>
    history.replaceState(history.state, '', `#${writeLink({ title, boards, making: flaws, ...set })}`);
  const make = () => {
    const wanted = setSize(size);
    setFault(wanted.count === undefined ? wanted.says : '');
    if (wanted.count === undefined) return field.current?.focus();
    const drawn = drawSet(dealer.known, { level, count: wanted.count, seed: newSeed() }, flaws);
    if (!drawn.length) return setFault('None of these flaws has a board at this level: choose others.');
    setBoards(drawn);
    return keep({ boards: drawn });
  };
  const turn = (id: string) =>
    setFlaws(flaws.includes(id) ? flaws.filter((one) => one !== id) : [...flaws, id]);
  return (
    <details class="fold make-class" open={making !== undefined}>
      <summary>For a class: make a set by link</summary>
      <p>Everybody who opens the link sees the same boards. No account, and nothing is sent to anybody.</p>
      <TextLine
        label="Title"
        most={LONGEST_TITLE}
        value={title}
        type={(typed) => {
          setTitle(typed);
          if (boards.length) keep({ title: typed });
        }}
      />
      <Choice
        label="Level"
        value={level}
        choose={(one) => isOneOf(PRACTICE_LEVELS, one) && setLevel(one)}
        of={PRACTICE_LEVELS.map((one) => [one, SAYS[one]])}
      />
      <label>
        How many boards{' '}
        <input
          ref={field}
          type="text"
          inputMode="numeric"
          autocomplete="off"
          value={size}
          aria-describedby="set-size-fault"
          aria-invalid={fault !== ''}
          onInput={({ currentTarget }) => typeSize(currentTarget.value)}
          onChange={({ currentTarget }) => {
            const wanted = setSize(currentTarget.value);
            setFault(wanted.count === undefined ? wanted.says : '');
          }}
        />
      </label>
      <p class="fault" id="set-size-fault" role="status">
        {fault}
      </p>
      <details class="which-flaws">
        <summary>
          <b>Of which flaws?</b>{' '}
          {flaws.length ? `Of ${counted(flaws.length, 'flaw')} alone` : 'Of any, as often as they are met'}
        </summary>
        <fieldset>
          <legend class="unseen">Only these flaws</legend>
          {dealer.known.defects.map(({ id, name }) => (
            <label key={id}>
              <input type="checkbox" checked={flaws.includes(id)} onChange={() => turn(id)} /> {name}
            </label>
          ))}
        </fieldset>
      </details>
      <button type="button" class={boards.length ? 'quiet' : 'go'} onClick={make}>
        {boards.length ? 'Make another set' : 'Make the set'}
      </button>
      {boards.length > 0 && (
        <div class="made" role="status">
          <h3>{`${title || 'Your set'}: ${counted(boards.length, 'board')}`}</h3>
          <p class="acts">
            <CopyButton look="go" says="Copy the link" text={link} what="link" />
            <a class="quiet" href={`${PRACTICE}#${hash}`}>
              <b>Open the set</b>
            </a>
            <a class="quiet" href={`${SHOW}#${hash}`}>
              <b>Show it on a big screen</b>
            </a>
          </p>
          <details>
            <summary>The link itself</summary>
            <p class="post">{link}</p>
          </details>
        </div>
      )}
    </details>
  );
};
