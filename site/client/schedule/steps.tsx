import { saySpan, type TimeStyle } from '#engine/clock.ts';
import { inARow } from '#engine/plain/filled.ts';
import { ended, firstSentence } from '#engine/plain/text.ts';
import { type PlanStep, sayStep } from '#engine/schedule.ts';
import { clockWords } from '../../shared/clock-words.ts';
import { defectUrl } from '../../shared/urls.ts';
import { Caution } from '../shared/caution.tsx';
import { plainId } from '../shared/plain-id.ts';
import { sayDay, spanOn } from '../shared/say-date.ts';
import { timeStyle } from '../shared/time-style.ts';
import type { PlannedShown } from './shown.ts';
import { familyOf, isFirstCoat, laidHow, linesOf, mixedHow, sayMust } from './words.ts';

const timeOf = ({ kind, from, to, surely, final }: PlanStep, now: number, style: TimeStyle): string => {
  if (kind === 'light-use' || kind === 'full-use') return saySpan(from, to, now, style);
  if (kind === 'wait') return `until ${spanOn(from, to, surely ?? to)}`;
  const span = spanOn(from, from, to);
  return final ? `from ${span} on` : span;
};

const wordsOf = (step: PlanStep, how: string): string =>
  inARow(
    sayStep(clockWords, step),
    step.must && sayMust(step.must, step.thin),
    isFirstCoat(step) ? how : undefined,
  );

type Numbered = ReturnType<typeof linesOf>[number] & { readonly number: number };
type Day = { readonly date: string; readonly from: number; readonly lines: Numbered[] };

const isWait = ({ kind }: PlanStep): boolean => kind === 'wait' || kind === 'test-patch';

/** When a step begins: a use counts on the late end of its range. */
const begins = ({ kind, from, to }: PlanStep): number =>
  kind === 'light-use' || kind === 'full-use' ? to : from;

/** The steps by the day on which each begins; a wait belongs to what it follows. */
const daysOf = (lines: ReturnType<typeof linesOf>): readonly Day[] => {
  const days: Day[] = [];
  for (const [index, line] of lines.entries()) {
    const from = begins(line.step);
    const date = sayDay(from);
    const last = days.at(-1);
    const one = { ...line, number: index + 1 };
    if (last && (isWait(line.step) || last.date === date)) last.lines.push(one);
    else days.push({ date, from, lines: [one] });
  }
  return days;
};

/** The day that is wanted now: today's, else the next, and the last once all is past. */
const wantedOf = (days: readonly Day[], now: number): Day | undefined =>
  days.find(({ date }) => date === sayDay(now)) ?? days.find(({ from }) => from > now) ?? days.at(-1);

/** So many cautions of one step are read whole; of more each stands in one line, and the rest of it opens below. */
const READ_WHOLE = 2;

/** What is cautioned before a step. A stop is first, and never folded. */
const Before = ({ of }: { readonly of: PlanStep['before'] }) => {
  const cautions = of.filter(({ kind }) => kind !== 'stop');
  return (
    <>
      {of
        .filter(({ kind }) => kind === 'stop')
        .map((rule) => (
          <Caution key={rule.id} rule={rule} />
        ))}
      {cautions.map((rule) =>
        cautions.length > READ_WHOLE ? (
          <details key={rule.id} class="caution">
            <summary>
              <b>{ended(rule.title)}</b> <span class="on-screen">{rule.lead ?? firstSentence(rule.say)}</span>
            </summary>
            <p>{rule.say}</p>
          </details>
        ) : (
          <Caution key={rule.id} rule={rule} lead="Before this step: " />
        ),
      )}
    </>
  );
};

/** The steps in order, a fold for each day, each step with its time, its cautions before it, and what to look for. */
export const StepList = ({ outcome, job, data, now }: PlannedShown) => {
  const style = timeStyle();
  // What an earlier step has told in the same words is left out on paper, where room is short.
  const told = new Set<string>();
  const classOf = (text: string, ...names: readonly string[]): string | undefined => {
    const all = told.has(text) ? [...names, 'again'] : names;
    told.add(text);
    return all.join(' ') || undefined;
  };
  const family = familyOf(job, data);
  const how = inARow(mixedHow(job, family).short, laidHow(job, family));
  const days = daysOf(linesOf(job, outcome, data));
  const wanted = wantedOf(days, now);
  return (
    <div class="days">
      {days.map((day) => (
        <details key={day.from} class="of-day whole" open={day === wanted}>
          <summary>
            <b class="date">{day.date}</b>{' '}
            <span>
              {day.lines
                .filter(({ step }) => !isWait(step))
                .map(({ title }) => title)
                .join(', ')}
            </span>
          </summary>
          <ol class="steps" start={day.lines[0]?.number}>
            {day.lines.map(({ step, title, number }) => {
              const words = wordsOf(step, how);
              return (
                <li key={number} class={step.kind}>
                  <b>{title}</b> <span class="when">{timeOf(step, now, style)}</span>
                  <Before of={step.before} />
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
        </details>
      ))}
    </div>
  );
};
