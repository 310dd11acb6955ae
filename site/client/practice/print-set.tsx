import { useMemo, useState } from 'preact/hooks';
import type { PracticeItem, PracticeKey } from '#engine/practice.ts';
import { PracticeBoard } from './board.tsx';
import { type Dealer, deal } from './load.ts';

const LETTERS = 'ABCDE';

type Props = { readonly dealer: Dealer; readonly title: string; readonly boards: readonly PracticeKey[] };

/** The set on paper: boards with their answers to tick, and on the last sheet what is right. */
export const PrintSet = ({ dealer, title, boards }: Props) => {
  const [shown, setShown] = useState(false);
  return (
    <>
      <button
        type="button"
        class="quiet print-set"
        onClick={() => {
          setShown(true);
          // Two frames: one to lay the boards out, one to draw them.
          requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(() => print(), 300)));
        }}
      >
        <b>Print the set, with the answers on the back</b>
      </button>
      {shown && <PaperSet dealer={dealer} title={title} boards={boards} />}
    </>
  );
};

const PaperSet = ({ dealer, title, boards }: Props) => {
  const items = useMemo(() => boards.map((key) => deal(dealer, key)), [dealer, boards]);
  return (
    <section class="paper" aria-label="The set on paper">
      <h2>{title}</h2>
      <ol class="on-paper">
        {items.map((item) => (
          <li key={item.id}>
            <PracticeBoard recipe={item.board} turn={0} />
            {item.story.length > 0 && <p>{item.story.join(' ')}</p>}
            {item.found.map(({ question, ask, answer }) => (
              <p key={question}>
                {ask} {answer === 'yes' ? 'Yes.' : 'No.'}
              </p>
            ))}
            {item.asks.map(({ kind, ask, choices }) => (
              <div key={kind}>
                <p>
                  <b>{ask}</b>
                </p>
                <ol class="letters">
                  {choices.map(({ id, says }) => (
                    <li key={id}>{says}</li>
                  ))}
                </ol>
              </div>
            ))}
          </li>
        ))}
      </ol>
      <h2 class="back">{title}: the answers</h2>
      <ol>
        {items.map((item) => (
          <li key={item.id}>
            {rightLetters(item)} {item.name}. {item.rivals[0].sign.here}
          </li>
        ))}
      </ol>
    </section>
  );
};

/** The letter of each right answer, in the order asked. */
const rightLetters = ({ asks }: PracticeItem): string =>
  `${asks.map(({ choices }) => LETTERS[choices.findIndex(({ right }) => right)] ?? '').join(', ')}.`;
