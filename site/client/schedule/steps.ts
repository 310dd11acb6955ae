import { saySpan } from '#engine/clock.ts';
import type { Planned } from '#engine/schedule.ts';
import { defectUrl } from '../../shared/urls.ts';
import { day, type Inside, make, ruleLine, type Shown, spanOn } from '../shared/make.ts';
import { plainId } from '../shared/plain-id.ts';
import { timeStyle } from '../shared/time-style.ts';
import { linesOf } from './words.ts';

/** The steps in order, each with its time, its cautions before it, and what to look for. */
export const stepsOf = (shown: Shown & { outcome: Planned }): HTMLElement => {
  const { outcome, job, data, now } = shown;
  const style = timeStyle();
  const list = make('ol.steps');
  // What an earlier step has told in the same words is left out on paper, where room is short.
  const told = new Set<string>();
  const say = (tag: string, text: string, ...more: readonly Inside[]) => {
    const line = make(told.has(text) ? `${tag}.again` : tag, text, ...more);
    told.add(text);
    return line;
  };
  let last = '';
  for (const { step, title } of linesOf(job, outcome, data)) {
    const date = day(step.from);
    const waits = step.kind === 'wait' || step.kind === 'test-patch';
    const range =
      step.kind === 'light-use' || step.kind === 'full-use'
        ? saySpan(step.from, step.to, now, style)
        : step.kind === 'wait'
          ? `until ${spanOn(step.from, step.to, step.surely ?? step.to)}`
          : step.final
            ? `from ${spanOn(step.from, step.from, step.to)} on`
            : spanOn(step.from, step.from, step.to);
    const item = make('li', make('b', title), ' ', make('span.when', range));
    if (date !== last && !waits) item.prepend(make('span.date', date));
    if (!waits) last = date;
    item.classList.add(step.kind);
    item.append(...step.before.map((rule) => ruleLine(rule, 'Before this step: ')));
    const more = [
      step.say,
      step.must ? 'Sand for sure: it has dried too long for the next coat to hold.' : '',
    ]
      .concat(
        step.kind === 'coat' && step.coat === 1
          ? ['Stir from the bottom, strain. Full-length strokes; do not go back.']
          : [],
      )
      .filter(Boolean)
      .join(' ');
    if (more) item.append(say('p', more));
    for (const look of step.looks) {
      const line = say('p.look', `${look.say} `);
      for (const id of look.defects) {
        const anchor = make('a', data.defects[id] ?? plainId(id)) as HTMLAnchorElement;
        anchor.href = defectUrl(id);
        line.append(...(id === look.defects[0] ? [] : [', ']), anchor);
      }
      item.append(line);
    }
    list.append(item);
  }
  return list;
};
