import { useState } from 'preact/hooks';
import { copyText } from '../shared/copy-text.ts';
import { late, NetworkFault } from '../shared/fetch-json.ts';
import { fileName, saveFile } from '../shared/save-file.ts';
import { calendarOf, csvOf } from './files.ts';
import type { PlannedShown } from './shown.ts';

const FAILED = 'That did not work here. The address of this page holds the whole plan: copy it.';

/** What can be done with a plan, in one row: paper, calendar, table, card, link. */
export const PlanActs = ({ job, outcome, data, link, now }: PlannedShown) => {
  const [said, setSaid] = useState('');
  const file = fileName(job.piece);
  const ACTS: readonly (readonly [words: string, act: () => unknown])[] = [
    ['Print', () => print()],
    [
      'Calendar file',
      async () => saveFile(`${file}.ics`, 'text/calendar', await calendarOf(job, outcome, data, now)),
    ],
    ['Table file', () => saveFile(`${file}.csv`, 'text/csv', csvOf(job, outcome, data))],
    [
      'Make a job card',
      async () => {
        const { cardFromPlan } = await late(() => import('../jobs/parts/from-plan.ts'));
        location.assign(await cardFromPlan(job, link));
      },
    ],
    [
      'Copy a link',
      async () => {
        const copied = await copyText(new URL(link, location.href).href);
        setSaid(copied ? 'Copied. The link holds what you gave, and nothing was sent.' : FAILED);
      },
    ],
  ];
  const run = async (act: () => unknown) => {
    try {
      await act();
    } catch (error) {
      setSaid(FAILED);
      if (!(error instanceof NetworkFault)) reportError(error);
    }
  };
  return (
    <div class="acts">
      {ACTS.map(([words, act]) => (
        <button key={words} type="button" class="quiet" onClick={() => void run(act)}>
          {words}
        </button>
      ))}
      <p role="status">{said}</p>
    </div>
  );
};
