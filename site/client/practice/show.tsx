import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { separatedBy } from '#engine/index.ts';
import type { BoardRecipe } from '#engine/model/board.ts';
import { LEARN } from '../../shared/urls.ts';
import { PracticeBoard, TurnLight } from './board.tsx';
import { Choice } from './choice.tsx';
import { FlawOptions } from './flaw-options.tsx';
import { canDeal, type Dealer, deal } from './load.ts';
import { readLink } from './state.ts';

/** One thing on the screen: what is asked, and what is told after a key. */
type Slide = {
  readonly ask: string;
  /** Boards at once, and those that come with the answer. */
  readonly boards: readonly (readonly [name: string, recipe: BoardRecipe])[];
  readonly hidden?: readonly (readonly [name: string, recipe: BoardRecipe])[];
  readonly says: readonly string[];
};

const BIG_WIDTH = 720;
const BIG_HEIGHT = 540;
const ASKED = 'What is it?';

const ofFlaw = ({ known }: Dealer, id: string): readonly Slide[] => {
  const flaw = known.get('defect', id);
  const own = flaw.boards.map(
    (recipe): Slide => ({
      ask: ASKED,
      boards: [[flaw.name, recipe]],
      says: [flaw.name, flaw.looks],
    }),
  );
  const [first] = flaw.boards;
  const beside = flaw['look-alikes'].flatMap((other): Slide[] => {
    const twin = known.get('defect', other);
    const [board] = twin.boards;
    const [sign] = separatedBy(flaw, twin);
    if (!first || !board || !sign) return [];
    const { ask, [sign.a]: here, [sign.b]: there } = known.get('question', sign.question);
    return [
      {
        ask: 'Which is which?',
        boards: [
          [flaw.name, first],
          [twin.name, { ...board, 'width-mm': first['width-mm'] }],
        ],
        says: [ask, `${flaw.name}: ${here}`, `${twin.name}: ${there}`],
      },
    ];
  });
  return [...own, ...beside];
};

const ofQuestion = ({ known }: Dealer, id: string): readonly Slide[] => {
  const { ask, boards, yes, no } = known.get('question', id);
  return boards
    ? [
        {
          ask,
          boards: [
            ['Yes', boards.yes],
            ['No', boards.no],
          ],
          says: [`Yes: ${yes}`, `No: ${no}`],
        },
      ]
    : [];
};

const slidesOf = (dealer: Dealer, hash: string): readonly Slide[] => {
  const given = new URLSearchParams(hash.replace(/^#/, ''));
  const flaw = given.get('flaw') ?? '';
  const question = given.get('question') ?? '';
  if (dealer.known.has('defect', flaw)) return ofFlaw(dealer, flaw);
  if (dealer.known.has('question', question)) return ofQuestion(dealer, question);
  const dealt = readLink(hash).boards.filter((key) => canDeal(dealer, key));
  // An address that asks for nothing begins with a flaw that everybody meets.
  const common = dealer.known.defects.find(({ often }) => often === 'common');
  if (!dealt.length && common) return ofFlaw(dealer, common.id);
  return dealt.map((key) => {
    const { name, story, rivals, verdict } = deal(dealer, key);
    const [rival] = rivals;
    return {
      ask: story.length ? story.join(' ') : ASKED,
      boards: [[name, rival.own] as const],
      hidden: [[rival.name, rival.board] as const],
      says: [
        name,
        `${rival.sign.ask} ${rival.sign.here} ${rival.name}: ${rival.sign.there}`,
        ...(verdict ? [`${verdict.say}. ${verdict.why}`] : []),
      ],
    };
  });
};

/** Shows the boards alone on the whole screen, or gives it back. */
const fill = (stage: HTMLElement | null): Promise<void> | undefined =>
  document.fullscreenElement ? document.exitFullscreen() : stage?.requestFullscreen();

/** Boards for a room: large, turned by keys, and told only when asked. */
export const ShowPage = ({ dealer }: { readonly dealer: Dealer }) => {
  const [hash, setHash] = useState(location.hash);
  const [at, setAt] = useState(0);
  const [told, setTold] = useState(false);
  const [turn, setTurn] = useState(0);
  const stage = useRef<HTMLDivElement>(null);
  const slides = useMemo(() => slidesOf(dealer, hash), [dealer, hash]);
  const slide = slides[Math.min(at, slides.length - 1)];
  useEffect(() => {
    const follow = () => {
      setHash(location.hash);
      setAt(0);
      setTold(false);
    };
    addEventListener('hashchange', follow);
    return () => removeEventListener('hashchange', follow);
  }, []);
  const go = (by: number) => {
    setAt((now) => Math.min(slides.length - 1, Math.max(0, now + by)));
    setTold(false);
  };
  useEffect(() => {
    const keys: Readonly<Record<string, () => void>> = {
      ArrowRight: () => go(1),
      ArrowLeft: () => go(-1),
      ArrowUp: () => setTurn((now) => Math.min(1, now + 0.1)),
      ArrowDown: () => setTurn((now) => Math.max(0, now - 0.1)),
      Enter: () => setTold((now) => !now),
    };
    const press = (event: KeyboardEvent) => {
      const act = keys[event.key];
      const busy =
        event.target instanceof Element &&
        event.target.closest('input, select, textarea, button, a, summary');
      if (!act || busy || event.altKey || event.ctrlKey || event.metaKey) return;
      event.preventDefault();
      act();
    };
    addEventListener('keydown', press);
    return () => removeEventListener('keydown', press);
  });
  const asked = new URLSearchParams(hash.slice(1));
  // What a lone board was asked by gives way to its name, so that the room reads the answer where it read the question.
  const lone = slide?.boards.length === 1 ? slide.boards[0]?.[0] : undefined;
  return (
    <>
      {slide && (
        <div class={`stage${slide.boards.length === 1 && !(told && slide.hidden) ? ' one' : ''}`} ref={stage}>
          <h2 aria-live="polite">{(told && lone) || slide.ask}</h2>
          <div class="big">
            {[...slide.boards, ...((told && slide.hidden) || [])].map(([name, recipe]) => (
              <PracticeBoard
                key={`${at} ${name}`}
                recipe={recipe}
                turn={turn}
                width={BIG_WIDTH}
                height={BIG_HEIGHT}
                called={told ? name : undefined}
              >
                {told && !(lone && !slide.hidden) && <figcaption>{name}</figcaption>}
              </PracticeBoard>
            ))}
          </div>
          <div class="told-big" role="status">
            {/* The name of a lone board stands at the head already. */}
            {told && slide.says.filter((line) => line !== lone).map((line) => <p key={line}>{line}</p>)}
          </div>
          <p class="acts">
            {slides.length > 1 && (
              <>
                <button type="button" class="quiet" onClick={() => go(-1)} disabled={at === 0}>
                  <b>Back</b>
                </button>
                <span>
                  {at + 1} of {slides.length}
                </span>
                <button type="button" class="quiet" onClick={() => go(1)} disabled={at >= slides.length - 1}>
                  <b>Next</b>
                </button>
              </>
            )}
            <button type="button" class="go" onClick={() => setTold(!told)}>
              {told ? 'Hide the answer' : 'Show the answer'}
            </button>
          </p>
          <TurnLight turn={turn} onTurn={setTurn} />
          <p class="ways">
            {document.fullscreenEnabled && (
              <button type="button" class="quiet" onClick={() => void fill(stage.current)}>
                <b>Full screen</b>
              </button>
            )}
            <a class="quiet leave-show" href={LEARN}>
              <b>Leave</b>
            </a>
          </p>
          <p class="small keys">
            Keys: left and right for the boards, up and down for the light, Enter for the answer.
          </p>
        </div>
      )}
      <form class="choose" onSubmit={(event) => event.preventDefault()}>
        <p>Or choose what to show: its boards follow each other on the screen above.</p>
        <Choice
          label="A flaw, with what it is mistaken for"
          value={asked.get('flaw') ?? ''}
          choose={(id) => {
            location.hash = `flaw=${id}`;
          }}
          none="Choose"
        >
          <FlawOptions of={dealer} />
        </Choice>
        <Choice
          label="A question, yes beside no"
          value={asked.get('question') ?? ''}
          choose={(id) => {
            location.hash = `question=${id}`;
          }}
          none="Choose"
          of={dealer.known.questions.filter(({ boards }) => boards).map(({ id, ask }) => [id, ask])}
        />
      </form>
    </>
  );
};
