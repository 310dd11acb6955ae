import { render } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';

/** A question before something is done, with what each answer does. */
export type Question = { readonly says: string; readonly yes: string; readonly no: string };

const AskDialog = ({ says, yes, no, answer }: Question & { answer: (yes: boolean) => void }) => {
  const dialog = useRef<HTMLDialogElement>(null);
  useLayoutEffect(() => dialog.current?.showModal(), []);
  const close = (value: string) => () => dialog.current?.close(value);
  return (
    <dialog
      ref={dialog}
      class="ask"
      aria-labelledby="ask-says"
      onClose={() => answer(dialog.current?.returnValue === 'yes')}
    >
      <p id="ask-says">{says}</p>
      <div class="acts">
        <button type="button" class="quiet" onClick={close('yes')}>
          {yes}
        </button>
        {/* The harmless answer comes first to the eye, and to the finger that pressed once too often. */}
        <button type="button" class="go" autofocus onClick={close('no')}>
          {no}
        </button>
      </div>
    </dialog>
  );
};

/** Asks in the page; Escape and leaving are a no. */
export const askIn = (host: HTMLElement, question: Question): Promise<boolean> =>
  new Promise((done) => {
    const dialog = document.createElement('div');
    host.append(dialog);
    const answer = (yes: boolean) => {
      render(null, dialog);
      dialog.remove();
      done(yes);
    };
    render(<AskDialog {...question} answer={answer} />, dialog);
  });
