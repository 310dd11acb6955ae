import { isToldFact, TOLD, TOLD_FACTS, type ToldFact } from '../../shared/told.ts';
import { ruleUrl } from '../../shared/urls.ts';
import { TOLD_EVENT } from '../case/facts-changed.ts';
import { readCase } from '../case/store.ts';
import { counted } from '../shared/counted.ts';
import { button, element, partIn, statusLine } from '../shared/element.ts';
import { late, unlessOffline } from '../shared/fetch-json.ts';
import { tellFact, toldValue } from './tell-fact.ts';
import { toldLine } from './told-line.ts';

const tell = (host: Element, fact: ToldFact, value: string): void => {
  if (!tellFact(fact, value))
    host.append(statusLine('This browser keeps no notes, so this cannot be remembered.', 'small'));
};

/** One fact as a row of strips, where a caution hangs on it. */
const asStrips = (host: Element, fact: ToldFact, look = ''): HTMLElement => {
  const strips = Object.entries(TOLD[fact].values).map(([value, words]) => {
    const strip = button(words, () => tell(host, fact, value), look);
    strip.setAttribute('aria-pressed', String(toldValue(readCase(), fact) === value));
    return strip;
  });
  return element('fieldset', {}, element('legend', {}, TOLD[fact].ask), ...strips);
};

/** An old layer, or one that may be, is tested before anything else. */
const testFirst = (fact: ToldFact, value: string): readonly HTMLElement[] =>
  fact === 'age' && ['unknown', 'before-1993'].includes(value)
    ? [element('a', { className: 'go', href: ruleUrl('lead-test-limits') }, 'Test it first')]
    : [];

/** One fact as a list to choose from. */
const asList = (host: Element, fact: ToldFact): HTMLElement => {
  const choices = [['', 'Not told'], ...Object.entries(TOLD[fact].values)] as const;
  const options = choices.map(([value, words]) => new Option(words, value));
  const list = element('select', { onchange: () => tell(host, fact, list.value) }, ...options);
  list.value = toldValue(readCase(), fact);
  return element('label', {}, TOLD[fact].ask, list);
};

const MANY = 4;

/** What lies behind no other stops than those at the head of the page opens when she says that they are settled. */
const openSettled = ({ target }: Event): void => {
  if (!(target instanceof Element) || !target.closest('[data-part=settled]')) return;
  const told = [...document.querySelectorAll<HTMLElement>('[data-part=stops] [data-rule]:not([hidden])')];
  const settled = new Set(told.map(({ dataset }) => dataset['rule']));
  for (const behind of document.querySelectorAll<HTMLElement>('[data-stops]'))
    if ((behind.dataset['stops'] ?? '').split(' ').every((id) => settled.has(id)))
      behind.querySelector(':scope > details')?.setAttribute('open', '');
};
document.addEventListener('click', openSettled);

/** Told once: what is known of the piece beside the answers. Without script nothing stands here. */
class ToldElement extends HTMLElement {
  #stop = new AbortController();
  #fits = 0;

  connectedCallback() {
    this.#stop = new AbortController();
    const { fact, facts } = this.dataset;
    if (facts) this.#askSome(facts.split(' ').filter(isToldFact));
    else if (!fact) this.#askAll();
    else if (isToldFact(fact)) this.#askOne(fact);
  }

  #askOne(fact: ToldFact) {
    const chips = this.dataset['chips'] !== undefined;
    // Told before this visit, it is not asked again; the list beside the page changes it.
    if (chips && toldValue(readCase(), fact)) {
      this.#leaveUnasked(fact);
      return;
    }
    const gate = this.dataset['gate'] !== undefined;
    const few = Object.keys(TOLD[fact].values).length <= MANY;
    const asked = () => {
      if (chips) return asStrips(this, fact);
      return few ? asStrips(this, fact, 'tape') : asList(this, fact);
    };
    const show = () => {
      const buttons = () => [...this.querySelectorAll('button')];
      const at = buttons().findIndex((one) => one.matches(':focus'));
      const on = readCase();
      // Told, what the steps hang on is one line above them.
      const told = gate && toldValue(on, fact);
      this.replaceChildren(
        told ? element('p', { className: 'settled' }, ...toldLine(on, fact)) : asked(),
        ...testFirst(fact, toldValue(on, fact)),
      );
      if (at >= 0) (buttons()[at] ?? buttons()[0])?.focus({ preventScroll: gate });
    };
    show();
    document.addEventListener(TOLD_EVENT, show, { signal: this.#stop.signal });
  }

  /** Where no old paint lies below, nothing warns of any. */
  #leaveUnasked(fact: ToldFact) {
    const asked = this.closest<HTMLElement>('[data-part=ask-age]');
    if (asked && toldValue(readCase(), fact) === 'since-1993') asked.hidden = true;
  }

  /** Some facts, a list each, behind one line, so that the steps begin soon. */
  #askSome(facts: readonly ToldFact[]) {
    const lists = new Map(facts.map((fact) => [fact, asList(this, fact)]));
    const fields = element('div', { className: 'fit-steps' }, ...lists.values());
    this.replaceChildren(
      element(
        'details',
        { className: 'fold' },
        element('summary', {}, 'Fit the steps to your piece'),
        fields,
      ),
    );
    const follow = () => {
      for (const [fact, label] of lists) {
        const list = label.querySelector('select');
        if (list) list.value = toldValue(readCase(), fact);
      }
    };
    document.addEventListener(TOLD_EVENT, follow, { signal: this.#stop.signal });
  }

  #askAll() {
    const summary = element('summary');
    const count = () => {
      const told = TOLD_FACTS.filter((one) => toldValue(readCase(), one)).length;
      summary.textContent = told ? `Your piece: ${counted(told, 'detail')}` : 'Add details of your piece';
    };
    count();
    const lists = TOLD_FACTS.map((one) => asList(this, one));
    const details = element('details', { className: 'fold' }, summary, ...lists);
    this.replaceChildren(details);
    if (document.documentElement.dataset['fit'] !== undefined) void this.#fit();
    document.addEventListener(
      TOLD_EVENT,
      () => {
        count();
        void this.#fit();
        for (const [index, one] of TOLD_FACTS.entries()) {
          const list = details.querySelectorAll('select')[index];
          if (list) list.value = toldValue(readCase(), one);
        }
      },
      { signal: this.#stop.signal },
    );
  }

  /** The page waits for this (see told.css). Where the rules can not be had it stands as it was built, for unknown facts. */
  async #fit() {
    // Her answer may bring another stop: no way leads past them before they are those of what she told.
    const stops = partIn(document, 'stops');
    stops?.setAttribute('aria-busy', 'true');
    this.#fits += 1;
    try {
      if (document.querySelector('#verdict, section[data-remedy]'))
        await unlessOffline(late(() => import('./advice.ts')).then(({ fitAdvice }) => fitAdvice()));
    } finally {
      this.#fits -= 1;
      if (!this.#fits) stops?.removeAttribute('aria-busy');
    }
    delete document.documentElement.dataset['fit'];
  }

  disconnectedCallback() {
    this.#stop.abort();
    this.replaceChildren();
  }
}

customElements.define('hd-told', ToldElement);
