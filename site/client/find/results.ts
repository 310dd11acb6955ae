import { boardUrl, howDryUrl, seeUrl } from '../../shared/urls.ts';
import type { Found } from './pages.ts';

/** One large answer, then few others: a list to choose from is a second question. */
const SHOWN = 6;

const KIND_WORDS: Readonly<Record<Found['kind'], string>> = {
  defect: 'Flaw',
  remedy: 'Repair',
  rule: 'Safety',
  lesson: 'Lesson',
  product: 'Kind of finish',
  glossary: 'Word',
  page: 'Tool',
};

const element = <K extends keyof HTMLElementTagNameMap>(
  name: K,
  className: string,
  ...inside: readonly (string | Node)[]
): HTMLElementTagNameMap[K] => {
  const one = document.createElement(name);
  if (className) one.className = className;
  one.append(...inside);
  return one;
};

/** The first board of a flaw, in the light that shows it; all other kinds have no picture. */
const pictureOf = ({ kind, id }: Found): HTMLElement[] => {
  if (kind !== 'defect') return [];
  const picture = document.createElement('img');
  Object.assign(picture, {
    src: boardUrl(`defects/${id}-1`, 'raking'),
    alt: '',
    width: 480,
    height: 360,
    loading: 'lazy',
    decoding: 'async',
  });
  const figure = element('figure', 'board', picture);
  // A flaw that can not be seen, as a smell, has no board.
  picture.addEventListener('error', () => figure.remove());
  return [figure];
};

const asHit = (found: Found): HTMLLIElement => {
  const link = element('a', 'tape flag', found.title);
  link.href = found.url;
  const words = element(
    'div',
    'words',
    link,
    element('p', '', element('b', 'kind', KIND_WORDS[found.kind]), ` ${found.says}`),
  );
  if (found.kind === 'defect' && !found.perhaps) {
    const dry = element('a', '', 'How dry is it? What to do now');
    dry.href = howDryUrl(found.id);
    words.append(element('p', 'now', dry));
  }
  return element('li', '', ...pictureOf(found), words);
};

/** What fits the words in the address, above the list of all flaws. */
export class ResultsElement extends HTMLElement {
  connectedCallback() {
    const words = new URLSearchParams(location.search).get('q')?.trim() ?? '';
    const input = document.querySelector('input');
    if (input) input.value = words;
    if (words) void this.#answer(words);
  }

  disconnectedCallback() {
    this.replaceChildren();
  }

  async #answer(words: string) {
    const said = element('p', '');
    said.setAttribute('role', 'status');
    this.replaceChildren(said);
    try {
      const { findPages } = await import('./pages.ts');
      const found = await findPages(words, SHOWN);
      said.textContent = this.#verdictOn(words, found);
      if (found.length) this.append(element('ol', 'answers', ...found.map(asHit)));
      if (!found.length || found[0]?.perhaps) {
        const walk = element('a', 'tape strip', element('b', '', 'Walk me through it'), ' ');
        walk.append(element('span', '', 'A few questions about what you see'));
        walk.href = seeUrl([]);
        this.append(element('p', '', walk));
      }
    } catch {
      said.textContent = 'The search could not be loaded. All flaws are listed below.';
    }
  }

  #verdictOn(words: string, found: readonly Found[]): string {
    if (!found.length)
      return `Nothing fits “${words}”. Try what you see: its color, its shape, what it feels like.`;
    return found[0]?.perhaps ? `Nothing fits “${words}” well. Perhaps one of these:` : `For “${words}”:`;
  }
}
