import { boardUrl, howDryUrl, seeUrl } from '../../shared/urls.ts';
import { element, statusLine } from '../shared/element.ts';
import { unlessOffline } from '../shared/fetch-json.ts';
import { type FoundPage, findPages } from './pages.ts';

/** One large answer, then few others: a list to choose from is a second question. */
const SHOWN = 6;

const KIND_WORDS: Readonly<Record<FoundPage['kind'], string>> = {
  defect: 'Flaw',
  remedy: 'Repair',
  rule: 'Safety',
  lesson: 'Lesson',
  product: 'Kind of finish',
  glossary: 'Word',
  page: 'Tool',
};

/** The first board of a flaw, in the light that shows it; all other kinds have no picture. */
const pictureOf = ({ kind, id }: FoundPage): HTMLElement[] => {
  if (kind !== 'defect') return [];
  const picture = element('img', {
    src: boardUrl(`defects/${id}-1`, 'raking'),
    alt: '',
    width: 480,
    height: 360,
    loading: 'lazy',
    decoding: 'async',
    // A flaw that can not be seen, as a smell, has no board.
    onerror: () => figure.remove(),
  });
  const figure = element('figure', { className: 'board' }, picture);
  return [figure];
};

const asHit = (found: FoundPage, first: boolean): HTMLLIElement => {
  const { kind, id, title, url, says, perhaps } = found;
  const words = element(
    'div',
    { className: 'words' },
    element('a', { className: 'tape flag', href: url }, title),
    element('p', {}, element('b', { className: 'kind' }, KIND_WORDS[kind]), ` ${says}`),
  );
  // A flaw that surely fits and stands first is what she looks at: what to do about it is one tap away.
  if (first && kind === 'defect' && !perhaps)
    words.append(
      element(
        'p',
        { className: 'now' },
        element('a', { className: 'quiet', href: howDryUrl(id) }, element('b', {}, 'What to do now')),
      ),
    );
  return element('li', {}, ...pictureOf(found), words);
};

const walkMe = (): HTMLElement =>
  element(
    'p',
    {},
    element(
      'a',
      { className: 'tape strip', href: seeUrl([]) },
      element('b', {}, 'Walk me through it'),
      ' ',
      element('span', {}, 'A few questions about what you see'),
    ),
  );

/** What fits the words in the address, above the list of all flaws. */
class ResultsElement extends HTMLElement {
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
    const said = statusLine();
    this.replaceChildren(said);
    const found = await unlessOffline(findPages(words, SHOWN));
    said.textContent = found
      ? this.#verdictOn(words, found)
      : 'The search could not be loaded. All flaws are listed below.';
    if (found?.length)
      this.append(element('ol', { className: 'answers' }, ...found.map((one, at) => asHit(one, at === 0))));
    if (found && (!found.length || found[0]?.perhaps)) this.append(walkMe());
  }

  #verdictOn(words: string, found: readonly FoundPage[]): string {
    if (!found.length)
      return `Nothing fits “${words}”. Try what you see: its color, its shape, what it feels like.`;
    return found[0]?.perhaps ? `Nothing fits “${words}” well. Perhaps one of these:` : `For “${words}”:`;
  }
}

customElements.define('hd-results', ResultsElement);
