import { saySpan, type TimeStyle } from '#engine/clock.ts';
import type { PlanStep } from '#engine/schedule.ts';
import { defectUrl } from '../../shared/urls.ts';
import { Caution } from '../shared/caution.tsx';
import { plainId } from '../shared/plain-id.ts';
import { sayDay, spanOn } from '../shared/say-date.ts';
import { timeStyle } from '../shared/time-style.ts';
import type { PlannedShown } from './shown.ts';
import { familyOf, laidHow, linesOf, sayMust } from './words.ts';

const FIRST_COAT = 'Stir from the bottom, strain.';

const timeOf = ({ kind, from, to, surely, final }: PlanStep, now: number, style: TimeStyle): string => {
  if (kind === 'light-use' || kind === 'full-use') return saySpan(from, to, now, style);
  if (kind === 'wait') return `until ${spanOn(from, to, surely ?? to)}`;
  const span = spanOn(from, from, to);
  return final ? `from ${span} on` : span;
};

const wordsOf = ({ kind, coat, say, must, thin }: PlanStep, how: string): string =>
  [must && sayMust(must, thin), say, kind === 'coat' && coat === 1 && `${FIRST_COAT} ${how}`]
    .filter(Boolean)
    .join(' ');

/** The steps in order, each with its time, its cautions before it, and what to look for. */
export const StepList = ({ outcome, job, data, now }: PlannedShown) => {
  const style = timeStyle();
  // What an earlier step has told in the same words is left out on paper, where room is short.
  const told = new Set<string>();
  const classOf = (text: string, ...names: readonly string[]): string | undefined => {
    const all = told.has(text) ? [...names, 'again'] : names;
    told.add(text);
    return all.join(' ') || undefined;
  };
  const how = laidHow(job, familyOf(job, data));
  let last = '';
  return (
    <ol class="steps">
      {linesOf(job, outcome, data).map(({ step, title }, index) => {
        const date = sayDay(step.from);
        const waits = step.kind === 'wait' || step.kind === 'test-patch';
        const isNew = date !== last && !waits;
        if (!waits) last = date;
        const words = wordsOf(step, how);
        return (
          <li key={index} class={step.kind}>
            {isNew && <span class="date">{date}</span>}
            <b>{title}</b> <span class="when">{timeOf(step, now, style)}</span>
            {step.before.map((rule) => (
              <Caution key={rule.id} rule={rule} lead="Before this step: " />
            ))}
            {step.again.map(({ id, lead }) => (
              <p key={id}>
                <b>{lead}</b>
              </p>
            ))}
            {words && <p class={classOf(words)}>{words}</p>}
            {step.looks.map(({ say, defects }) => (
              <p key={say} class={classOf(say, 'look')}>
                {say}{' '}
                <span class="flaws">
                  {defects.map((id, at) => (
                    <>
                      {at > 0 && ', '}
                      <a href={defectUrl(id)}>{data.defects[id] ?? plainId(id)}</a>
                    </>
                  ))}
                </span>
              </p>
            ))}
          </li>
        );
      })}
    </ol>
  );
};
