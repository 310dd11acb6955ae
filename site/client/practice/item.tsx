import { useEffect, useRef, useState } from 'preact/hooks';
import { type PracticeItem, SOUND } from '#engine/practice.ts';
import { defectUrl } from '../../shared/urls.ts';
import { PracticeBoard, TurnLight } from './board.tsx';

type Props = {
  readonly item: PracticeItem;
  /** Told once, when everything was answered: what was answered wrong first, or nothing. */
  readonly onAnswered: (wrong: string | undefined) => void;
  readonly onNext: (() => void) | undefined;
  readonly nextSays: string;
  /** How the board is called, where it came after another: it is brought into view, and named to who hears the page. */
  readonly follows: string | undefined;
};

const MARKS = { right: 'Right', wrong: 'Not this', missed: 'This one' } as const;

/** One practice board: the picture, what is told of it, its questions one after another, and what decides. */
export const PracticeItemView = ({ item, onAnswered, onNext, nextSays, follows }: Props) => {
  const [turn, setTurn] = useState(0);
  const [taken, setTaken] = useState<readonly string[]>([]);
  const whole = useRef<HTMLElement>(null);
  const judged = useRef<HTMLDivElement>(null);
  const done = taken.length === item.asks.length;
  // What it was taken for is laid beside it; the nearest where it was taken for nothing else.
  const rival = item.rivals.find(({ flaw }) => taken.includes(flaw)) ?? item.rivals[0];

  // The button that was tapped is gone, and with it the place on the page.
  useEffect(() => {
    if (!follows) return;
    whole.current?.focus({ preventScroll: true });
    whole.current?.scrollIntoView();
  }, [follows]);
  useEffect(() => {
    judged.current?.focus();
  }, [taken.length]);

  const take = (id: string) => {
    const next = [...taken, id];
    setTaken(next);
    if (next.length < item.asks.length) return;
    const wrong = item.asks.flatMap(({ choices }, index) =>
      choices.some((one) => one.id === next[index] && !one.right) ? [next[index]] : [],
    );
    onAnswered(wrong[0]);
  };

  return (
    <article class="item" ref={whole} tabIndex={-1} aria-label={follows}>
      <div class="look">
        <PracticeBoard recipe={item.board} turn={turn} called={done ? item.name : undefined}>
          {done && <figcaption>{item.name}</figcaption>}
        </PracticeBoard>
        <TurnLight turn={turn} onTurn={setTurn} />
      </div>
      <div class="words">
        {(item.story.length > 0 || item.found.length > 0) && (
          <section class="told" aria-label="What is told">
            {item.story.length > 0 && <p class="post">{item.story.join(' ')}</p>}
            {item.found.length > 0 && (
              <ul class="found">
                {item.found.map(({ question, ask, answer, says }) => (
                  <li key={question}>
                    {ask} <b>{answer === 'yes' ? 'Yes.' : 'No.'}</b> {says}
                  </li>
                ))}
              </ul>
            )}
          </section>
        )}
        {item.asks.slice(0, taken.length + 1).map(({ kind, ask, choices }, index) => {
          const chosen = taken[index];
          const answer = choices.find(({ id }) => id === chosen);
          const right = choices.find((one) => one.right);
          // Some wrong answers are refused in the words that begin the right one's.
          const said = answer && right?.because.startsWith(answer.because) ? right.because : answer?.because;
          return (
            <section key={kind} class="asked">
              <h2>{ask}</h2>
              <ol class="strips answers">
                {choices.map(({ id, says, right: isRight }) => {
                  const mark =
                    chosen === undefined
                      ? undefined
                      : id === chosen
                        ? isRight
                          ? 'right'
                          : 'wrong'
                        : isRight
                          ? 'missed'
                          : undefined;
                  return (
                    <li key={id}>
                      <button
                        type="button"
                        class={`tape strip ${mark ?? ''}`}
                        disabled={chosen !== undefined}
                        onClick={() => take(id)}
                      >
                        <b>{says}</b>
                        {mark && <span>{MARKS[mark]}</span>}
                      </button>
                    </li>
                  );
                })}
              </ol>
              {answer && (
                <div class="judged" role="status" tabIndex={-1} ref={judged}>
                  <p>
                    <b>{answer.right ? 'Right.' : `No. It is: ${right?.says ?? ''}.`}</b>{' '}
                    {/* Which sign tells them apart is told with both boards below. */}
                    {!(done && kind === 'flaw' && !answer.right) && said}
                  </p>
                  {!answer.right && kind !== 'flaw' && right && said !== right.because && (
                    <p>{right.because}</p>
                  )}
                </div>
              )}
            </section>
          );
        })}
        {done && onNext && (
          <p class="onward">
            <button type="button" class="go" onClick={onNext}>
              {nextSays}
            </button>
          </p>
        )}
        {done && (
          <section class="decides">
            <h2>What decides</h2>
            <p>{rival.sign.ask}</p>
            <div class="beside">
              {(
                [
                  [item.name, rival.own, rival.sign.here],
                  [rival.name, rival.board, rival.sign.there],
                ] as const
              ).map(([name, recipe, shows]) => (
                <div key={name}>
                  <PracticeBoard recipe={recipe} turn={turn} called={name}>
                    <figcaption>{name}</figcaption>
                  </PracticeBoard>
                  <p>{shows}</p>
                </div>
              ))}
              <TurnLight turn={turn} onTurn={setTurn} />
            </div>
            {item.flaw !== SOUND && (
              <p>
                <a href={defectUrl(item.flaw)}>All about it: {item.name}</a>
              </p>
            )}
          </section>
        )}
      </div>
    </article>
  );
};
