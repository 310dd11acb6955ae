import { readAddress } from '#engine/index.ts';
import { FACTS } from '#engine/model/facts.ts';
import { isOneOf } from '#engine/plain/entry-of.ts';
import { jobCardUrl } from '../../../shared/jobs-urls.ts';
import { BASE, readNodePath } from '../../../shared/urls.ts';
import { cardInHand } from '../../case/card-in-hand.ts';
import { readCase } from '../../case/store.ts';
import { button, element, statusLine } from '../../shared/element.ts';
import { late, unlessOffline } from '../../shared/fetch-json.ts';
import { walkKnowledge } from '../../shared/walk-knowledge.ts';

const SAID = {
  saved: 'It stands on the card.',
  gone: 'That card is no longer in this browser, so nothing was noted.',
  full: 'The card holds as many as a card can, so nothing was noted. Take one off the card, or begin a second card for this piece.',
  unloaded:
    'Nothing was noted: what writes to the card could not be loaded. Try again when there is a signal.',
  refused:
    'The card could not be written: its storage is full, closed or damaged. Nothing on it was changed.',
} as const;

/** What the page says for after the repair, to stand with it on the card. */
const afterRepair = (): { note?: string } => {
  const lines = [...document.querySelectorAll('#after li')].map((line) => line.textContent.trim());
  return lines.length ? { note: lines.join('\n') } : {};
};

/** Where a walk ends: notes the flaw, or the repair, on the job card that she came from. */
class OnCardElement extends HTMLElement {
  connectedCallback() {
    const card = cardInHand();
    if (!card) return;
    const href = jobCardUrl(card.id);
    const line = element('p', {}, element('a', { className: 'label', href }, `Job card: ${card.name}`));
    const told = statusLine();
    const { remedy } = this.dataset;
    this.replaceChildren(line);
    if (readNodePath(location.pathname)?.segments.length)
      this.append(this.#button('Note this flaw on the card', told, () => this.#flaw(card.id)));
    if (remedy)
      this.append(
        this.#button('I did this repair: note it', told, async () => {
          const { noteRepair } = await late(() => import('../store/index.ts'));
          const defect = readNodePath(location.pathname)?.defect;
          const noted = await noteRepair(card.id, { remedy, ...afterRepair() }, defect);
          if (noted === 'saved') this.#askIfGone(card.id, remedy, href, told);
          return noted;
        }),
      );
    this.append(told);
  }

  disconnectedCallback() {
    this.replaceChildren();
  }

  /** What is left open behind a repair: the flaw that it was for, and the coat that it laid. */
  #askIfGone(id: string, remedy: string, href: string, told: HTMLElement): void {
    const gone = this.#button(
      'The flaw is gone: settle it',
      told,
      async () => {
        const { settleRepaired } = await late(() => import('../store/index.ts'));
        return settleRepaired(id, remedy);
      },
      'The flaw is settled.',
    );
    const coated = document.querySelector(`section[data-remedy="${remedy}"] [data-kind=coat]:not([hidden])`);
    const coat = element('a', { className: 'quiet', href }, 'Put its coat on the clock, on the card');
    this.querySelector('[data-part=behind]')?.remove();
    const behind = element('div', {}, gone, ...(coated ? [coat] : []));
    behind.dataset['part'] = 'behind';
    told.after(behind);
  }

  #button(
    words: string,
    told: HTMLElement,
    act: () => Promise<keyof typeof SAID>,
    saved: string = SAID.saved,
  ): HTMLElement {
    const noting = button(
      words,
      async () => {
        noting.disabled = true;
        told.textContent = '';
        const noted = (await unlessOffline(act())) ?? 'unloaded';
        told.textContent = noted === 'saved' ? saved : SAID[noted];
        noting.disabled = false;
      },
      'quiet',
    );
    return noting;
  }

  async #flaw(id: string): Promise<keyof typeof SAID> {
    const node = readNodePath(location.pathname);
    const known = node && (await walkKnowledge(node.defect));
    if (!node || !known) return 'unloaded';
    const { answers } = readAddress(known, node.segments);
    const { part } = readCase();
    const { noteFlaw } = await late(() => import('../store/index.ts'));
    return noteFlaw(id, {
      defect: node.defect,
      answers: answers.map(([question, answer]) => [question, answer]),
      ...(isOneOf(FACTS.part.values, part) && { part }),
      address: `/${location.pathname.slice(BASE.length)}`,
    });
  }
}

customElements.define('hd-on-card', OnCardElement);
