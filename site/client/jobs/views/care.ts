import { careOf } from '#engine/jobs/care.ts';
import { datesOfCard } from '#engine/jobs/care-dates.ts';
import { cardUrl } from '../../../shared/jobs-urls.ts';
import { calendarAt } from '../../shared/calendar.ts';
import { make } from '../../shared/make.ts';
import { sayLongDate } from '../../shared/say-date.ts';
import { nightOfCard, sayNights } from '../parts/night.ts';
import { readOne } from '../store/index.ts';
import { button, type JobsFrame, type JobsView, link } from './view.ts';

type Line = { readonly say: string };

const listOf = (title: string, lines: readonly Line[]): readonly HTMLElement[] =>
  lines.length
    ? [make('section', make('h2', title), make('ul', ...lines.map(({ say }) => make('li', say))))]
    : [];

/** The card that goes with the piece to its buyer: one page of paper. */
export class CareView implements JobsView {
  readonly #frame: JobsFrame;
  readonly #id: string;

  constructor(frame: JobsFrame, id: string) {
    this.#frame = frame;
    this.#id = id;
  }

  async show(): Promise<void> {
    const { place, title } = this.#frame;
    title('Care card');
    const back = make('p.back', link('Back to the job card', cardUrl(this.#id)));
    const [read, data] = await Promise.all([readOne(this.#id), this.#frame.data()]);
    if (read.kind !== 'card') {
      place.replaceChildren(
        make('p', 'Without its job card there is no care card: the card is not here, or could not be read.'),
        make('p', link('All job cards', '#')),
      );
      return;
    }
    const { card } = read;
    const night = nightOfCard(card);
    const known = night ? { ...card, night } : card;
    const dates = datesOfCard(known, data.products, data.plan, calendarAt);
    const care = careOf(card, data.products, data.care, dates);
    if (care.kind === 'no') {
      place.replaceChildren(
        make('p.verdict.stop', 'No care card'),
        ...care.why.map(({ say }) => make('p.why', say)),
        back,
      );
      return;
    }
    title(`Care card: ${card.name}`);
    place.replaceChildren(
      make(
        'p.care-acts',
        button('Print this care card', () => print(), 'go'),
      ),
      this.#paper(care),
      ...(dates.kind === 'dates' && dates.unknownNights
        ? [make('p.wide-dates', sayNights(dates, data.plan.night['supposed-colder']))]
        : []),
      back,
    );
  }

  #paper(care: Extract<ReturnType<typeof careOf>, { kind: 'care' }>): HTMLElement {
    const { dates, noDates } = care;
    const moment = (name: string, at: number) =>
      make('div.tape', make('dt', name), make('dd', sayLongDate(at)));
    return make(
      'article.care',
      make('p.made-of', care.madeOf.map(({ say }) => say).join(' ')),
      ...(dates
        ? [
            make(
              'dl.dates',
              moment('Ready to hand over', dates.handOver),
              moment('Light, careful use from', dates.lightUse),
              moment('Full use from', dates.fullUse),
            ),
          ]
        : [make('p.caution', noDates ?? '')]),
      make(
        'div.rows',
        ...(care.notYet.length
          ? [
              make(
                'section',
                make('h2', 'Not yet'),
                make(
                  'ul',
                  ...care.notYet.map(({ say, until }) =>
                    make(
                      'li',
                      ...(until === undefined ? [] : [make('b', `Until ${sayLongDate(until)}: `)]),
                      say,
                    ),
                  ),
                ),
              ),
            ]
          : []),
        ...listOf('Cleaning', care.cleaning),
        ...listOf('Upkeep', care.upkeep),
        ...listOf('Take care', care.cautions),
        ...listOf('What is not promised', care.promise),
      ),
    );
  }

  async changed(ids: readonly string[]): Promise<void> {
    if (ids.includes(this.#id)) await this.show();
  }

  async leave(): Promise<boolean> {
    return true;
  }
}
