import type { Planned } from '#engine/schedule.ts';

const SVG = 'http://www.w3.org/2000/svg';
const WIDTH = 360;
const LEFT = 58;
const ROW = 24;
const DAY = 24 * 60;
/** A plan of oil may take weeks of waiting; what comes later is told in the dates. */
const MOST_ROWS = 16;

const shape = (tag: string, attributes: Record<string, string | number>, text?: string): Element => {
  const element = document.createElementNS(SVG, tag);
  for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, String(value));
  if (text) element.textContent = text;
  return element;
};

const minuteOf = (at: number): number => {
  const date = new Date(at);
  return date.getHours() * 60 + date.getMinutes();
};
const x = (minute: number): number => LEFT + (minute / DAY) * (WIDTH - LEFT - 4);
const midnight = (at: number, days = 0): Date => {
  const date = new Date(at);
  return new Date(date.getFullYear(), date.getMonth(), date.getDate() + days);
};

/** The plan as a line for each day: her hours, each coat, the waits with their sure end, and the nights. */
export const drawLine = (outcome: Planned, hours: { from: number; to: number }): Element => {
  const first = outcome.steps[0]?.from ?? 0;
  const end = outcome.coats.at(-1)?.recoat.to ?? first;
  const bars = outcome.steps.filter(
    ({ kind, from }) => kind !== 'light-use' && kind !== 'full-use' && from <= end,
  );
  const days: Date[] = [];
  for (let day = 0; days.length < MOST_ROWS && midnight(first, day).getTime() <= end; day++)
    days.push(midnight(first, day));
  const height = (days.length + 1) * ROW + 6;
  const says = `Time line of ${days.length} days with ${outcome.coats.length} coats; the steps below tell the same.`;
  const svg = shape('svg', {
    class: 'line',
    viewBox: `0 0 ${WIDTH} ${height}`,
    role: 'img',
    'aria-label': says,
  });
  for (const hour of [0, 6, 12, 18, 24])
    svg.append(
      shape('text', { x: x(hour * 60), y: 11, 'text-anchor': hour === 24 ? 'end' : 'middle' }, String(hour)),
    );
  for (const [row, day] of days.entries()) {
    const y = (row + 1) * ROW - 4;
    const next = midnight(day.getTime(), 1).getTime();
    const name = new Intl.DateTimeFormat('en-US', { weekday: 'short', day: 'numeric' }).format(day);
    svg.append(shape('text', { x: 0, y: y + 14 }, name));
    svg.append(shape('rect', { class: 'day', x: x(0), y, width: x(DAY) - x(0), height: ROW - 5 }));
    svg.append(
      shape('rect', {
        class: 'hers',
        x: x(hours.from),
        y,
        width: x(hours.to) - x(hours.from),
        height: ROW - 5,
      }),
    );
    const bar = (kind: string, from: number, to: number, text?: string) => {
      if (to <= day.getTime() || from >= next) return;
      const start = from <= day.getTime() ? 0 : minuteOf(from);
      const stop = to >= next ? DAY : minuteOf(to);
      const left = x(start);
      svg.append(
        shape('rect', { class: kind, x: left, y, width: Math.max(2, x(stop) - left), height: ROW - 5 }),
      );
      if (text && from >= day.getTime())
        svg.append(
          shape('text', { class: 'on', x: (left + x(stop)) / 2, y: y + 14, 'text-anchor': 'middle' }, text),
        );
    };
    for (const step of bars)
      if (step.kind === 'wait') {
        bar('wait', step.from, step.surely ?? step.to);
        bar('sure', step.from, step.to);
      }
    for (const step of bars)
      if (step.kind === 'coat') bar('coat', step.from, step.to, String(step.coat));
      else if (step.kind !== 'wait') bar(step.kind, step.from, step.to);
  }
  return svg;
};
