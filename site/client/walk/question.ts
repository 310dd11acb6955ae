import { type Answer, readAddress, withAnswer, withStanding } from '#engine/index.ts';
import type { QuestionId } from '#engine/model/ids.ts';
import { nodeUrl, readNodePath } from '../../shared/urls.ts';
import { addressFor } from '../../shared/way.ts';
import { TOLD_EVENT } from '../case/facts-changed.ts';
import { canKeep, keepCase, readCase } from '../case/store.ts';
import { caseNow } from '../clock/case-now.ts';
import { note } from '../shared/note.ts';
import { walkKnowledge } from '../shared/walk-knowledge.ts';
import { wentForward } from '../shared/went-forward.ts';

/** The answers of a question's page: keeps what is tapped, and passes over a question that the case answers. */
export class QuestionElement extends HTMLElement {
  #stop = new AbortController();

  connectedCallback() {
    this.#stop = new AbortController();
    this.addEventListener('click', this.#keep, { signal: this.#stop.signal });
    if (!canKeep())
      note(this, 'This browser keeps no notes. The answers stand in the address, so go on as usual.');
    this.#markGiven();
    void this.#goOn(wentForward());
    document.addEventListener(TOLD_EVENT, () => void this.#goOn(true), { signal: this.#stop.signal });
  }

  disconnectedCallback() {
    this.#stop.abort();
  }

  #keep = (event: Event) => {
    const strip = (event.target as Element).closest<HTMLElement>('[data-answer]');
    const answer = strip?.dataset['answer'] as Answer | undefined;
    if (answer) keepCase(withAnswer(readCase(), this.#question, answer));
  };

  get #question() {
    return (this.dataset['question'] ?? '') as QuestionId;
  }

  #markGiven() {
    const given = readCase()[this.#question]?.value;
    for (const strip of this.querySelectorAll<HTMLElement>('[data-answer]'))
      if (strip.dataset['answer'] === given)
        strip.append(Object.assign(document.createElement('i'), { textContent: 'Your answer so far' }));
  }

  /** Someone who goes back wants to see the question again, so only a way forward passes over it. */
  async #goOn(forward: boolean) {
    if (!forward) return;
    const on = await caseNow();
    const place = readNodePath(location.pathname);
    if (!place || !Object.keys(on).length) return;
    const known = await walkKnowledge(place.defect).catch(() => undefined);
    if (!known) return;
    const { stage, answers } = readAddress(known, place.segments);
    const here = answers.reduce(
      (so, [question, answer]) => withAnswer(so, question as QuestionId, answer),
      stage ? withStanding(on, stage) : on,
    );
    const address = addressFor(known, place.defect, stage, here);
    if (address.length > place.segments.length || (place.segments[0] === 'cause' && address[0] !== 'cause'))
      location.replace(nodeUrl(place.defect, address));
  }
}
