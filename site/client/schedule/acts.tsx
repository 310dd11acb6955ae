import { useState } from 'preact/hooks';
import { copyText } from '../shared/copy-text.ts';
import { late, NetworkFault } from '../shared/fetch-json.ts';
import { fileName, saveFile } from '../shared/save-file.ts';
import { calendarOf, csvOf } from './files.ts';
import type { PlannedShown } from './shown.ts';

const FAILED = 'That did not work here. The address of this page holds the whole plan: copy it.';

type Props = PlannedShown & {
  /** Under the verdict: what takes it to the shop. The rest stands below the steps. */
  readonly first?: boolean;
};

/** So many are wanted at once: paper and calendar. */
const FIRST = 2;

/** What can be done with a plan: paper, calendar; table, card, link. */
export const PlanActs = ({ job, outcome, data, link, now, first = false }: Props) => {
  const [said, setSaid] = useState('');
  const file = fileName(job.piece);
  const ACTS: readonly (readonly [words: string, act: () => unknown])[] = [
    ['Print', () => print()],
    [
      'Calendar file',
      async () => saveFile(`${file}.ics`, 'text/calendar', await calendarOf(job, outcome, data, now)),
    ],
    ['Table file (CSV)', () => saveFile(`${file}.csv`, 'text/csv', csvOf(job, outcome, data))],
    [
      'Make a job card of this plan',
      async () => {
        const { cardFromPlan } = await late(() => import('../jobs/parts/from-plan.ts'));
        location.assign(await cardFromPlan(job, link));
      },
    ],
    [
      'Copy a link to this plan',
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
      {(first ? ACTS.slice(0, FIRST) : ACTS.slice(FIRST)).map(([words, act]) => (
        <button key={words} type="button" class="quiet" onClick={() => void run(act)}>
          {words}
        </button>
      ))}
      <p role="status">{said}</p>
    </div>
  );
};
