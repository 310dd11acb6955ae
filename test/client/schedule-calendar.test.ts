/** The calendar file of a plan (RFC 5545), read by the times and texts that it holds. The pieces are invented. */
import { expect, it } from 'vitest';
import { calendarOf } from '../../site/client/schedule/files.ts';
import type { PlanData } from '../../site/shared/plan-data.ts';
import { job, known, outcome, plan } from '../engine/schedule/sheet.ts';

const data = { plan, products: known.products, rules: [], defects: {} } as unknown as PlanData;
const calendarFor = async (more: Parameters<typeof job>[0]) => {
  const of = job(more);
  const planned = outcome(of);
  if (planned.kind !== 'plan') throw new Error('it is a no');
  return { of, planned, text: await calendarOf(of, planned, data, of.start) };
};

it('rings of no date outside her hours, and of none before it is sure', async () => {
  for (const hour of [9, 11, 14, 17]) {
    const { of, planned, text } = await calendarFor({ start: hour * 3_600_000 });
    const begins = [...text.matchAll(/DTSTART:(\d{4})(\d\d)(\d\d)T(\d\d)(\d\d)(\d\d)Z/g)].map(
      ([, year, month, day, hours, minutes, seconds]) =>
        new Date(`${year}-${month}-${day}T${hours}:${minutes}:${seconds}Z`),
    );
    const inDay = (at: Date) => at.getHours() * 60 + at.getMinutes();
    for (const at of begins) {
      expect(inDay(at)).toBeGreaterThanOrEqual(of.hours.from);
      expect(inDay(at)).toBeLessThan(of.hours.to);
    }
    const last = planned.steps.find(({ kind }) => kind === 'full-use');
    expect(begins.at(-1)?.getTime()).toBeGreaterThanOrEqual(last?.to ?? Number.NaN);
  }
});

it('escapes what parts values in the name of the calendar, as in every text', async () => {
  const { text } = await calendarFor({ piece: 'Doors; Smith, 14' });
  expect(text).toContain('X-WR-CALNAME:Halfdry: Doors\\; Smith\\, 14');
  expect(text).toContain('SUMMARY:Doors\\; Smith\\, 14: Coat 1');
});

it('says back, front and turn of what is turned, each entry with an id of its own', async () => {
  const { text, planned } = await calendarFor({ both: { parts: ['front'], turned: 'each-coat' } });
  const titles = [...text.matchAll(/SUMMARY:test: (.*?)\r?\n/g)].map(([, title]) => title);
  expect(titles.slice(0, 4)).toEqual([
    'Back: coat 1 of 3',
    'Turn it\\, front up',
    'Front: coat 1 of 3',
    'Turn it\\, back up',
  ]);
  expect(titles.filter((title) => title?.startsWith('Turn'))).toHaveLength(5);
  const ids = [...text.matchAll(/UID:(.*?)\r?\n/g)].map(([, id]) => id);
  expect(new Set(ids).size).toBe(ids.length);
  expect(planned.coats).toHaveLength(6);
});

it('keeps the ids of a plan of one face, so that a calendar that holds it is told nothing new', async () => {
  const { text, of } = await calendarFor({});
  expect(text).toContain(`UID:${of.start}-coat-1@halfdry`);
});
