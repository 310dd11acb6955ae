import { holds } from '#engine/condition.ts';
import { type Answer, withAnswer } from '#engine/index.ts';
import type { ConditionInput } from '#engine/model/condition.ts';
import type { QuestionId } from '#engine/model/ids.ts';
import { keepCase, readCase } from '../case/store.ts';
import { caseNow } from '../clock/case-now.ts';
import { wentForward } from '../shared/went-forward.ts';

type KnownRule = { readonly when: ConditionInput; readonly answer: Answer };

/** The answers to a question of the search for the flaw: keeps what is tapped, and passes over what is known. */
export class SeenElement extends HTMLElement {
  #stop = new AbortController();

  connectedCallback() {
    this.#stop = new AbortController();
    this.addEventListener('click', this.#keep, { signal: this.#stop.signal });
    void this.#passOver();
  }

  disconnectedCallback() {
    this.#stop.abort();
  }

  #keep = (event: Event) => {
    const strip = (event.target as Element).closest<HTMLElement>('[data-answer]');
    const answer = strip?.dataset['answer'] as Answer | undefined;
    if (answer) keepCase(withAnswer(readCase(), (this.dataset['question'] ?? '') as QuestionId, answer));
  };

  /** Someone who goes back wants to see the question again. Can't tell is asked again: she may know by now. */
  async #passOver() {
    if (!wentForward()) return;
    const on = await caseNow();
    const rules = JSON.parse(this.dataset['known'] ?? '[]') as KnownRule[];
    const given = on[this.dataset['question'] ?? '']?.value;
    const answer =
      given === 'yes' || given === 'no'
        ? given
        : rules.find((rule) => holds(rule.when, (fact) => on[fact]?.value) === 'yes')?.answer;
    const strip = this.querySelector<HTMLAnchorElement>(`[data-answer="${answer}"]`);
    if (answer && strip) location.replace(strip.href);
  }
}
