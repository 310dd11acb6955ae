/**
 * The cost sheet of the lesson on prices: its sums are right, and what it says of the clear is what the schedule reckons
 * for its dresser. All prices in it are invented.
 */
import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { HOUR, job, planned } from '../../engine/schedule/sheet.ts';
import { known } from './knowledge.ts';

const lesson = known.get('lesson', 'what-to-ask-for-it');
const sheet = readFileSync(lesson.file, 'utf8').split(/^---$/m).slice(2).join('');

/** The rows of a table, from its head to the row that gives its sum. */
const between = (from: string, to: RegExp): { readonly lines: readonly string[]; readonly sum: string } => {
  const rest = sheet.slice(sheet.indexOf(from) + from.length);
  const [list = '', sum = ''] = rest.split(to);
  return { lines: list.split('\n').filter((line) => line.startsWith('| ') && !line.startsWith('| -')), sum };
};
/** The figure in the last column. */
const last = (line: string): number => Number(line.match(/\| \$?([\d.]+) \|$/)?.[1]);
const add = (figures: readonly number[]): number => figures.reduce((sum, one) => sum + one, 0);

const materials = between('| What it takes | |', /^\| \*\*Materials\*\* \| \*\*\$([\d.]+)/m);
const hours = between('| Hours | |', /^\| \*\*Together\*\* \| \*\*([\d.]+)/m);
const whole = between('| The sum | |', /^\| \*\*Cost\*\* \| \*\*\$([\d.]+)/m);

it.each([
  ['materials', materials, 3],
  ['hours', hours, 5],
  ['the whole', whole, 5],
] as const)('adds up %s', (_name, { lines, sum }, count) => {
  expect(lines).toHaveLength(count);
  expect(add(lines.map(last))).toBe(Number(sum));
});

it('multiplies hours by what an hour costs, and takes a tenth of it all for what goes wrong', () => {
  const byTheHour = whole.lines.filter((line) => /\bat \$|\ban hour\b/.test(line));
  expect(byTheHour).toHaveLength(3);
  for (const line of byTheHour)
    expect(last(line)).toBe(Number(line.match(/\$([\d.]+)/)?.[1]) * Number(hours.sum));
  expect(whole.lines.map(last)).toContain(Number(materials.sum));
  const figures = whole.lines.map(last);
  expect(figures.at(-1)).toBe(Math.round(add(figures.slice(0, -1)) / 10));
});

// The schedule is the engine's own, so that the lesson does not say another figure than the page it sends to.
it('takes the clear and the time to lay it from the schedule', () => {
  const { liters = 0, coats, steps } = planned(job());
  expect(coats).toHaveLength(3);
  expect(sheet).toContain('Three coats of clear');
  const [quarts, said] = sheet.match(/Clear, (3\/4) of a quart \(([\d.]+) L\)/)?.slice(1) ?? [];
  expect(quarts).toBe('3/4');
  expect(Number(said)).toBeCloseTo(liters, 2);
  // A US quart is 0.9464 liters (NIST Handbook 44, from memory).
  expect(liters / 0.9464).toBeCloseTo(0.75, 1);
  const hands = steps
    .filter(({ kind }) => ['sand', 'wipe', 'coat', 'look'].includes(kind))
    .map(({ from, to }) => (to - from) / HOUR);
  const laid = hours.lines.find((line) => line.includes('coats of clear')) ?? '';
  expect(Math.abs(last(laid) - add(hands))).toBeLessThan(0.25);
});
