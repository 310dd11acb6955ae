import { boardUrl, howDryUrl, seeUrl, TELL } from '../../shared/urls.ts';
import { element, statusLine } from '../shared/element.ts';
import { unlessOffline } from '../shared/fetch-json.ts';
import { firstCall } from './first-call.ts';
import { type HeardWords, hearWords } from './heard.ts';
import { type FoundPage, findPages } from './pages.ts';

/** One large answer, then few others: a list to choose from is a second question. */
const SHOWN = 6;

/** What a page is, where it is no flaw: those are what is looked for. */
const KIND_WORDS: Readonly<Record<Exclude<FoundPage['kind'], 'defect'>, string>> = {
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
    kind === 'defect'
      ? element('p', {}, says)
      : element('p', {}, element('b', { className: 'kind' }, KIND_WORDS[kind]), ` ${says}`),
  );
  // A flaw that surely fits and stands first is what she looks at: what to do about it is one tap away.
  if (first && kind === 'defect' && !perhaps)
    words.append(
      element(
        'p',
        { className: 'now' },
        element('a', { className: 'tape strip', href: howDryUrl(id) }, element('b', {}, 'What to do now')),
      ),
    );
  return element('li', {}, ...pictureOf(found), words);
};

/** What answers the words before any page that fits them. */
const strip = (href: string, does: string, says: string): HTMLElement =>
  element(
    'p',
    {},
    element('a', { className: 'tape strip', href }, element('b', {}, does), ' ', element('span', {}, says)),
  );

const walkMe = (): HTMLElement =>
  strip(seeUrl([]), 'Walk me through it', 'A few questions about what you see');

/** What the words tell beside what is seen is not asked again. */
const listenTo = (words: string): HTMLElement =>
  strip(`${TELL}#${new URLSearchParams({ say: words })}`, 'What to do now', 'By all that you told');

/** One answer is compared with so many others. */
const BESIDE = 2;

/** The page of a flaw by its name. */
const pageOf = async ({ defect, name }: { readonly defect: string; readonly name: string }) =>
  (await findPages(name, 1)).filter(({ kind, id }) => kind === 'defect' && id === defect);

/**
 * Every flaw that the words name stands before the other pages, and none is left out. Where one flaw is all that was
 * found, the next likely ones stand beside it to compare.
 */
const withFlaws = async (
  found: readonly FoundPage[],
  heard: HeardWords | undefined,
): Promise<readonly FoundPage[]> => {
  if (!heard) return found;
  const isFound = (defect: string) => found.some(({ id }) => id === defect);
  const [only, ...others] = found;
  const alone = only?.kind === 'defect' && !only.perhaps && !others.length && !heard.call;
  const added = [
    ...heard.named.filter(({ defect }) => !isFound(defect)),
    ...(alone && heard.named.length < BESIDE
      ? heard.likely.filter(({ defect }) => !isFound(defect)).slice(0, BESIDE)
      : []),
  ];
  const all = [...found, ...(await Promise.all(added.map(pageOf))).flat()];
  const isNamed = ({ kind, id }: FoundPage) =>
    kind === 'defect' && heard.named.some(({ defect }) => defect === id);
  return [...all.filter(isNamed), ...all.filter((page) => !isNamed(page))];
};

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
    const pages = await unlessOffline(findPages(words, SHOWN));
    const heard = await unlessOffline(hearWords(words));
    // Who asks which top coat to take sees no flaw yet.
    const found = heard?.which ? [] : pages && (await withFlaws(pages, heard));
    if (heard?.call) this.append(firstCall(heard.call, heard.places, Number.POSITIVE_INFINITY));
    else if (heard?.isStory) this.append(listenTo(words));
    else if (heard?.which)
      this.append(strip(heard.which, 'Which top coat for it?', 'One kind, with its reason'));
    said.textContent = found
      ? heard?.which
        ? `For “${words}”:`
        : this.#verdictOn(words, found)
      : 'The search could not be loaded. All flaws are listed below.';
    if (found?.length)
      this.append(
        element(
          'ol',
          { className: found[0]?.perhaps ? 'answers perhaps' : 'answers' },
          // Where all that was told has its answer above, no flaw asks for it anew.
          ...found.map((one, at) => asHit(one, at === 0 && !heard?.isStory)),
        ),
      );
    if (found && !heard?.which && (!found.length || found[0]?.perhaps)) this.append(walkMe());
  }

  #verdictOn(words: string, found: readonly FoundPage[]): string {
    if (!found.length)
      return `Nothing fits “${words}”. Try what you see: its color, its shape, what it feels like.`;
    return found[0]?.perhaps ? `Nothing fits “${words}” well. Perhaps one of these:` : `For “${words}”:`;
  }
}

customElements.define('hd-results', ResultsElement);
