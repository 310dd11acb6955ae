import { holds } from '#engine/condition.ts';
import { type Answer, withAnswer } from '#engine/index.ts';
import type { ConditionInput } from '#engine/model/condition.ts';
import type { QuestionId } from '#engine/model/ids.ts';
import { keepCase, readCase } from './case-store.ts';

type KnownRule = { readonly when: ConditionInput; readonly answer: Answer };

/** The answers to a question of the search for the flaw: keeps what is tapped, and passes over what is known. */
export class SeenElement extends HTMLElement {
  #stop = new AbortController();

  connectedCallback() {
    this.#stop = new AbortController();
    this.addEventListener('click', this.#keep, { signal: this.#stop.signal });
    this.#passOver();
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
  #passOver() {
    const [entry] = performance.getEntriesByType('navigation') as PerformanceNavigationTiming[];
    if (entry?.type !== 'navigate') return;
    const on = readCase();
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
