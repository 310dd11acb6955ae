import { useEffect, useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks';
import { answerTo, byTime, hearsNothing, isCall, LONGEST } from '#engine/hear.ts';
import { ruleUrl } from '../../shared/urls.ts';
import { coatMayRun } from '../clock/key.ts';
import { late, unlessOffline } from '../shared/fetch-json.ts';
import { Heard } from './heard.tsx';
import { keepTold } from './keep-case.ts';
import { LikelyFlaws } from './likely.tsx';
import { type Listening, listenTo } from './listen.ts';
import { LeadOn, NextQuestion, SearchFor } from './next.tsx';
import { isOfSomebodyElse, markAsOwn } from './own.ts';
import { PageFor } from './page-for.tsx';
import { ReplyToCopy } from './reply.tsx';
import type { RunningCoat } from './running.ts';
import { NOTHING_TOLD, readState, type TellState, writeState } from './state.ts';
import { isFirm, Verdict } from './verdict.tsx';
import { tellsOfAnother, wantsReply } from './words.ts';

/** Her words, what was understood, what to do now or the next question, the likeliest flaws, and a reply to send. */
export const TellPage = ({ listening }: { readonly listening: Listening }) => {
  const [state, setState] = useState<TellState>(() => readState(location.hash));
  const [others, setOthers] = useState(() => isOfSomebodyElse(state));
  const [changing, setChanging] = useState(false);
  const [pasted, setPasted] = useState(false);
  const field = useRef<HTMLTextAreaElement>(null);
  const answers = useRef<HTMLDivElement>(null);
  /** Each answer is a step of its own: going back takes the last one back, and loses neither words nor the others. */
  const go = (next: TellState) => {
    if (writeState(next) !== writeState(state)) history.pushState(null, '', `#${writeState(next)}`);
    setState(next);
    markAsOwn(next);
  };
  useEffect(() => {
    const follow = () => {
      const there = readState(location.hash);
      if (field.current) field.current.value = there.text;
      setState(there);
      markAsOwn(there);
    };
    addEventListener('popstate', follow);
    return () => removeEventListener('popstate', follow);
  }, []);
  const [running, setRunning] = useState<RunningCoat>();
  useEffect(() => {
    void unlessOffline(
      (async () => {
        if (!(await coatMayRun())) return;
        const { runningCoat } = await late(() => import('./running.ts'));
        setRunning(await runningCoat());
      })(),
    );
  }, []);
  /** Her own coat says nothing of somebody else's. */
  const coat = others || tellsOfAnother(state.text) ? undefined : running;
  const told = Boolean(state.text.trim()) || Object.keys(state.told).length > 0;
  const found = useMemo(() => (told ? listenTo(listening, state) : undefined), [listening, state, told]);
  const empty = () => {
    if (field.current) field.current.value = '';
    setOthers(false);
    setPasted(false);
    go(NOTHING_TOLD);
    field.current?.focus();
  };
  /** What her tap has changed must be seen: the verdict comes to the top, or what is asked next. */
  const tapped = useRef(false);
  const answered = (next: TellState) => {
    tapped.current = true;
    answers.current?.focus({ preventScroll: true });
    go(next);
  };
  useLayoutEffect(() => {
    if (!tapped.current) return;
    tapped.current = false;
    // Stops and the verdict stand before all else; where there is neither, what is asked is the first.
    const place = answers.current?.querySelector('section');
    place?.scrollIntoView({ block: 'start', behavior: 'instant' });
  }, [state]);
  const tellMore = (name: string, value: string) => {
    answered({
      ...state,
      told: { ...state.told, [name]: value },
      off: state.off.filter((one) => one !== name),
    });
  };
  /** It is the piece on the clock: what its card and the clock know of it goes along. */
  const takePiece = async (piece: RunningCoat) => {
    const known = await unlessOffline(
      (async () => (await late(() => import('./of-piece.ts'))).takeInHand(piece))(),
    );
    answered({ ...state, told: { ...known, ...state.told, stage: piece.stage } });
  };
  const takeOff = (name: string) => {
    const { [name]: _, ...rest } = state.told;
    answered({ ...state, told: rest, off: [...new Set([...state.off, name])] });
  };
  const time = found && byTime(found.heard, listening.ear.dries);
  /** What has happened can not wait; the film can. */
  const calls = found?.considered.warnings.some(isCall) ?? false;
  const which = found?.which !== undefined;
  const page = which
    ? { url: found.which ?? '', title: 'Which top coat for it?', says: 'One kind, with its reason' }
    : found?.page;
  const answer = found && !which ? answerTo(found.considered, found.heard) : undefined;
  /** A stop stands before any page; the page that tells of it is linked in it. */
  const stops = found?.considered.warnings.some(({ isStop, atOnce }) => isStop || atOnce?.length) ?? false;
  const isTold = found?.considered.warnings.some(({ id }) => ruleUrl(id) === page?.url) ?? false;
  const firm = found !== undefined && isFirm(found.considered);
  /** An answer to send is what is wanted: whose piece it is may know what is asked, whoever answers may not. */
  const toSend = others || wantsReply(state.text, pasted);
  /** What is settled can be sent on at once; where she is asked something yet, that comes first. */
  const first = (firm && !found.considered.next) || toSend || calls || Boolean(page);
  const silent = found !== undefined && !which && hearsNothing(found);
  const { questions } = listening.ear.mind.matrix;
  /** Something is told of what the film shows: a flaw, a sign in the words, or an answer that was tapped. */
  const sees =
    found !== undefined &&
    (found.named.length > 0 ||
      found.heard.signs.length > 0 ||
      found.heard.stillDrying !== undefined ||
      found.considered.overdue ||
      questions.some((question) => question in state.told));
  /** What is wrong was not told: every flaw would be a guess, so the groups of the first page ask what she sees. */
  const unseen = found !== undefined && !sees && !calls && !page && !silent && !which;
  /** Flaws that are named and have no verdict in common stand before any question that would tell one from the other. */
  const each = found !== undefined && found.named.length > 1 && !firm && !page;
  const flaws = found && sees && !calls && !page && !silent && (
    <LikelyFlaws
      considered={found.considered}
      named={found.named}
      boarded={listening.ear.boarded}
      each={each}
      later={found.heard.stillDrying?.lead}
    />
  );
  const reply = found && (
    <ReplyToCopy answer={found.answer} open={toSend || pasted || tellsOfAnother(state.text)} />
  );
  const change = () => {
    setChanging(true);
    requestAnimationFrame(() => field.current?.focus());
  };
  return (
    <>
      {told && !changing && (
        <p class="told-line">
          {state.text && <q>{state.text}</q>}
          <button type="button" onClick={change}>
            Change
          </button>
        </p>
      )}
      {others && (
        <p class="of-others">
          Somebody else’s words.{' '}
          <button type="button" onClick={empty}>
            Start your own
          </button>
        </p>
      )}
      <form
        class={told && !changing ? 'say is-told' : 'say'}
        onSubmit={(event) => {
          event.preventDefault();
          setOthers(false);
          setChanging(false);
          go({ ...NOTHING_TOLD, text: field.current?.value.trim() ?? '' });
          answers.current?.focus();
        }}
      >
        <label for="say">
          What it is, what you did and when, what you see. Or paste what somebody wrote.
        </label>
        <textarea
          id="say"
          ref={field}
          rows={4}
          placeholder="e.g. second coat of satin poly over navy paint last night, cold garage, cloudy this morning"
          defaultValue={state.text}
          onPaste={() => setPasted(true)}
        />
        <p class="acts">
          <button type="submit">Tell me</button>
          {told && (
            <button type="button" class="quiet" onClick={empty}>
              Start anew
            </button>
          )}
        </p>
      </form>
      <div
        ref={answers}
        tabIndex={-1}
        class="understood"
        aria-live="polite"
        onClickCapture={(event) => {
          if (!others) keepTold(event, listening.ear.mind, state, found);
        }}
      >
        {found && (
          <>
            {found.unread && (
              <p class="fault" role="status">
                {`Only the first ${LONGEST.toLocaleString('en-US')} letters were read. Paste the rest by itself.`}
                {found.unread.harm && (
                  <>
                    {' '}
                    The rest tells of harm: <a href={ruleUrl('emergency')}>if it has already happened</a>.
                  </>
                )}
              </p>
            )}
            {page && !calls && !stops && <PageFor {...page} answer={answer} />}
            <Verdict
              considered={found.considered}
              named={found.named}
              heard={found.heard}
              mind={listening.ear.mind}
              ear={listening.ear}
              coat={coat}
              ofFilm={!page && (found.named.length > 0 || found.heard.signs.length > 0)}
              mayDry={!time}
            />
            {page && !calls && stops && !isTold && <PageFor {...page} answer={answer} />}
            {first && reply}
            {each && flaws}
            {silent && <SearchFor words={state.text} />}
            {!calls && !page && !silent && (
              <NextQuestion
                considered={found.considered}
                pictured={listening.ear.pictured}
                coat={coat}
                takePiece={takePiece}
                tellMore={tellMore}
                time={time}
                ofAnother={toSend}
              />
            )}
            {sees && !calls && !page && !silent && !each && !firm && !found.considered.next && (
              <LeadOn considered={found.considered} />
            )}
            <Heard
              heard={found.heard}
              named={found.named}
              told={state.told}
              mind={listening.ear.mind}
              takeOff={takeOff}
            />
            {!each && flaws}
            {!first && !silent && reply}
            {unseen && <h2 class="what-looks-wrong">What looks wrong with it?</h2>}
          </>
        )}
      </div>
    </>
  );
};
