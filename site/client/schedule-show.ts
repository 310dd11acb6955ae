import { sayInstant, saySpan } from '#engine/clock.ts';
import { type AnyEntry, knowledgeOf } from '#engine/index.ts';
import {
  type Calendar,
  cansFor,
  type Job,
  nightOf,
  type Outcome,
  type Planned,
  type PlanProduct,
  schedule,
} from '#engine/schedule.ts';
import type { PlanData } from '../lib/plan.ts';
import { CLOCK, defectUrl } from '../lib/urls.ts';
import { timeStyle } from './clock-store.ts';
import { calendarOf, csvOf } from './schedule-file.ts';
import { drawLine } from './schedule-line.ts';
import { sayAir, sayArea, sayFilm, sayLiters } from './schedule-units.ts';
import { linesOf } from './schedule-words.ts';

type Shown = {
  readonly job: Job;
  readonly outcome: Outcome;
  readonly data: PlanData;
  readonly us: boolean;
  readonly linked: boolean;
  readonly link: string;
  readonly now: number;
  /** Plans anew from a later start. */
  readonly planFrom: (at: number) => void;
};
type Node_ = string | Node;

const make = (tag: string, ...inside: readonly Node_[]): HTMLElement => {
  const [name = 'p', ...classes] = tag.split('.');
  const element = document.createElement(name);
  if (classes.length) element.className = classes.join(' ');
  element.append(...inside);
  return element;
};

const calendarFrom = (start: number): Calendar => {
  const day = new Date(start);
  return {
    at: (days, minute) =>
      new Date(day.getFullYear(), day.getMonth(), day.getDate() + days, 0, minute).getTime(),
    weekday: day.getDay(),
  };
};

/** The plan by the tables that were sent. */
export const outcomeOf = (job: Job, data: PlanData): Outcome => {
  const known = knowledgeOf(data.rules.map((rule) => ({ ...rule, kindOf: 'rule' })) as unknown as AnyEntry[]);
  const product = data.products.find(({ id }) => id === job.product);
  if (!product) throw new Error(`no product ${job.product}`);
  const plan = { ...data.plan, presets: [] };
  return schedule(plan, known, job, product as unknown as PlanProduct, calendarFrom(job.start));
};

const words = (id: string): string => id.replaceAll('-', ' ');
const day = (at: number): string =>
  new Intl.DateTimeFormat('en-US', { weekday: 'short', month: 'short', day: 'numeric' }).format(at);

const clockTime = (at: number): string => sayInstant(at, at, timeStyle());
/** From–to as it may stand on paper: the weekday wherever it is not that of `on`, never 'tomorrow'. */
const spanOn = (on: number, from: number, to: number): string => {
  const at = (instant: number, beside: number) =>
    day(instant) === day(beside) ? clockTime(instant) : `${day(instant)}, ${clockTime(instant)}`;
  return from === to ? at(from, on) : `${at(from, on)} – ${at(to, from)}`;
};

const EDGE = {
  fits: 'it fits: lay it in one go.',
  split:
    'not all of it stays open. Full-length strokes, each on the wet edge of the last, no pause; if you must stop, stop at an edge.',
  slower:
    'not even one stroke stays open. Take a slower product, a little extender if the can allows it, a wider tool, or a second pair of hands.',
} as const;

/** What she buys and lays, in short lines. */
const numbers = ({ outcome, job, us, data }: Shown): HTMLElement => {
  const { build, liters, squareMeters, wetEdge } = outcome;
  const list = make('dl.numbers');
  const row = (name: string, text: string) => list.append(make('div', make('dt', name), make('dd', text)));
  row('Area', sayArea(squareMeters, us));
  if (!build) return list;
  const notes = [
    build.thinned ? ' Lay it a little thinner than usual, so that all coats stay below the most.' : '',
    build.short ? ' Thinner than wanted for this use, but more coats are not laid of it.' : '',
    build.over
      ? ' The can’s own figures give more film than the usual most; the can wins, but thick film may crack.'
      : '',
  ].join('');
  row('Coats', `${build.coats}${notes && `.${notes}`}`);
  row(
    'Each coat',
    `${sayFilm(build.wet, build.wet, us)} wet, ${sayFilm(build.dry.from, build.dry.to, us)} dry`,
  );
  row(
    'All coats',
    `${sayFilm(build.total.from, build.total.to, us)} dry${build.target ? `; wanted ${sayFilm(build.target, build.target, us)} or more` : ''}${build.most ? `, most ${sayFilm(build.most, build.most, us)}` : ''}`,
  );
  if (liters) {
    const cans = cansFor(
      { ...data.plan, presets: [] },
      liters,
      us ? 'us' : 'metric',
      job.applicator === 'aerosol',
    );
    row(
      'Buy',
      `${sayLiters(liters, us)}, loss included: ${cans.map(({ count, can }) => `${count} × ${can.name}`).join(' and ')}`,
    );
  }
  if (wetEdge) {
    const seconds = (minutes: number) =>
      minutes < 1 ? `${Math.round(minutes * 60)} s` : `${minutes.toFixed(1)} min`;
    row(
      'Wet edge',
      `Largest face, the ${wetEdge.part}: ${seconds(wetEdge.faceMinutes)} to lay, one stroke ${seconds(wetEdge.strokeMinutes)}, open ${seconds(wetEdge.openMinutes)}: ${EDGE[wetEdge.verdict]} One load covers about ${sayArea(wetEdge.loadSquareMeters, us)}.`,
    );
  }
  return list;
};

const careOf = ({ outcome }: Shown): readonly HTMLElement[] => {
  const all = [...outcome.care.map(({ why, instead }) => `${why} ${instead}`), ...outcome.weatherCare];
  return all.length ? [make('h3', 'Mind'), make('ul', ...all.map((text) => make('li', text)))] : [];
};

const nightsOf = ({ outcome, job, us, data }: Shown): readonly HTMLElement[] => {
  if (outcome.kind === 'no') return [];
  const night = nightOf({ ...data.plan, presets: [] }, job);
  const air = `${sayAir(night.celsius, us)}, ${Math.round(night.relativeHumidity * 100)} % humidity`;
  const lines = outcome.nights.map(({ from, coat, rests, slower }) =>
    rests
      ? `${day(from)}, coat ${coat}: too cold to count on any drying; it rests until morning.`
      : slower.to > 1.05
        ? `${day(from)}, coat ${coat}: it dries about ${slower.from.toFixed(1)} to ${slower.to.toFixed(1)} times slower.`
        : `${day(from)}, coat ${coat}: no slower than by day.`,
  );
  return [
    make('h3', 'By night'),
    make(
      'p',
      `${air}. ${lines.length ? 'What it does to a wait:' : 'Every coat is ready before night; the cold only delays the cure.'}`,
    ),
    make('ul', ...lines.map((text) => make('li', text))),
  ];
};

const datesOf = ({ outcome, now, job }: Shown & { outcome: Planned }): HTMLElement => {
  const { handle, lightUse, fullUse, handOver } = outcome.dates;
  const list = make('dl.numbers');
  const row = (name: string, text: string) => list.append(make('div', make('dt', name), make('dd', text)));
  const style = timeStyle();
  row('Handle with care', `${day(handle)}, ${clockTime(handle)}`);
  row('Light use', saySpan(lightUse.from, lightUse.to, now, style));
  row('Full use', saySpan(fullUse.from, fullUse.to, now, style));
  row('Hand over', `${day(handOver)}${job.trials.length ? '' : ', with a care card'}`);
  return list;
};

const stepsOf = (shown: Shown & { outcome: Planned }): HTMLElement => {
  const { outcome, job, data, now } = shown;
  const style = timeStyle();
  const list = make('ol.steps');
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
    for (const { title: name, say, kind } of step.before)
      item.append(
        make('p.caution', make('b', `${kind === 'stop' ? 'Stop' : 'Before this step'}: ${name}. `), say),
      );
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
    if (more) item.append(make('p', more));
    for (const { say, defects } of step.looks) {
      const line = make('p.look', `${say} `);
      for (const id of defects) {
        const anchor = make('a', data.defects[id] ?? words(id)) as HTMLAnchorElement;
        anchor.href = defectUrl(id);
        line.append(anchor, ' ');
      }
      item.append(line);
    }
    list.append(item);
  }
  return list;
};

const save = (name: string, type: string, text: string): void => {
  const anchor = document.createElement('a');
  anchor.href = URL.createObjectURL(new Blob([text], { type }));
  anchor.download = name;
  anchor.click();
  setTimeout(() => URL.revokeObjectURL(anchor.href), 10_000);
};

const actsOf = (shown: Shown & { outcome: Planned }): HTMLElement => {
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
    button('Copy a link to this plan', async () => {
      await navigator.clipboard.writeText(address);
      told.textContent = 'Copied. The link holds what you gave, and nothing was sent.';
    }),
    told,
  );
};

const summary = ({ job, data, us, linked }: Shown): string => {
  const product = data.products.find(({ id }) => id === job.product)?.name ?? job.product;
  const told = `${job.piece}: ${words(job.base)}, ${product.toLowerCase()}, ${job.sheen}, by ${words(job.applicator)}, used ${job.wear === 'high' ? 'hard' : job.wear === 'low' ? 'little' : 'normally'}${job.trials.length ? `, with ${job.trials.join(', ')}` : ''}; ${sayAir(job.day.celsius, us)} by day, ${sayAir(job.night.celsius, us)} by night.`;
  return linked ? `From the link, reckoned anew here. ${told} Change anything below.` : told;
};

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
      ...outcome.cautions.map(({ title, say }) => make('p.caution', make('b', `${title}. `), say)),
      numbers(shown),
    );
    return;
  }
  const whole = { ...shown, outcome };
  const coats = outcome.coats.length;
  place.replaceChildren(
    make(
      'h2.verdict.repair',
      `${coats} ${coats === 1 ? 'coat' : 'coats'}, hand over ${day(outcome.dates.handOver)}`,
    ),
    make('p.of', summary(shown)),
    make(
      'div.sheet',
      make('div', make('h3', 'What to buy and lay'), numbers(shown), ...careOf(shown)),
      make('div', make('h3', 'When'), drawLine(outcome, shown.job.hours), datesOf(whole), ...nightsOf(shown)),
    ),
    ...outcome.cautions.map(({ title, say }) => make('p.caution', make('b', `${title}. `), say)),
    make('h3', 'Steps'),
    stepsOf(whole),
    actsOf(whole),
    make('p.small', 'Each time counts on the late end of a range. When a coat is down, start the '),
  );
  const clock = make('a', 'coat clock') as HTMLAnchorElement;
  clock.href = CLOCK;
  place.lastElementChild?.append(clock, '.');
};
