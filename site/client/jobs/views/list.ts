import { cardUrl } from '../../../shared/jobs-urls.ts';
import { make, words } from '../../shared/make.ts';
import { sayDate } from '../../shared/say-date.ts';
import { exportAll } from '../files/export.ts';
import { type CardList, countCards, listCards, readOne } from '../store/index.ts';
import type { Listed } from '../store/listed.ts';
import { REMIND_AFTER, readMarks } from '../store/marks.ts';
import { button, type JobsFrame, type JobsView, link } from './view.ts';

/** Rows that are made at once; more come as she scrolls, so that two thousand cards open like twenty. */
const ROWS = 40;
/** From here on there is a field to find a card by its name. */
const FIND_FROM = 8;

const STATES = {
  planned: 'no coat yet',
  'under-way': 'under way',
  curing: 'curing',
  'handed-over': 'handed over',
} as const;

const stateOf = ({ summary }: Listed): string => {
  if (!summary) return 'could not be read';
  const { coats, openFlaws, lastCoat } = summary;
  return [
    STATES[summary.state] ?? words(summary.state),
    coats && lastCoat
      ? `${coats} ${coats === 1 ? 'coat' : 'coats'}, the last ${sayDate(lastCoat.laidAt)}`
      : '',
    openFlaws ? `${openFlaws} open ${openFlaws === 1 ? 'flaw' : 'flaws'}` : '',
  ]
    .filter(Boolean)
    .join('; ');
};

/** More coats than these look alike at the size of a thumbnail. */
const MOST_DRAWN = 6;

/** The coats as a stack on their base: what the words beside it say, at a glance. */
const stackOf = ({ summary }: Listed): HTMLElement => {
  const coats = Math.min(summary?.coats ?? 0, MOST_DRAWN);
  const stack = make('span.stack', ...Array.from({ length: coats }, () => make('i')));
  stack.setAttribute('aria-hidden', 'true');
  return stack;
};

const rowOf = (listed: Listed): HTMLElement => {
  const row = link('', cardUrl(listed.id));
  row.append(
    stackOf(listed),
    make('b', listed.summary?.name ?? `Card ${listed.id}`),
    make('span.state', stateOf(listed)),
  );
  return make('li', row);
};

/** All cards of this browser, the last changed on top. */
export class ListView implements JobsView {
  readonly #frame: JobsFrame;
  #list: CardList = { count: 0, first: [], all: async () => [] };
  #all: Promise<readonly Listed[]> | undefined;
  #found: readonly Listed[] = [];
  readonly #rows = make('ul.cards');
  readonly #end = make('p.end');
  readonly #count = make('p.small');

  constructor(frame: JobsFrame) {
    this.#frame = frame;
  }

  async show(): Promise<void> {
    const { place, title, signal } = this.#frame;
    title('Job cards');
    const fresh = link('New job card', '#new', 'go');
    this.#count.setAttribute('role', 'status');
    const tools = make('div');
    place.replaceChildren(
      make(
        'p.lead',
        'One card for each piece: what lies on it, what went wrong, what mended it. Kept on this device alone.',
      ),
      fresh,
      tools,
      this.#count,
      this.#rows,
      this.#end,
    );
    try {
      await this.#read();
    } finally {
      place.append(this.#acts());
    }
    tools.replaceChildren(...this.#finder());
    const watch = new IntersectionObserver(
      ([seen]) => {
        if (seen?.isIntersecting) void this.#more();
      },
      { rootMargin: '600px' },
    );
    watch.observe(this.#end);
    signal.addEventListener('abort', () => watch.disconnect());
    void this.#lookAfter();
  }

  async #read(): Promise<void> {
    this.#list = await listCards();
    this.#all = undefined;
    this.#show(this.#list.first, '');
  }

  /** The rest of the list, read when it is first wanted. */
  #rest(): Promise<readonly Listed[]> {
    this.#all ??= this.#list.all();
    return this.#all;
  }

  async #find(text: string): Promise<void> {
    const wanted = text.trim().toLowerCase();
    const all = await this.#rest();
    const found = wanted ? all.filter(({ summary }) => summary?.name.toLowerCase().includes(wanted)) : all;
    this.#show(found, wanted && `${found.length} of ${all.length}`);
  }

  #show(found: readonly Listed[], says: string): void {
    const { count } = this.#list;
    this.#found = found;
    this.#rows.replaceChildren();
    this.#append();
    this.#count.textContent = says || (count > FIND_FROM ? `${count} cards` : '');
  }

  /** The next rows, as she scrolls. */
  async #more(): Promise<void> {
    const { count, first } = this.#list;
    if (this.#found === first && first.length < count) this.#found = await this.#rest();
    this.#append();
  }

  #append(): void {
    const from = this.#rows.childElementCount;
    const rows = this.#found.slice(from, from + ROWS);
    this.#rows.append(...rows.map(rowOf));
    if (rows.length) void this.#check(rows);
  }

  /** A damaged card must not look sound in the list until it is opened. */
  async #check(rows: readonly Listed[]): Promise<void> {
    await new Promise((later) => setTimeout(later, 300));
    for (const { id } of rows) {
      if (this.#frame.signal.aborted) return;
      const read = await readOne(id).catch(() => undefined);
      if (read?.kind !== 'unreadable') continue;
      const row = this.#rows.querySelector(`a[href="${cardUrl(id)}"]`);
      row?.querySelector('.state')?.replaceChildren('could not be read; open it to save what is there');
    }
  }

  #finder(): readonly HTMLElement[] {
    if (this.#list.count < FIND_FROM) return [];
    const field = Object.assign(document.createElement('input'), {
      type: 'search',
      id: 'job-find',
      autocomplete: 'off',
    });
    field.addEventListener('input', () => void this.#find(field.value));
    return [
      make(
        'div.fit.find',
        Object.assign(make('label', 'Find a card by its name'), { htmlFor: field.id }),
        field,
      ),
    ];
  }

  #acts(): HTMLElement {
    const bring = Object.assign(document.createElement('input'), {
      type: 'file',
      accept: '.json,application/json',
      className: 'unseen',
    });
    bring.addEventListener('change', async () => {
      const [file] = bring.files ?? [];
      if (!file) return;
      const { previewFile } = await import('../files/import.ts');
      await previewFile(file, this.#frame, () => this.#again());
      bring.value = '';
    });
    return make(
      'section.acts',
      ...(this.#list.count
        ? [
            button('Save all as a file, with photos', () => this.#export(true)),
            button('Save all as a file, without photos', () => this.#export(false)),
          ]
        : []),
      make('label.quiet.file', 'Bring cards in from a file', bring),
    );
  }

  async #export(photos: boolean): Promise<void> {
    try {
      const { cards, unreadable } = await exportAll(photos);
      this.#frame.say(
        `Handed to your downloads: ${cards} ${cards === 1 ? 'card' : 'cards'}.`,
        unreadable ? ` What could not be read is in a second file, as it lies here (${unreadable}).` : '',
      );
    } catch (error) {
      this.#frame.trouble(error);
    }
  }

  /** What is worth saying once the list stands: cards that were cleared, and changes that no file holds. */
  async #lookAfter(): Promise<void> {
    const before = readMarks();
    const cards = await countCards().catch(() => undefined);
    if (cards === undefined) return;
    if (!cards && before.cards)
      this.#frame.say(
        `This browser held ${before.cards} ${before.cards === 1 ? 'card' : 'cards'}, and they are gone: its storage was cleared. If you saved them as a file, bring it in below.`,
      );
    else if (cards && before.changes >= REMIND_AFTER)
      this.#frame.say(
        `${before.changes} changes are in no file yet. A lost phone takes them along. `,
        button('Save all as a file', () => this.#export(true), 'plain'),
      );
  }

  async #again(): Promise<void> {
    await this.show();
  }

  async changed(): Promise<void> {
    await this.#read().catch((error) => this.#frame.trouble(error));
  }

  async leave(): Promise<boolean> {
    return true;
  }
}
