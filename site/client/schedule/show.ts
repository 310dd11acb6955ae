import { h, render } from 'preact';
import { sayInstant } from '#engine/clock.ts';
import { type Job, type Outcome, schedule } from '#engine/schedule.ts';
import type { PlanData } from '../../shared/plan-data.ts';
import { planRules } from '../../shared/plan-rules.ts';
import { CLOCK } from '../../shared/urls.ts';
import { calendarAt } from '../shared/calendar.ts';
import { day, make, ruleLine, type Shown } from '../shared/make.ts';
import { plainId } from '../shared/plain-id.ts';
import { sayDegrees } from '../shared/say-units.ts';
import { timeStyle } from '../shared/time-style.ts';
import { actsOf } from './acts.ts';
import { TimeLine } from './line.tsx';
import { careList, dateList, nightList, numbers } from './numbers.ts';
import { stepsOf } from './steps.ts';

/** The plan by the tables that were sent. */
export const outcomeOf = (job: Job, data: PlanData, us: boolean): Outcome => {
  const product = data.products.find(({ id }) => id === job.product);
  if (!product) throw new Error(`no product ${job.product}`);
  const units = us ? 'us' : 'metric';
  return schedule(data.plan, planRules(data), job, product, calendarAt(job.start), units);
};

const KEY =
  'White: your hours. Red: look, sand, wipe. Green: a coat. Yellow: surely too soft; dashed: until surely ready.';

const summary = ({ job, data, us, linked }: Shown): string => {
  const product = data.products.find(({ id }) => id === job.product)?.name ?? job.product;
  const told = `${job.piece}: ${plainId(job.base)}, ${product.toLowerCase()}, ${job.sheen}, by ${plainId(job.applicator)}, used ${job.wear === 'high' ? 'hard' : job.wear === 'low' ? 'little' : 'normally'}${job.trials.length ? `, with ${job.trials.join(', ')}` : ''}; ${sayDegrees(job.day.celsius, us)} by day, ${sayDegrees(job.night.celsius, us)} by night.`;
  return linked ? `From the link, reckoned anew here. ${told} Change anything below.` : told;
};

const tooLate = (days: number): HTMLElement =>
  make(
    'p.caution.stop',
    make('b', `${days} ${days === 1 ? 'day' : 'days'} after the promised one. `),
    'No date here can be brought forward by hand. Tell the buyer now, or plan a top coat that is ready sooner.',
  );

/** Shows the plan, or the no, in place of what stood there. */
export const show = (place: HTMLElement, shown: Shown): void => {
  const { outcome, planFrom, now } = shown;
  const style = timeStyle();
  if (outcome.kind === 'no') {
    const reasons = outcome.why.flatMap(({ says, instead, earliest }) => {
      const all = [make('p.why', says)];
      if (instead) all.push(make('p', make('b', 'Instead: '), instead));
      if (earliest) {
        const again = make(
          'button.quiet',
          `Plan from ${sayInstant(earliest, now, style)}`,
        ) as HTMLButtonElement;
        again.type = 'button';
        again.addEventListener('click', () => planFrom(earliest));
        all.push(again);
      }
      return all;
    });
    const wait = outcome.why.every(({ code }) => code === 'base' || code === 'weather' || code === 'drying');
    place.replaceChildren(
      make('h2.verdict.stop', wait ? 'No, not now' : 'No'),
      make('p.of', summary(shown)),
      ...reasons,
      ...outcome.cautions.map((rule) => ruleLine(rule)),
      numbers(shown),
    );
    return;
  }
  const whole = { ...shown, outcome };
  const coats = outcome.coats.length;
  const line = make('div');
  render(h(TimeLine, { plan: outcome, hours: shown.job.hours }), line);
  place.replaceChildren(
    make(
      'h2.verdict.repair',
      `${coats} ${coats === 1 ? 'coat' : 'coats'}, hand over ${day(outcome.dates.handOver)}`,
    ),
    ...(outcome.lateDays ? [tooLate(outcome.lateDays)] : []),
    make('p.of', summary(shown)),
    make(
      'div.sheet',
      make('div', make('h3', 'What to buy and lay'), numbers(shown), ...careList(shown)),
      make('div', make('h3', 'When'), line, make('p.small', KEY), dateList(whole), ...nightList(shown)),
    ),
    ...outcome.cautions.map((rule) => ruleLine(rule)),
    make('h3', 'Steps'),
    stepsOf(whole),
    actsOf(whole),
    make('p.small', 'Each time counts on the late end of a range. When a coat is down, start the '),
  );
  const clock = make('a', 'coat clock') as HTMLAnchorElement;
  clock.href = CLOCK;
  place.lastElementChild?.append(clock, '.');
};
