import { readAddress, withStanding } from '#engine/index.ts';
import { nodeUrl, readNodePath } from '../../shared/urls.ts';
import { addressFor } from '../../shared/way.ts';
import { TOLD_EVENT } from '../case/facts-changed.ts';
import { canKeep, readCase } from '../case/store.ts';
import { caseNow } from '../clock/case-now.ts';
import { element, statusLine } from '../shared/element.ts';
import { openedAfresh } from '../shared/opened-afresh.ts';
import { walkKnowledge } from '../shared/walk-knowledge.ts';
import { tellAtCheck } from './at-check.ts';
import { keepTapped, questionOf, withAnswers } from './tapped.ts';

/** The answers of a question's page: keeps what is tapped, and passes over a question that the case answers. */
export class QuestionElement extends HTMLElement {
  #stop = new AbortController();

  connectedCallback() {
    this.#stop = new AbortController();
    this.addEventListener('click', keepTapped, { signal: this.#stop.signal });
    if (!canKeep())
      this.append(
        statusLine(
          'This browser keeps no notes. The answers stand in the address, so go on as usual.',
          'small',
        ),
      );
    this.#markGiven();
    void tellAtCheck(this, readCase());
    void this.#goOn(openedAfresh());
    document.addEventListener(
      TOLD_EVENT,
      () => {
        void tellAtCheck(this, readCase());
        void this.#goOn(true);
      },
      { signal: this.#stop.signal },
    );
  }

  disconnectedCallback() {
    this.#stop.abort();
  }

  #markGiven() {
    const given = readCase()[questionOf(this) ?? '']?.value;
    for (const strip of this.querySelectorAll<HTMLElement>('[data-answer]'))
      if (strip.dataset['answer'] === given) strip.append(element('i', {}, 'Your answer so far'));
  }

  /** Someone who goes back wants to see the question again, so only a way forward passes over it. */
  async #goOn(forward: boolean) {
    if (!forward) return;
    const on = await caseNow();
    const node = readNodePath(location.pathname);
    if (!node || !Object.keys(on).length) return;
    const known = await walkKnowledge(node.defect);
    if (!known) return;
    const { stage, answers } = readAddress(known, node.segments);
    const here = withAnswers(stage ? withStanding(on, stage) : on, answers);
    const address = addressFor(known, node.defect, stage, here);
    if (address.length > node.segments.length || (node.segments[0] === 'cause' && address[0] !== 'cause'))
      location.replace(nodeUrl(node.defect, address));
  }
}
