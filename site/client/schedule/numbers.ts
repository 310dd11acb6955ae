import { saySpan } from '#engine/clock.ts';
import { cansFor, nightOf, type Planned } from '#engine/schedule.ts';
import { clockTime, day, make, type Shown } from '../shared/make.ts';
import { sayArea, sayDegrees, sayFilm, sayLiters } from '../shared/say-units.ts';
import { timeStyle } from '../shared/time-style.ts';

const EDGE = {
  fits: 'it fits: lay it in one go.',
  split:
    'not all of it stays open. Full-length strokes, each on the wet edge of the last, no pause; if you must stop, stop at an edge.',
  slower:
    'not even one stroke stays open. Take a slower product, a little extender if the can allows it, a wider tool, or a second pair of hands.',
} as const;

/** What she buys and lays, in short lines. */
export const numbers = ({ outcome, job, us, data }: Shown): HTMLElement => {
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
    const cans = cansFor(data.plan, liters, us ? 'us' : 'metric', job.applicator === 'aerosol');
    row(
      'Buy',
      `${sayLiters(liters, us)}, loss included; with a tenth to spare: ${cans.map(({ count, can }) => `${count} × ${can.name}`).join(' and ')}`,
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

export const careList = ({ outcome }: Shown): readonly HTMLElement[] => {
  const all = [...outcome.care.map(({ why, instead }) => `${why} ${instead}`), ...outcome.weatherCare];
  return all.length ? [make('h3', 'Mind'), make('ul', ...all.map((text) => make('li', text)))] : [];
};

export const nightList = ({ outcome, job, us, data }: Shown): readonly HTMLElement[] => {
  if (outcome.kind === 'no') return [];
  const night = nightOf(data.plan, job);
  const air = `${sayDegrees(night.celsius, us)}, ${Math.round(night.relativeHumidity * 100)} % humidity`;
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

export const dateList = ({ outcome, now, job }: Shown & { outcome: Planned }): HTMLElement => {
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
