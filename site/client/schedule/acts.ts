import type { Planned } from '#engine/schedule.ts';
import { make, type Shown } from '../shared/make.ts';
import { calendarOf, csvOf } from './files.ts';

const save = (name: string, type: string, text: string): void => {
  const anchor = document.createElement('a');
  anchor.href = URL.createObjectURL(new Blob([text], { type }));
  anchor.download = name;
  anchor.click();
  setTimeout(() => URL.revokeObjectURL(anchor.href), 10_000);
};

/** What can be done with a plan: paper, calendar, table, link. */
export const actsOf = (shown: Shown & { outcome: Planned }): HTMLElement => {
  const { job, outcome, data, link, now } = shown;
  const told = make('p');
  told.setAttribute('role', 'status');
  const button = (text: string, act: () => void | Promise<void>) => {
    const element = make('button.quiet', text) as HTMLButtonElement;
    element.type = 'button';
    element.addEventListener('click', async () => {
      try {
        await act();
      } catch {
        told.textContent = 'That did not work here. The address of this page holds the whole plan: copy it.';
      }
    });
    return element;
  };
  const file = job.piece.replace(/[^\p{L}\p{N}]+/gu, '-').replace(/^-|-$/g, '') || 'plan';
  const address = new URL(link, location.href).href;
  return make(
    'div.acts',
    button('Print on one sheet', () => print()),
    button('Calendar file', async () =>
      save(`${file}.ics`, 'text/calendar', await calendarOf(job, outcome, data, now)),
    ),
    button('Table file (CSV)', () => save(`${file}.csv`, 'text/csv', csvOf(job, outcome, data))),
    button('Make a job card of this plan', async () => {
      const { cardFromPlan } = await import('../jobs/parts/from-plan.ts');
      location.assign(await cardFromPlan(job, link));
    }),
    button('Copy a link to this plan', async () => {
      await navigator.clipboard.writeText(address);
      told.textContent = 'Copied. The link holds what you gave, and nothing was sent.';
    }),
    told,
  );
};
