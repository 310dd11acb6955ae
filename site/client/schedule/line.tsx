import { DAY_MIN, HOUR_MIN } from '#engine/plain/time.ts';
import type { Face, Planned } from '#engine/schedule.ts';

const WIDTH = 360;
const LEFT = 58;
const ROW = 24;
const HEIGHT = ROW - 5;
/** A plan of oil may take weeks of waiting; what comes later is told in the dates. */
const MOST_ROWS = 16;
const HOURS = [0, 6, 12, 18, 24];

const minuteOf = (at: number): number => {
  const date = new Date(at);
  return date.getHours() * HOUR_MIN + date.getMinutes();
};
const x = (minute: number): number => LEFT + (minute / DAY_MIN) * (WIDTH - LEFT - 4);
const midnight = (at: number, days = 0): Date => {
  const date = new Date(at);
  return new Date(date.getFullYear(), date.getMonth(), date.getDate() + days);
};

/** A bar of a coat is as wide as its time, with room for one letter: its face, where there are two. */
const FACE_LETTERS: Readonly<Record<Face, string>> = { back: 'B', front: 'F' };

/** A stretch of time in one row of the line. */
type Bar = { readonly kind: string; readonly from: number; readonly to: number; readonly says?: string };

/** Waits lie below, so that what is done in them is seen. */
const barsOf = ({ steps, coats }: Planned): readonly Bar[] => {
  const end = coats.at(-1)?.recoat.to ?? 0;
  const shown = steps.filter(({ kind, from }) => kind !== 'light-use' && kind !== 'full-use' && from <= end);
  const waits = shown
    .filter(({ kind }) => kind === 'wait')
    .flatMap(({ from, to, surely }) => [
      { kind: 'wait', from, to: surely ?? to },
      { kind: 'sure', from, to },
    ]);
  const work = shown
    .filter(({ kind }) => kind !== 'wait')
    .map(({ kind, from, to, coat, face }) => ({
      kind,
      from,
      to,
      ...(kind === 'coat' && { says: face ? FACE_LETTERS[face] : String(coat) }),
    }));
  return [...waits, ...work];
};

const daysOf = ({ steps, coats }: Planned): readonly Date[] => {
  const first = steps[0]?.from ?? 0;
  const end = coats.at(-1)?.recoat.to ?? first;
  const days: Date[] = [];
  for (let day = 0; days.length < MOST_ROWS && midnight(first, day).getTime() <= end; day++)
    days.push(midnight(first, day));
  return days;
};

type RowProps = {
  readonly day: Date;
  readonly y: number;
  readonly hours: { readonly from: number; readonly to: number };
  readonly bars: readonly Bar[];
};

const Row = ({ day, y, hours, bars }: RowProps) => {
  const begin = day.getTime();
  const next = midnight(begin, 1).getTime();
  const name = new Intl.DateTimeFormat('en-US', { weekday: 'short', day: 'numeric' }).format(day);
  return (
    <>
      <text x={0} y={y + 14}>
        {name}
      </text>
      <rect class="day" x={x(0)} y={y} width={x(DAY_MIN) - x(0)} height={HEIGHT} />
      <rect class="hers" x={x(hours.from)} y={y} width={x(hours.to) - x(hours.from)} height={HEIGHT} />
      {bars
        .filter(({ from, to }) => to > begin && from < next)
        .map(({ kind, from, to, says }) => {
          const left = x(from <= begin ? 0 : minuteOf(from));
          const right = x(to >= next ? DAY_MIN : minuteOf(to));
          return (
            <g key={`${kind} ${from}`}>
              <rect class={kind} x={left} y={y} width={Math.max(2, right - left)} height={HEIGHT} />
              {says && from >= begin && (
                <text class="on" x={(left + right) / 2} y={y + 14} text-anchor="middle">
                  {says}
                </text>
              )}
            </g>
          );
        })}
    </>
  );
};

type Props = { readonly plan: Planned; readonly hours: { readonly from: number; readonly to: number } };

/** The plan as a line for each day: her hours, each coat, the waits with their sure end, and the nights. */
export const TimeLine = ({ plan, hours }: Props) => {
  const days = daysOf(plan);
  const bars = barsOf(plan);
  const height = (days.length + 1) * ROW + 6;
  return (
    <svg
      class="line"
      viewBox={`0 0 ${WIDTH} ${height}`}
      role="img"
      aria-label={`Time line of ${days.length} days with ${plan.coats.length} coats; the steps below tell the same.`}
    >
      {HOURS.map((hour) => (
        <text key={hour} x={x(hour * HOUR_MIN)} y={11} text-anchor={hour === 24 ? 'end' : 'middle'}>
          {hour}
        </text>
      ))}
      {days.map((day, row) => (
        <Row key={day.getTime()} day={day} y={(row + 1) * ROW - 4} hours={hours} bars={bars} />
      ))}
    </svg>
  );
};

/** What each kind of bar says. */
const KEY: readonly (readonly [kind: string, says: string])[] = [
  ['hers', 'Your hours'],
  ['look', 'Look, sand, wipe'],
  ['coat', 'A coat'],
  ['sure', 'Surely too soft'],
  ['wait', 'Until surely ready'],
];

/** What is said otherwise where parts are turned. */
const TURNED_KEY: Readonly<Record<string, string>> = {
  look: 'Turn, look, sand, wipe',
  coat: 'A coat: B back, F front',
};
const keyOf = (turned: boolean) =>
  KEY.map(([kind, says]) => [kind, (turned && TURNED_KEY[kind]) || says] as const);

/** Swatches drawn as the bars are: no name of a color, which is another in the dark and gray on many a printer. */
export const TimeKey = ({ plan }: Pick<Props, 'plan'>) => (
  <ul class="key">
    {keyOf(plan.areas.back > 0).map(([kind, says]) => (
      <li key={kind}>
        <svg class="line" viewBox="0 0 28 16" aria-hidden="true">
          <rect class={kind} x={1} y={1} width={26} height={14} />
        </svg>
        {says}
      </li>
    ))}
  </ul>
);
