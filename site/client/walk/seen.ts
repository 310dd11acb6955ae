import * as v from 'valibot';
import { holds } from '#engine/condition.ts';
import type { ConditionInput } from '#engine/model/condition.ts';
import { readCase } from '../case/store.ts';
import { caseNow } from '../clock/case-now.ts';
import { openedAfresh } from '../shared/opened-afresh.ts';
import { objectWith, readPageData } from '../shared/page-data.ts';
import { tellAtCheck } from './at-check.ts';
import { keepTapped, questionOf } from './tapped.ts';

const KNOWN = v.array(v.object({ when: objectWith<ConditionInput>(), answer: v.picklist(['yes', 'no']) }));

/** The answers to a question of the search for the flaw: keeps what is tapped, and passes over what is known. */
export class SeenElement extends HTMLElement {
  #stop = new AbortController();

  connectedCallback() {
    this.#stop = new AbortController();
    this.addEventListener('click', keepTapped, { signal: this.#stop.signal });
    void tellAtCheck(this, readCase());
    void this.#passOver();
  }

  disconnectedCallback() {
    this.#stop.abort();
  }

  /** Someone who goes back wants to see the question again. Can't tell is asked again: she may know by now. */
  async #passOver() {
    if (!openedAfresh()) return;
    const on = await caseNow();
    const given = on[questionOf(this) ?? '']?.value;
    const follows = readPageData(KNOWN, this.dataset['known'] ?? '[]').find(
      (rule) => holds(rule.when, (fact) => on[fact]?.value) === 'yes',
    );
    const answer = given === 'yes' || given === 'no' ? given : follows?.answer;
    const strip = this.querySelector<HTMLAnchorElement>(`a[data-answer="${answer}"]`);
    if (answer && strip) location.replace(strip.href);
  }
}
