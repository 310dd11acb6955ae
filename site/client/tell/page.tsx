import { useMemo, useRef, useState } from 'preact/hooks';
import { Heard } from './heard.tsx';
import { LikelyFlaws } from './likely.tsx';
import { type Listening, understand } from './listen.ts';
import { NextQuestion } from './next.tsx';
import { isOfSomebodyElse, markAsOwn } from './own.ts';
import { PageFor } from './page-for.tsx';
import { ReplyToCopy } from './reply.tsx';
import { LONGEST, NOTHING_TOLD, readState, type TellState, writeState } from './state.ts';
import { Verdict } from './verdict.tsx';

/** Her words, what was understood, what to do now or the next question, the likeliest flaws, and a reply to send. */
export const TellPage = ({ listening }: { readonly listening: Listening }) => {
  const [state, setState] = useState<TellState>(() => readState(location.hash));
  const [others, setOthers] = useState(() => isOfSomebodyElse(state));
  const field = useRef<HTMLTextAreaElement>(null);
  const answers = useRef<HTMLDivElement>(null);
  const go = (next: TellState) => {
    history.replaceState(history.state, '', `#${writeState(next)}`);
    setState(next);
    markAsOwn(next);
  };
  const told = Boolean(state.text.trim()) || Object.keys(state.told).length > 0;
  const found = useMemo(() => (told ? understand(listening, state) : undefined), [listening, state, told]);
  const empty = () => {
    if (field.current) field.current.value = '';
    setOthers(false);
    go(NOTHING_TOLD);
    field.current?.focus();
  };
  const tellMore = (name: string, value: string) => {
    go({ ...state, told: { ...state.told, [name]: value }, off: state.off.filter((one) => one !== name) });
    answers.current?.focus();
  };
  const takeOff = (name: string) => {
    const { [name]: _, ...rest } = state.told;
    go({ ...state, told: rest, off: [...new Set([...state.off, name])] });
    answers.current?.focus();
  };
  return (
    <>
      {others && (
        <p class="of-others">
          Somebody else’s words and answers.{' '}
          <button type="button" onClick={empty}>
            Start your own
          </button>
        </p>
      )}
      <form
        class="say"
        onSubmit={(event) => {
          event.preventDefault();
          setOthers(false);
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
          maxLength={LONGEST}
          placeholder="e.g. second coat of satin poly over navy paint last night, cold garage, cloudy this morning"
          defaultValue={state.text}
        />
        <p class="acts">
          <button type="submit">Listen</button>
          {told && (
            <button type="button" class="quiet" onClick={empty}>
              Start anew
            </button>
          )}
        </p>
      </form>
      <div ref={answers} tabIndex={-1} class="understood" aria-live="polite">
        {found && (
          <>
            {state.text && <PageFor index={listening.index} text={state.text} />}
            <Verdict considered={found.considered} whileWet={listening.ear.whileWet} />
            <Heard heard={found.heard} told={state.told} mind={listening.ear.mind} takeOff={takeOff} />
            <NextQuestion
              considered={found.considered}
              pictured={listening.ear.pictured}
              tellMore={tellMore}
            />
            <LikelyFlaws considered={found.considered} boarded={listening.ear.boarded} />
            <ReplyToCopy answer={found.answer} />
          </>
        )}
      </div>
    </>
  );
};
