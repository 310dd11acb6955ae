import type { ByTime, Considered } from '#engine/hear.ts';
import { STANDINGS } from '#engine/model/stage.ts';
import { choices } from '../../shared/choices.ts';
import { STAGE_WORDS, stageAsked } from '../../shared/stages.ts';
import { boardUrl, nowUrl, SEARCH, seeUrl } from '../../shared/urls.ts';
import type { RunningCoat } from './running.ts';
import { factWords } from './words.ts';

type Props = {
  readonly considered: Considered;
  readonly pictured: readonly string[];
  /** The coat on the clock, which may be the one that is told of. */
  readonly coat: RunningCoat | undefined;
  readonly takePiece: (coat: RunningCoat) => Promise<void>;
  readonly tellMore: (name: string, value: string) => void;
  /** How dry it mostly is by the time that was told. */
  readonly time: ByTime | undefined;
  /** The words are somebody else's, and the reply asks them: whoever answers may know it or not. */
  readonly ofAnother: boolean;
};

type Choice = { readonly value: string; readonly says: string; readonly tell?: string; readonly by?: string };

const AGES: readonly Choice[] = Object.entries(choices.age.values).map(([value, says]) => ({
  // Bare wood, or only her own coats: nothing that is old.
  value: value === 'none' ? 'since-1993' : value,
  says,
}));
const STAGES: readonly Choice[] = STANDINGS.map((value) => ({
  value,
  says: stageAsked(value),
  tell: STAGE_WORDS[value].tell,
}));
/** What fits the time that was told stands first and says so, then the others by how near they are. */
const stagesBy = (time: ByTime | undefined): readonly Choice[] => {
  if (!time) return STAGES;
  const { fact, value: hours, range } = time.laid;
  const since = factWords({}, fact, hours, range);
  const at = STAGES.findIndex(({ value }) => value === time.stage);
  return STAGES.map((one, place) => ({
    ...one,
    way: Math.abs(place - at),
    ...(place === at && { by: `${since}: mostly here.` }),
  })).toSorted((a, b) => a.way - b.way);
};
const ANSWERS: readonly Choice[] = [
  { value: 'yes', says: 'Yes' },
  { value: 'no', says: 'No' },
];

/** The one thing that would tell most now; nothing where all is told that can change what to do. */
export const NextQuestion = ({
  considered: { next },
  pictured,
  coat,
  takePiece,
  tellMore,
  time,
  ofAnother,
}: Props) => {
  if (!next) return null;
  const { name, ask, how, list } = {
    stage: () => ({
      name: 'stage',
      ask: 'How dry is it?',
      how: 'Don’t test the piece. Judge by the clock and the can, or by a drip on scrap paper.',
      list: stagesBy(time),
    }),
    age: () => ({
      name: 'age',
      ask: choices.age.ask,
      how: 'Old paint may hold lead. Unknown counts as yes.',
      list: AGES,
    }),
    question: () =>
      next.kind === 'question'
        ? { name: next.question, ask: next.ask, how: next.how, list: ANSWERS }
        : { name: '', ask: '', how: '', list: [] },
  }[next.kind]();
  return (
    <section class="next">
      <h2>{ofAnother ? `If you know: ${ask.charAt(0).toLowerCase()}${ask.slice(1)}` : ask}</h2>
      <p>{how}</p>
      {pictured.includes(name) && (
        <div class="pair">
          {(['yes', 'no'] as const).map((side) => (
            <figure key={side} class="board">
              <img src={boardUrl(`questions/${name}-${side}`, 'raking')} alt="" width={480} height={360} />
              <figcaption class="label">{side === 'yes' ? 'Yes' : 'No'}</figcaption>
            </figure>
          ))}
        </div>
      )}
      <ul class="strips">
        {coat && next.kind === 'stage' && (
          <li>
            <button type="button" class="tape strip" onClick={() => void takePiece(coat)}>
              <b>{`It is ${coat.piece}, now ${coat.standing}`}</b> <span>{coat.verdict}</span>
            </button>
          </li>
        )}
        {list.map(({ value, says, tell, by }) => (
          <li key={says}>
            <button type="button" class="tape strip" onClick={() => tellMore(name, value)}>
              <b>{says}</b>{' '}
              {tell && (
                <span>
                  {by && <b class="by">{by} </b>}
                  {tell}
                </span>
              )}
            </button>
          </li>
        ))}
        {next.kind === 'question' && (
          <li>
            <button type="button" class="quiet" onClick={() => tellMore(name, 'unsure')}>
              <b>Can’t tell</b>
            </button>
          </li>
        )}
      </ul>
    </section>
  );
};

/** Where nothing of a coat was heard: the pages that fit the words. */
export const SearchFor = ({ words }: { readonly words: string }) => (
  <section class="next">
    <h2>No coat and no flaw heard in that</h2>
    <ul class="strips">
      <li>
        <a class="tape strip" href={`${SEARCH}?${new URLSearchParams({ q: words })}`}>
          <b>Pages that fit these words</b> <span>Or tap Change, and say what you see on the coat.</span>
        </a>
      </li>
      <li>
        <a class="quiet" href={seeUrl([])}>
          <b>Walk me through it</b>
        </a>
      </li>
    </ul>
  </section>
);

/** Nothing more is to be asked here, and what hands do hangs on the cause: the page of the flaw finds that. */
export const LeadOn = ({ considered: { likely, stage, overdue } }: { readonly considered: Considered }) => {
  const [first] = likely;
  if (!first) return null;
  return (
    <section class="next">
      <h2>Most likely: {first.name}</h2>
      <ul class="strips">
        <li>
          <a class="tape strip" href={nowUrl(first.defect, overdue ? 'overdue' : stage)}>
            <b>What to do about it</b> <span>What you told goes along. A few questions find the cause.</span>
          </a>
        </li>
      </ul>
    </section>
  );
};
