import { render } from 'preact';
import { sayInstant } from '#engine/clock.ts';
import { keysOf } from '#engine/plain/entry-of.ts';
import { type Refusal, schedule } from '#engine/schedule.ts';
import { LEAD } from '../../shared/lead.ts';
import { planRules } from '../../shared/plan-rules.ts';
import { CLOCK, ruleUrl } from '../../shared/urls.ts';
import { calendarAt } from '../shared/calendar.ts';
import { Caution } from '../shared/caution.tsx';
import { counted } from '../shared/counted.ts';
import { plainId } from '../shared/plain-id.ts';
import { sayBoth } from '../shared/say-both-faces.ts';
import { sayDay } from '../shared/say-date.ts';
import { sayHardener } from '../shared/say-hardener.ts';
import { sayWholeDegrees } from '../shared/say-units.ts';
import { timeStyle } from '../shared/time-style.ts';
import { PlanActs } from './acts.tsx';
import { TimeKey, TimeLine } from './line.tsx';
import { sayOfNight } from './night.ts';
import { CareList, DateList, LayNumbers, NightList, PlanNumbers } from './numbers.tsx';
import { otherCoat } from './other-coat.ts';
import type { PlanAsked, PlannedShown, PlanShown } from './shown.ts';
import { StepList } from './steps.tsx';
import { SPRAYS } from './words.ts';

const USED = { low: 'little', normal: 'normally', high: 'hard' } as const;

/** The product of a job; nothing of one that is not known here. */
const productOf = ({ job, data }: PlanAsked) => data.products.find(({ id }) => id === job.product);

const summaryOf = (asked: PlanAsked): string => {
  const { job, us, can } = asked;
  const product = productOf(asked)?.name ?? job.product;
  const both = sayBoth(job.both);
  const told = [
    `${job.piece}: ${plainId(job.base)}`,
    `${product.toLowerCase()}${can ? ` “${can}”` : ''}`,
    job.sheen,
    `by ${plainId(job.applicator)}`,
    ...(both ? [both] : []),
    ...(job.hardener ? [sayHardener(job.hardener)] : []),
    `used ${USED[job.wear]}`,
    ...(job.trials.length ? [`with ${job.trials.join(', ')}`] : []),
  ].join(', ');
  const air = `${sayWholeDegrees(job.day.celsius, us)} by day, ${sayWholeDegrees(job.night.celsius, us)} by night.`;
  const ofNight = sayOfNight(job.day, job.night, asked.data.plan.night['supposed-colder'], us);
  return `${told}; ${air}${ofNight ? ` ${ofNight}` : ''}`;
};

/** What is planned; how it came here, and where it is changed, is for a screen alone. */
const OfPlan = (asked: PlanAsked) => (
  <p class="of">
    {asked.linked && (
      <span class="on-screen">From the link, reckoned anew here{asked.cut && ', its long name cut'}. </span>
    )}
    {summaryOf(asked)}
    {asked.linked && <span class="on-screen"> Change anything above.</span>}
  </p>
);

/** The rule that no finish with isocyanate is sprayed at home, by its id. */
const NOT_SPRAYED = 'not-sprayed-at-home';

/** What a job can wait for; all else no later start mends. */
const PASSES = ['base', 'weather', 'drying'];

const RefusalView = (shown: PlanShown<Refusal>) => {
  const { outcome, now, planFrom, planWith, planBy, planTested } = shown;
  const passes = outcome.why.every(({ code }) => PASSES.includes(code));
  const other = passes ? undefined : otherCoat(shown, outcome);
  const noSpray = outcome.why.some(({ rule }) => rule === NOT_SPRAYED);
  const tools =
    noSpray || outcome.why.some(({ code }) => code === 'tool')
      ? keysOf(productOf(shown)?.['wet-film-micrometers'] ?? {}).filter(
          (tool) => !noSpray || !SPRAYS.includes(tool),
        )
      : [];
  return (
    <>
      <h2 class="verdict stop">{passes ? 'No, not now' : 'No'}</h2>
      <OfPlan {...shown} />
      {outcome.why.map(({ says, instead, earliest, rule }) => (
        <>
          <p class="why">{says}</p>
          {instead && (
            <p>
              <b>Instead: </b>
              {instead}
            </p>
          )}
          {rule && (
            <p>
              <a href={ruleUrl(rule)}>
                {rule === LEAD ? 'How to test it, and what to do until then' : 'Why, and what to do'}
              </a>
            </p>
          )}
          {rule === LEAD && (
            <button type="button" class="quiet" onClick={planTested}>
              Every layer is tested, no lead: plan on
            </button>
          )}
          {earliest && (
            <button type="button" class="quiet" onClick={() => planFrom(earliest)}>
              Plan from {sayInstant(earliest, now, timeStyle())}
            </button>
          )}
        </>
      ))}
      {tools.map((tool) => (
        <button key={tool} type="button" class="quiet" onClick={() => planBy(tool)}>
          Use a {plainId(tool)}
        </button>
      ))}
      {other && (
        <button type="button" class="go" onClick={() => planWith(other)}>
          Plan with {other.name.toLowerCase()}
        </button>
      )}
      {/* What forbids it stands above already. */}
      {outcome.cautions
        .filter(({ id }) => !outcome.why.some(({ rule }) => rule === id))
        .map((rule) => (
          <Caution key={rule.id} rule={rule} />
        ))}
      {passes && <PlanNumbers {...shown} />}
      {passes && <LayNumbers {...shown} />}
    </>
  );
};

const PlannedView = (shown: PlannedShown) => {
  const { job, outcome } = shown;
  const { build, coats, areas, lateDays, dates, cautions } = outcome;
  const laid = counted(build?.coats ?? coats.length, 'coat');
  return (
    <>
      <h2 class="verdict repair">
        {`${laid}${areas.back ? ' on each face' : ''}, hand over ${sayDay(dates.handOver)}`}
      </h2>
      {lateDays > 0 && (
        <p class="caution stop">
          <b>{`${counted(lateDays, 'day')} after the promised one. `}</b>
          No date here can be brought forward by hand. Tell the buyer now, or plan a top coat that is ready
          sooner.
        </p>
      )}
      <OfPlan {...shown} />
      <div class="answer">
        <div>
          <DateList {...shown} />
          <TimeLine plan={outcome} hours={job.hours} />
          <TimeKey plan={outcome} />
        </div>
        <div>
          <h3>What to buy</h3>
          <PlanNumbers {...shown} />
        </div>
      </div>
      <PlanActs {...shown} />
      {cautions.map((rule) => (
        <Caution key={rule.id} rule={rule} />
      ))}
      <h3>Steps</h3>
      <StepList {...shown} />
      <div class="sheet">
        <div>
          {outcome.wetEdge && <h3>While you lay it</h3>}
          <LayNumbers {...shown} />
          <CareList outcome={outcome} />
        </div>
        <div>
          <NightList {...shown} />
        </div>
      </div>
      <p class="small">
        Each time counts on the late end of a range. When a coat is down, start the{' '}
        <a href={CLOCK}>coat clock</a>.
      </p>
    </>
  );
};

/** Plans by the tables that were sent, and shows the plan, or the no, in its place. */
export const showPlan = (host: HTMLElement, asked: PlanAsked): void => {
  const product = productOf(asked);
  if (!product) throw new Error(`no product ${asked.job.product}`);
  const { job, data, us, link, now } = asked;
  const units = us ? 'us' : 'metric';
  const outcome = schedule(data.plan, planRules(data), job, product, calendarAt(job.start), units);
  // Another plan is another view: what its buttons have said is over.
  const key = `${link} ${now}`;
  render(
    outcome.kind === 'no' ? (
      <RefusalView key={key} {...asked} outcome={outcome} />
    ) : (
      <PlannedView key={key} {...asked} outcome={outcome} />
    ),
    host,
  );
  host.hidden = false;
};
