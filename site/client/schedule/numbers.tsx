import { saySpan } from '#engine/clock.ts';
import { cansFor, nightOf, type Outcome } from '#engine/schedule.ts';
import { type DefinitionRow, DefinitionRows } from '../shared/definition-rows.tsx';
import { sayDay, sayTime } from '../shared/say-date.ts';
import { sayArea, sayFilm, sayLiters, sayWholeDegrees } from '../shared/say-units.ts';
import { timeStyle } from '../shared/time-style.ts';
import type { PlannedShown, PlanShown } from './shown.ts';
import { SPRAYS } from './words.ts';

/** A tool that touches the film lays strokes, one that sprays lays passes. */
const LAID = { strokes: 'stroke', passes: 'pass' } as const;
const EDGE = {
  strokes: {
    fits: 'It fits: lay it in one go.',
    split:
      'Not all of it stays open. Full-length strokes, each on the wet edge of the last, no pause; if you must stop, stop at an edge.',
    slower:
      'Not even one stroke stays open. Take a slower product, a little extender if the can allows it, a wider tool, or a second pair of hands.',
  },
  passes: {
    fits: 'It fits: lay it in one go, each pass half over the last.',
    split:
      'Not all of it stays open. Full-length passes, each half over the last while that is wet, no pause; if you must stop, stop at an edge.',
    slower: 'Not even one pass stays open. Take a slower product, or lay it with another tool.',
  },
} as const;

/** A figure is never torn from its unit. */
const sayMinutes = (minutes: number): string =>
  minutes < 1 ? `${Math.round(minutes * 60)}\u00a0s` : `${minutes.toFixed(1)}\u00a0min`;

const sayNotes = ({ thinned, short, over }: NonNullable<Outcome['build']>): string =>
  [
    thinned && ' Lay it a little thinner than usual, so that all coats stay below the most.',
    short && ' Thinner than wanted for this use, but more coats are not laid of it.',
    over &&
      ' The can’s own figures give more film than the usual most; the can wins, but thick film may crack.',
  ]
    .filter(Boolean)
    .join('');

const filmRows = ({ outcome: { build, areas }, us }: PlanShown): readonly DefinitionRow[] => {
  if (!build) return [];
  const film = (from: number, to = from) => sayFilm(from, to, us);
  const { coats, wet, dry, total, target, most } = build;
  const notes = sayNotes(build);
  const wanted = target ? `; wanted ${film(target)} or more` : '';
  return [
    ['Coats', `${coats}${areas.back ? ' on each face' : ''}${notes && `.${notes}`}`],
    ['Each coat', `${film(wet)} wet, ${film(dry.from, dry.to)} dry`],
    ['All coats', `${film(total.from, total.to)} dry${wanted}${most ? `, most ${film(most)}` : ''}`],
  ];
};

const buyRows = ({ outcome: { liters }, job, us, data }: PlanShown): readonly DefinitionRow[] => {
  if (!liters) return [];
  const cans = cansFor(data.plan, liters, us ? 'us' : 'metric', job.applicator === 'aerosol');
  const list = cans.map(({ count, can }) => `${count}\u00a0×\u00a0${can.name}`).join(' and ');
  return [['Buy', `${sayLiters(liters, us)}, loss included; with a tenth to spare: ${list}`]];
};

const areaWords = ({ outcome: { squareMeters, areas }, us }: PlanShown): string => {
  const all = sayArea(squareMeters, us);
  if (!areas.back) return all;
  return `${all}: backs ${sayArea(areas.back, us)}, fronts with edges and all else ${sayArea(areas.front, us)}`;
};

/** What she buys, and how many coats of it she lays, in short lines. */
export const PlanNumbers = (shown: PlanShown) => (
  <DefinitionRows
    class="numbers"
    of={[...(shown.outcome.build ? buyRows(shown) : []), ['Area', areaWords(shown)], ...filmRows(shown)]}
  />
);

/** What counts while she lays it: nobody reads it before the day. What a load covers is told of what loses none of it. */
export const LayNumbers = ({ outcome: { build, wetEdge }, job: { applicator }, us }: PlanShown) => {
  if (!build || !wetEdge) return null;
  const { part, faceMinutes, strokeMinutes, openMinutes, verdict, loadSquareMeters } = wetEdge;
  const how = SPRAYS.includes(applicator) ? 'passes' : 'strokes';
  return (
    <p>
      <b>{`Wet edge of the largest face, the ${part}. `}</b>
      {`${sayMinutes(faceMinutes)} to lay, one ${LAID[how]} ${sayMinutes(strokeMinutes)}, open ${sayMinutes(openMinutes)}. `}
      {EDGE[how][verdict]}
      {how === 'strokes' && ` One load covers about ${sayArea(loadSquareMeters, us)}.`}
    </p>
  );
};

export const CareList = ({ outcome: { care, weatherCare } }: Pick<PlanShown, 'outcome'>) => {
  const all = [...care.map(({ why, instead }) => `${why} ${instead}`), ...weatherCare];
  return all.length ? (
    <>
      <h3>Mind</h3>
      <ul>
        {all.map((says) => (
          <li key={says}>{says}</li>
        ))}
      </ul>
    </>
  ) : null;
};

/** From here on a wait is told to be slower by night. */
const SLOWER = 1.05;

/** What the nights do to each wait. */
export const NightList = ({ outcome: { nights }, job, us, data }: PlannedShown) => {
  const { celsius, relativeHumidity } = nightOf(data.plan, job);
  const air = `${sayWholeDegrees(celsius, us)}, ${Math.round(relativeHumidity * 100)} % humidity`;
  return (
    <>
      <h3>By night</h3>
      <p>
        {`${air}. ${nights.length ? 'What it does to a wait:' : 'Every coat is ready before night; the cold only delays the cure.'}`}
      </p>
      <ul>
        {nights.map(({ from, coat, face, rests, slower }) => (
          <li key={`${coat} ${face} ${from}`}>
            {`${sayDay(from)}, ${face ? `${face}, ` : ''}coat ${coat}: `}
            {rests
              ? 'too cold to count on any drying; it rests until morning.'
              : slower.to > SLOWER
                ? `it dries about ${slower.from.toFixed(1)} to ${slower.to.toFixed(1)} times slower.`
                : 'no slower than by day.'}
          </li>
        ))}
      </ul>
    </>
  );
};

export const DateList = ({ outcome, now, job }: PlannedShown) => {
  const { handle, lightUse, fullUse, handOver } = outcome.dates;
  const style = timeStyle();
  return (
    <DefinitionRows
      class="numbers"
      of={[
        ['Handle with care', `${sayDay(handle)}, ${sayTime(handle)}`],
        ['Light use', saySpan(lightUse.from, lightUse.to, now, style)],
        ['Full use', saySpan(fullUse.from, fullUse.to, now, style)],
        ['Hand over', `${sayDay(handOver)}${job.trials.length ? '' : ', with a care card'}`],
      ]}
    />
  );
};
