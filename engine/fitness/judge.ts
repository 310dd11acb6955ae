import { sayProblem } from '../calc/say-problem.ts';
import { sayWeatherReasons, type WeatherWords } from '../calc/say-weather.ts';
import type { Units } from '../calc/units.ts';
import { weatherVerdict } from '../calc/weather.ts';
import { type Case, withFact, without } from '../case/case.ts';
import { nextCoatAt } from '../clock/next-coat.ts';
import { FACTS } from '../model/facts.ts';
import type { Plan } from '../model/plan.ts';
import type { GRITS, Step } from '../model/step.ts';
import { filled } from '../plain/filled.ts';
import { HOUR_MS } from '../plain/time.ts';
import { type Firing, fire, rulesForStep, type SaidRule } from '../rules/rules.ts';
import { coatStep, factsOfLaying } from './case.ts';
import { tooThick } from './film-risk.ts';
import { type Laying, type LayingProduct, underCan } from './laying.ts';
import { nightsAfter } from './night.ts';
import type { No } from './no.ts';
import { type BaseWait, baseHoursOf, baseWait, type FitnessRow, fitnessOf, named } from './rows.ts';

const APPLICATORS = FACTS.applicator.values;

/** What is said of a coat before it is laid. */
export type Judgement = {
  /** `wait`: it may be laid once the base is ready. */
  readonly verdict: 'go' | 'care' | 'wait' | 'no';
  /** What forbids it, safety first. */
  readonly noes: readonly No[];
  /** The base that needs longer, and the hours that are still missing in this air; nothing where it is ready. */
  readonly wait: { readonly row: BaseWait; readonly hours: number } | undefined;
  /** What to mind about this product for this use. */
  readonly care: readonly FitnessRow[];
  /** What to mind in this weather. Where the weather is a no, what only adds to it and nothing to do. */
  readonly weatherCare: readonly string[];
  /** What stands before the coat: rags, vapor, mask, lead and the like, each once. */
  readonly cautions: readonly SaidRule[];
};

/** The tables that a judgement rests on, and what the clock says of weather. */
export type JudgeTables = Pick<
  Plan,
  'fitness' | 'waits' | 'over' | 'wash' | 'prepare' | 'between' | 'noes' | 'refuse' | 'sanding'
> & { readonly words: WeatherWords };

/** Less than this is no wait: a table that says a day does not mean it to the minute. */
const LEAST_WAIT_HOURS = 0.5;

/** Hours that the base still needs, from when the coat would be laid. */
const hoursLeft = (laying: Laying, row: BaseWait): number => {
  if (laying.onOwnCoat || laying.baseHours === undefined) return 0;
  const left = baseHoursOf(laying, row) - laying.baseHours;
  return left < LEAST_WAIT_HOURS ? 0 : left;
};

/** A flaw that is not settled comes before any coat. */
const flawFirst = ({ noes }: JudgeTables, { openFlaw }: Laying): readonly No[] => {
  if (!openFlaw) return [];
  const { why, instead } = noes[`flaw-${openFlaw}`];
  return [{ code: 'flaw', says: why, instead }];
};

/** A film that is thick enough bears no other coat, however long it dries. */
const thickEnough = ({ sanding, noes }: JudgeTables, { film }: Laying): readonly No[] => {
  const most = film && tooThick(sanding, film);
  return most ? [{ code: 'film', says: most.say, instead: noes['too-thick'].instead }] : [];
};

/** What speaks against this product over the coat below: another finish that does not bear it, or not yet; else its time. */
const coatBelow = (
  plan: JudgeTables,
  { ownBelow }: Laying,
  { family }: LayingProduct,
  at: number | undefined,
): readonly No[] => {
  if (!ownBelow) return [];
  const row = plan.over.find(
    ({ below, families, hours }) =>
      below.includes(ownBelow.family) &&
      families.includes(family) &&
      (hours === undefined || ownBelow.hours < hours),
  );
  const left = row?.hours === undefined ? undefined : row.hours - ownBelow.hours;
  if (row)
    return [
      {
        code: 'coat-below',
        says: row.why,
        instead: row.instead,
        ...(at !== undefined && left !== undefined && { earliest: at + left * HOUR_MS }),
      },
    ];
  const { bears } = ownBelow;
  const next = bears && at !== undefined && nextCoatAt(bears, at);
  if (!next || next.may) return [];
  const { why } = plan.noes[next.closed ? 'closed' : 'too-early'];
  return [{ code: 'coat-below', says: why, earliest: next.from.to }];
};

/** A row of the tables that is sanded, as a step that the rules know. */
export const rubOf = (
  { say, does }: { readonly say: string; readonly does?: Step['does'] | undefined },
  grit: (typeof GRITS)[number],
): Step => ({ kind: 'sand', grit, say, ...(does && { does }) });

/** A row of the tables that is washed, as a step that the rules know. */
export const washOf = ({ say, does }: Pick<Plan['wash'][number], 'say' | 'does'>): Step => ({
  kind: 'wipe',
  with: 'damp-cloth',
  say,
  ...(does && { does }),
});

const washingOf = (plan: JudgeTables, { base, onOwnCoat }: Laying): readonly Step[] =>
  onOwnCoat ? [] : plan.wash.filter(({ bases }) => named(bases, base)).map(washOf);

const sandedBy = (row: JudgeTables['prepare'][number] | JudgeTables['between'][number] | undefined) =>
  row?.grit ? [rubOf(row, row.grit)] : [];

/** Steps of washing and sanding that a base is made ready by. */
const onBase = (plan: JudgeTables, laying: Laying): readonly Step[] => [
  ...washingOf(plan, laying),
  ...sandedBy(laying.onOwnCoat ? undefined : plan.prepare.find(({ bases }) => named(bases, laying.base))),
];

/** Steps of sanding between coats; a film with isocyanate in it is coated unsanded. */
const onFilm = (
  plan: JudgeTables,
  { base, onOwnCoat, hardener }: Laying,
  { family }: LayingProduct,
): readonly Step[] =>
  (onOwnCoat || base !== undefined) && hardener !== 'isocyanate'
    ? sandedBy(plan.between.find(({ families }) => families.includes(family)))
    : [];

/** Steps of washing and sanding that come with a coat of this product over this base; none where nothing is told of what it lies on. */
export const madeReadyBy = (plan: JudgeTables, laying: Laying, product: LayingProduct): readonly Step[] => [
  ...onBase(plan, laying),
  ...onFilm(plan, laying, product),
];

/** Steps with the facts that their rules go by. */
export type Ahead = { readonly on: Case; readonly steps: readonly Step[] };

/** What the coat itself does comes first, a flame before the dust of sanding. What is mixed into it is not in the base. */
export const aheadOf = (plan: JudgeTables, laying: Laying, product: LayingProduct): readonly Ahead[] => {
  const on = factsOfLaying(laying, product);
  return [
    { on, steps: [coatStep(laying, product)] },
    { on: without(on, 'hardener'), steps: onBase(plan, laying) },
    {
      on: laying.hardenerBelow === 'isocyanate' ? withFact(on, 'hardener', 'isocyanate') : on,
      steps: onFilm(plan, laying, product),
    },
  ];
};

/** The rules that fire for any of these, in their order. */
const firedBy = (known: Firing<SaidRule>, ahead: readonly Ahead[]): readonly SaidRule[] => {
  const fired = new Set(
    ahead.flatMap(({ on, steps }) => {
      const { stops, cautions } = fire(known, on, steps);
      return [...stops, ...cautions];
    }),
  );
  return known.rules.filter((rule) => fired.has(rule));
};

const weatherOf = ({ words }: JudgeTables, product: LayingProduct, { day, inSun }: Laying, units: Units) => {
  const judged = weatherVerdict(product, { ...day, inSun: inSun ?? false });
  if (!judged.ok)
    return { noes: [{ code: 'weather' as const, says: sayProblem(judged.problem, units) }], care: [] };
  const said = sayWeatherReasons(words, judged.value, 'before', units);
  return {
    noes: said
      .filter(({ reason }) => reason.verdict === 'no')
      .map(({ says }): No => ({ code: 'weather', says })),
    care: said.filter(({ reason }) => reason.verdict === 'go-with-care').map(({ says }) => says),
  };
};

const toolOf = (
  { noes: { tool } }: JudgeTables,
  product: LayingProduct,
  { applicator, label }: Laying,
): readonly No[] => {
  const films = product['wet-film-micrometers'];
  if (!applicator || films[applicator] || label?.squareMetersPerLiter) return [];
  return [
    {
      code: 'tool',
      says: filled(tool.why, { product: product.name }),
      instead: filled(tool.instead, { tools: Object.keys(films).join(', ') }),
    },
  ];
};

/** What is laid with one tool alone is laid with that, said or not: an aerosol is sprayed. */
const withItsTool = (laying: Laying, { 'wet-film-micrometers': films }: LayingProduct): Laying => {
  const [only, ...more] = APPLICATORS.filter((tool) => films[tool]);
  return laying.applicator || more.length ? laying : { ...laying, applicator: only };
};

type JudgeHow = {
  /** When it would be laid, epoch milliseconds. */
  readonly at?: number;
  readonly units?: Units;
  /** It is laid at that very time, so that the nights after it count; a plan finds its own hours. */
  readonly dries?: boolean;
};

/**
 * The one judgement of a coat before it is laid: what fits on what, how long the base waits, for whom it is not fit,
 * which weather is a no, and which cautions come first. Plan, clock, card and walk all ask it. `at`, epoch milliseconds,
 * is when it would be laid; without it a base that is too fresh names no time.
 */
export const judgeLaying = (
  plan: JudgeTables,
  known: Firing<SaidRule>,
  asTold: Laying,
  told: LayingProduct,
  { at, units = 'metric', dries = false }: JudgeHow = {},
): Judgement => {
  const laying = withItsTool(asTold, told);
  const product = underCan(told, laying);
  const ahead = aheadOf(plan, laying, product);
  const fired = firedBy(known, ahead);
  // A rub on her own film is warned of; only making the base ready for a coat can forbid it.
  const forbidding = laying.onOwnCoat ? firedBy(known, ahead.slice(0, 1)) : fired;
  const before = ahead.flatMap(({ on, steps }) => steps.flatMap((step) => rulesForStep(known, on, step)));
  const fitness = fitnessOf(plan, laying, product);
  const row = baseWait(plan, laying, product);
  const hours = row ? hoursLeft(laying, row) : 0;
  const weather = weatherOf(plan, product, laying, units);
  const thick = thickEnough(plan, laying);
  const noes: readonly No[] = [
    ...forbidding
      .filter(({ id }) => plan.refuse.some((refused) => refused === id))
      .map(
        ({ id, title, say }): No => ({
          code: 'rule',
          says: `${/[.?!]$/.test(title) ? title : `${title}.`} ${say}`,
          rule: id,
        }),
      ),
    ...fitness
      .filter(({ verdict }) => verdict === 'no')
      .map(({ why, instead }): No => ({ code: 'use', says: why, instead })),
    ...toolOf(plan, product, laying),
    ...flawFirst(plan, laying),
    ...(thick.length ? thick : coatBelow(plan, laying, product, at)),
    ...(row?.refuse && hours > 0
      ? [
          {
            code: 'base' as const,
            says: row.why,
            instead: plan.noes['base-too-fresh'].instead,
            ...(at !== undefined && { earliest: at + hours * HOUR_MS }),
          },
        ]
      : []),
    ...weather.noes,
    ...(dries && at !== undefined ? nightsAfter(plan, product, laying, at, units) : []),
  ];
  const care = fitness.filter(({ verdict }) => verdict === 'care');
  const wait = row && hours > 0 ? { row, hours } : undefined;
  const mind = care.length > 0 || weather.care.length > 0;
  return {
    verdict: noes.length ? 'no' : wait ? 'wait' : mind ? 'care' : 'go',
    noes,
    wait,
    care,
    weatherCare: weather.care,
    cautions: [...new Set([...fired.filter(({ kind }) => kind === 'stop'), ...before, ...fired])].filter(
      ({ kind }) => kind !== 'adjustment',
    ),
  };
};

/**
 * What forbids a coat whatever product of its kind it is: the noes that all of these give, in the words of the first.
 */
export const noesOfAll = (
  plan: JudgeTables,
  known: Firing<SaidRule>,
  laying: Laying,
  products: readonly LayingProduct[],
  units: Units = 'metric',
): readonly No[] => {
  const [first = [], ...others] = products.map(
    (product) => judgeLaying(plan, known, laying, product, { units }).noes,
  );
  return first.filter(({ code }) => others.every((noes) => noes.some((no) => no.code === code)));
};
