import type { CardFlaw, CardRepair, JobCard } from '#engine/model/job-card.ts';
import type { JobsData } from '../../../shared/jobs-data.ts';
import { BASE, defectUrl, remedyUrl } from '../../../shared/urls.ts';
import { make, words } from '../../shared/make.ts';
import { sayDate, sayMoment } from '../../shared/say-date.ts';
import { button, link } from '../views/view.ts';

const ANSWER = { yes: 'yes', no: 'no', unsure: 'can’t tell' } as const;

/** Only the walk's own pages are linked, whatever a file that was brought in says. */
const walkOf = ({ address, defect }: CardFlaw): string =>
  address && /^\/?defects\/[a-z0-9-]+\/[a-z0-9/-]*$/.test(address.replace(BASE, '/'))
    ? BASE + address.replace(BASE, '').replace(/^\//, '')
    : defectUrl(defect);

/** What was found, how it was answered, and whether it is settled. */
export const flawList = (
  card: JobCard,
  data: JobsData,
  settle: (flaw: CardFlaw) => void | Promise<void>,
  off: (flaw: CardFlaw) => void | Promise<void>,
): HTMLElement => {
  const list = make('ul.found');
  for (const flaw of card.flaws) {
    const name = data.defects[flaw.defect] ?? words(flaw.defect);
    const known = flaw.defect in data.defects;
    const item = make(
      'li',
      known ? link(name, walkOf(flaw)) : make('b', name),
      make(
        'span.when',
        make(
          flaw.settledAt === undefined ? 'b.tape.label.stop' : 'b.tape.label',
          flaw.settledAt === undefined ? 'open' : 'settled',
        ),
        flaw.settledAt === undefined
          ? `Found ${sayMoment(flaw.foundAt)}`
          : `${sayDate(flaw.settledAt)}; found ${sayMoment(flaw.foundAt)}`,
      ),
    );
    if (flaw.answers.length)
      item.append(
        make(
          'details',
          make('summary', `${flaw.answers.length} answers`),
          make(
            'ul',
            ...flaw.answers.map(([question, answer]) =>
              make('li', data.questions[question] ?? words(question), ' ', make('b', ANSWER[answer])),
            ),
          ),
        ),
      );
    item.append(
      make(
        'p.row-acts',
        button(
          flaw.settledAt === undefined ? 'Settled: repaired or good enough' : 'Not settled after all',
          () => settle(flaw),
          'plain',
        ),
        button('Take it off the card', () => off(flaw), 'plain'),
      ),
    );
    list.append(item);
  }
  return list;
};

export const repairList = (
  card: JobCard,
  data: JobsData,
  off: (repair: CardRepair) => void | Promise<void>,
): HTMLElement =>
  make(
    'ul.found',
    ...card.repairs.map((repair) => {
      const name = data.remedies[repair.remedy];
      const flaw = card.flaws.find(({ id }) => id === repair.flaw);
      return make(
        'li',
        name ? link(name, remedyUrl(repair.remedy)) : make('b', words(repair.remedy)),
        make(
          'span.when',
          `${sayMoment(repair.doneAt)}${flaw ? `, for ${(data.defects[flaw.defect] ?? words(flaw.defect)).toLowerCase()}` : ''}`,
        ),
        ...(repair.note ? [make('p.small', repair.note)] : []),
        button('Take it off the card', () => off(repair), 'plain'),
      );
    }),
  );
