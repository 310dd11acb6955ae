import type { Considered } from '#engine/hear.ts';
import { CLOCK, howDryUrl, remedyUrl, ruleUrl } from '../../shared/urls.ts';

/** From here on what is said of one flaw may calm her. */
const LIKELY = 0.5;

type Props = { readonly considered: Considered; readonly whileWet: Readonly<Record<string, string>> };

/** Stops first, then cautions that her words call for, then what to do now; nothing where it is not known yet how dry the film is. */
export const Verdict = ({ considered, whileWet }: Props) => {
  const { warnings, now, stage, likely } = considered;
  const fresh = stage === 'wet' || stage === 'setting';
  const [first] = likely;
  const firm = now && (now.sure || fresh);
  return (
    <>
      {warnings.map((rule) =>
        rule.isStop ? (
          <section key={rule.id} class="stop-rule">
            <h2 class="verdict stop">
              <span>{rule.title}</span>
            </h2>
            <p>{rule.say}</p>
            <p class="small">
              {rule.defers} <a href={ruleUrl(rule.id)}>Why, and what to do</a>
            </p>
          </section>
        ) : (
          <section key={rule.id} class="caution">
            <h2 class="label">{rule.title}</h2>
            <p>
              {rule.say}{' '}
              <a class="small" href={ruleUrl(rule.id)}>
                Why, and where from
              </a>
            </p>
          </section>
        ),
      )}
      {firm && (
        <section>
          <h2 class={`verdict ${now.remedy ? 'repair' : fresh || !now.sure ? 'leave' : 'wait'}`}>
            <span>{now.verdict}</span>
          </h2>
          {fresh && first && first.chance >= LIKELY && <p class="calm">{whileWet[first.defect]}</p>}
          <p class="why">{now.say}</p>
          <p class="not">{now.not}</p>
          {fresh && (
            <a class="tape strip" href={CLOCK}>
              <b>Until when? Start the coat clock</b> <span>It tells the time by your can and weather.</span>
            </a>
          )}
          {!fresh && now.remedy && now.flaw && (
            <a class="tape strip" href={remedyUrl(now.remedy)}>
              <b>The repair, step by step</b> <span>With the cautions that belong to each step</span>
            </a>
          )}
          {!fresh && !now.remedy && first && (
            <p>
              <a href={howDryUrl(first.defect)}>More on it</a>
            </p>
          )}
        </section>
      )}
    </>
  );
};
