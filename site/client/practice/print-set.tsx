import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { PracticeItem, PracticeKey } from '#engine/practice.ts';
import { ownOrigin } from '../shared/own-host.ts';
import { PracticeBoard } from './board.tsx';
import { practiceSize } from './draw.ts';
import { type Dealer, deal } from './load.ts';

const LETTERS = 'ABCDE';
/** How often is looked whether all boards are drawn. */
const LOOK_MS = 200;

type Props = { readonly dealer: Dealer; readonly title: string; readonly boards: readonly PracticeKey[] };

/** The set on paper: boards with their answers to tick, and on the last sheet what is right. */
export const PrintSet = ({ dealer, title, boards }: Props) => {
  const [shown, setShown] = useState(false);
  const [drawing, setDrawing] = useState(false);
  const place = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (!drawing) return undefined;
    // A board takes about a second to draw: what is printed before is white.
    const look = setInterval(() => {
      if (place.current?.querySelector('canvas:not([data-drawn]), [data-part=leads-back]:empty')) return;
      setDrawing(false);
      print();
    }, LOOK_MS);
    return () => clearInterval(look);
  }, [drawing]);
  return (
    <>
      <button
        type="button"
        class="quiet print-set"
        disabled={drawing}
        onClick={() => {
          setShown(true);
          setDrawing(true);
        }}
      >
        <b>{drawing ? 'Drawing the boards …' : 'Print the set, with the answers on the back'}</b>
      </button>
      {shown && (
        <div class="paper" ref={place}>
          <PaperSet dealer={dealer} title={title} boards={boards} />
        </div>
      )}
    </>
  );
};

/** The code that leads back to this very set, whose boards stand in its address. */
const LeadsBack = () => {
  const place = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const { pathname, hash } = location;
    const put = async (): Promise<void> => {
      const { codeOf } = await import('../shared/code-of.ts');
      place.current?.replaceChildren(codeOf(new URL(pathname + hash, ownOrigin())));
    };
    // Without it the set is printed all the same, once it is known that it does not come.
    put().catch(() => place.current?.replaceChildren('Open the set by its link.'));
  }, []);
  return <div class="leads-back" data-part="leads-back" ref={place} />;
};

const PaperSet = ({ dealer, title, boards }: Props) => {
  const items = useMemo(() => boards.map((key) => deal(dealer, key)), [dealer, boards]);
  const { width, height } = practiceSize();
  return (
    <section aria-label="The set on paper">
      <LeadsBack />
      <h2>{title}</h2>
      <p>
        Each is seen in low light from the upper left. Tick what it is. The answers stand on the last sheet.
      </p>
      <p class="whose">Name</p>
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
      <ol class="of-answers">
        {items.map((item) => (
          <li key={item.id}>
            <PracticeBoard
              recipe={item.board}
              turn={0}
              called={item.name}
              width={width / 2}
              height={height / 2}
            />
            <div>
              <b>
                {rightLetters(item)} {item.name}
              </b>
              <p>
                {item.rivals[0].sign.ask} {item.rivals[0].sign.here}
              </p>
              <p>
                <i>{item.rivals[0].name}:</i> {item.rivals[0].sign.there}
              </p>
            </div>
          </li>
        ))}
      </ol>
    </section>
  );
};

/** The letter of each right answer, in the order asked. */
const rightLetters = ({ asks }: PracticeItem): string =>
  `${asks.map(({ choices }) => LETTERS[choices.findIndex(({ right }) => right)] ?? '').join(', ')}.`;
