import { firstFit, type Job, type Planned } from '#engine/schedule.ts';
import type { PlanData } from '../../shared/plan-data.ts';
import { calendarAt } from '../shared/calendar.ts';
import { late } from '../shared/fetch-json.ts';
import { localText } from '../shared/form/local-time.ts';
import { rounded } from './draft.ts';
import { type Line, linesOf } from './words.ts';

const quoted = (text: string): string => `"${text.replaceAll('"', '""')}"`;
/** A cell that a table program would take for a formula is kept from being one. */
const cell = (text: string): string => quoted(/^[=+\-@\t\r]/.test(text) ? `'${text}` : text);
const local = (at: number): string => localText(at).replace('T', ' ');

/** The steps as a table for any spreadsheet (RFC 4180), local times. */
export const csvOf = (job: Job, outcome: Planned, data: PlanData): string =>
  [
    ['from', 'to', 'sure by', 'step', 'note'],
    ...linesOf(job, outcome, data).map(({ step, title, notes }) => [
      local(step.from),
      local(step.to),
      step.surely ? local(step.surely) : '',
      title,
      notes.join(' '),
    ]),
  ]
    .map((row) => row.map(cell).join(','))
    .join('\r\n');

/** What goes into a calendar: hands-on steps and the dates, a wait's end as the next step's beginning. */
const RUNG = ['wash', 'test-patch', 'turn', 'coat', 'buff', 'light-use', 'full-use'];

/** So long a date stands in a calendar. */
const DATE_MINUTES = 30;
/** RFC 5545, 3.3.11: what parts values is escaped in a text, which is not done for the name of a calendar. */
const escaped = (text: string): string => text.replace(/[\\;,]/g, '\\$&');

/** The plan as a calendar file. Loaded on demand, since the library weighs more than the planner. */
export const calendarOf = async (
  job: Job,
  outcome: Planned,
  data: PlanData,
  now: number,
): Promise<string> => {
  const { default: ical, ICalAlarmType } = await late(() => import('ical-generator'));
  const calendar = ical({ name: escaped(`Halfdry: ${job.piece}`), prodId: '//Halfdry//Schedule//EN' });
  const lines = linesOf(job, outcome, data).filter(({ step }: Line) => RUNG.includes(step.kind));
  for (const { step, title, notes } of lines) {
    // A date rings once it is sure, in hours when she works; work rings when it begins.
    const isDate = step.kind === 'light-use' || step.kind === 'full-use';
    const sure = isDate && firstFit(job, calendarAt(job.start), rounded(step.to), DATE_MINUTES);
    const { from, to } = sure || step;
    calendar.createEvent({
      id: `${job.start}-${step.kind}-${step.coat ?? 0}${step.face ? `-${step.face}` : ''}@halfdry`,
      stamp: new Date(now),
      start: new Date(from),
      end: new Date(to),
      summary: `${job.piece}: ${title}`,
      description: notes.join('\n'),
      alarms: [{ type: ICalAlarmType.display, trigger: 600 }],
    });
  }
  return calendar.toString();
};
