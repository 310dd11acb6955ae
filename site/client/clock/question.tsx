import { render } from 'preact';

/** A question that has to be answered before a coat goes on the clock. The first answer is the likely one. */
export type ClockQuestion<A extends string> = {
  readonly title: string;
  readonly says: readonly string[];
  readonly answers: readonly (readonly [answer: A, words: string])[];
};

/** Asks in the page, beside what is asked about, and keeps one question at a time. */
export class Questions {
  readonly #host: HTMLElement;
  #leave: (() => void) | undefined;

  constructor(host: HTMLElement) {
    this.#host = host;
  }

  /** The answer; nothing where another question took its place. */
  ask<A extends string>({ title, says, answers }: ClockQuestion<A>): Promise<A | undefined> {
    this.#leave?.();
    return new Promise((done) => {
      const answer = (given?: A) => {
        this.#leave = undefined;
        render(null, this.#host);
        done(given);
      };
      this.#leave = () => answer();
      render(
        <section class="ask" role="alertdialog" aria-labelledby="clock-ask" aria-describedby="clock-ask-says">
          <h3 id="clock-ask" tabIndex={-1}>
            {title}
          </h3>
          <div id="clock-ask-says">
            {says.map((text) => (
              <p key={text}>{text}</p>
            ))}
          </div>
          <p class="acts">
            {answers.map(([value, words]) => (
              <button
                key={value}
                type="button"
                class="quiet"
                data-answer={value}
                onClick={() => answer(value)}
              >
                {words}
              </button>
            ))}
          </p>
        </section>,
        this.#host,
      );
      this.#host.querySelector<HTMLElement>('h3')?.focus();
    });
  }
}
