import { readAddress, withAnswer } from '#engine/index.ts';
import type { QuestionId } from '#engine/model/ids.ts';
import { nodeUrl, readNodePath } from '../lib/urls.ts';
import { addressFor } from '../lib/way.ts';
import { readCase } from './case-store.ts';
import { walkKnowledge } from './walk-knowledge.ts';

const ID = /^[a-z][a-z0-9-]{0,80}$/;

/** On the page for a dead address: reads the answers that still fit and leads to the page that goes on from them. */
export class LostElement extends HTMLElement {
  connectedCallback() {
    void this.#lead();
  }

  disconnectedCallback() {
    this.replaceChildren();
  }

  async #lead() {
    const place = readNodePath(location.pathname);
    if (!place || !ID.test(place.defect)) return;
    const known = await walkKnowledge(place.defect).catch(() => undefined);
    if (!known) return;
    const { stage, answers } = readAddress(known, place.segments);
    const on = answers.reduce((so, [question, answer]) => withAnswer(so, question as QuestionId, answer), readCase());
    const kept = `${answers.length} ${answers.length === 1 ? 'answer' : 'answers'}`;
    const link = Object.assign(document.createElement('a'), {
      className: 'tape strip',
      href: stage || answers.length ? nodeUrl(place.defect, addressFor(known, place.defect, stage, on)) : `/defects/${place.defect}/`,
    });
    link.append(
      Object.assign(document.createElement('b'), { textContent: 'Go on from here' }),
      Object.assign(document.createElement('span'), {
        textContent: answers.length ? `The link still carries ${kept} that fit.` : 'The flaw is known; the answers in the link are not.',
      }),
    );
    this.replaceChildren(link);
  }
}
