import { fitsAllWhileFresh, type NamedFlaw } from '#engine/hear/belief/named-flaws.ts';
import {
  type Considered,
  type Heard,
  isCall,
  LIKELY,
  type Mind,
  type ToldRule,
  thisMinute,
} from '#engine/hear.ts';
import type { Ear } from '../../shared/ear.ts';
import { forbids, leadOf, ordersBelowCalls } from '../../shared/sentences.ts';
import { CLOCK, nowUrl, remedyUrl, ruleUrl } from '../../shared/urls.ts';
import { Calls, Dialed, Here } from '../shared/dialed.tsx';
import { placeHere } from '../shared/place-here.ts';
import type { RunningCoat } from './running.ts';

/** Whether what to do now is sure enough to be said: nothing is lost by leaving a film alone that is not dry. */
export const isFirm = ({ now, stage, warnings }: Considered): boolean =>
  now !== undefined && (now.sure || stage === 'wet' || stage === 'setting') && !warnings.some(isCall);

type Props = {
  readonly considered: Considered;
  readonly named: readonly NamedFlaw[];
  readonly heard: Pick<Heard, 'text' | 'facts'>;
  readonly mind: Mind;
  readonly ear: Pick<Ear, 'whileWet' | 'whileSetting' | 'atOnce' | 'places'>;
  /** Something is told of the film, so what hands do meanwhile can be said before it is known how dry it is. */
  readonly ofFilm: boolean;
  /** By what was told it may still be drying. */
  readonly mayDry: boolean;
  /** The coat on the clock: where it is as dry as what is told, its own time stands here. */
  readonly coat: RunningCoat | undefined;
};

/** What saves first, before the rest of a rule. */
const AtOnce = ({ rule: { atOnce = [] } }: { readonly rule: ToldRule }) => (
  <>
    {atOnce.map((says) => (
      <p key={says} class="calm">
        <b>
          <Dialed text={says} />
        </b>
      </p>
    ))}
  </>
);

/** What to do for each thing that may have happened, an order a line. */
const Orders = ({ rule }: { readonly rule: ToldRule }) => (
  <ul class="orders stop">
    {ordersBelowCalls(rule.say).map((says) => {
      const { lead, rest } = leadOf(says);
      return (
        <li key={says} class={forbids(says) ? 'forbids' : ''}>
          {lead && <b>{lead} </b>}
          <Dialed text={rest} />
        </li>
      );
    })}
  </ul>
);

/**
 * What has happened already; the film can wait. What saves in her case goes before the numbers: an eye is rinsed first.
 * Where no case is told the numbers are first, and all cases below them.
 */
const Emergency = ({ rule, places }: { readonly rule: ToldRule; readonly places: Ear['places'] }) => (
  <section class="stop-rule">
    <h2 class="unseen">{rule.title}</h2>
    <AtOnce rule={rule} />
    <Calls places={places} whom={rule.calls ?? []} />
    {rule.atOnce?.length ? (
      <details class="fold">
        <summary>Something else has happened</summary>
        <Orders rule={rule} />
      </details>
    ) : (
      <Orders rule={rule} />
    )}
    <p class="small">
      {rule.defers} <a href={ruleUrl(rule.id)}>Why, and where from</a>
    </p>
  </section>
);

/** A stop or a caution that her words call for; `behind` what to do, it does not head the page. */
const Warning = ({ rule, behind = false }: { readonly rule: ToldRule; readonly behind?: boolean }) =>
  rule.isStop && !behind ? (
    <section class="stop-rule">
      <h2 class="verdict stop">
        <span>{rule.title}</span>
      </h2>
      <AtOnce rule={rule} />
      <p>{rule.say}</p>
      <p class="small">
        {rule.defers} <a href={ruleUrl(rule.id)}>Why, and what to do</a>
      </p>
    </section>
  ) : (
    <section class={rule.isStop ? 'caution stop' : 'caution'}>
      <h2 class="label">{rule.title}</h2>
      <AtOnce rule={rule} />
      <p>
        {rule.say}{' '}
        <a class="small" href={ruleUrl(rule.id)}>
          Why, and where from
        </a>
      </p>
    </section>
  );

/** A film that can wait, and what each is while nobody knows what to do with it. */
const BEARS = {
  'dry-to-touch': 'It is dry to the touch, so nothing is lost by waiting.',
  recoatable: 'It is ready for a coat, but a coat on top shuts the flaw in.',
  cured: 'Cured: it can be worked on, once you know what it is.',
  overdue: 'Sticky long past its time: what it needs hangs on the cause.',
} as const;

/** The flaws that she names beside the one that the verdict speaks of, with the way to each. */
const AlsoNamed = ({
  named,
  stage,
}: {
  readonly named: readonly NamedFlaw[];
  readonly stage: Considered['stage'];
}) => (
  <p>
    You also name{' '}
    {named.map(({ defect, name }, at) => (
      <span key={defect}>
        {at > 0 && ', '}
        <a href={nowUrl(defect, stage)}>{name}</a>
      </span>
    ))}
    , with {named.length > 1 ? 'answers of their own' : 'an answer of its own'}.
  </p>
);

/** Stops first, then cautions that her words call for, then what to do now; nothing where it is not known yet how dry the film is. */
export const Verdict = ({ considered, named, heard, mind, ear, ofFilm, mayDry, coat }: Props) => {
  const { warnings, now, stage, likely } = considered;
  const call = warnings.filter(isCall);
  const fresh = stage === 'wet' || stage === 'setting';
  /** It only has to dry on: what she wants to know is when. */
  const dries = stage === 'dry-to-touch' && now !== undefined && !now.remedy;
  const until = fresh ? 'Until when?' : 'When can it be worked on?';
  const [first] = likely;
  const minute = thisMinute(ear.atOnce, considered, named, heard);
  /** It can wait, and hands are not known yet. */
  const asks = ofFilm && stage !== undefined && !fresh && !isFirm(considered) && !minute && !call.length;
  const bears = stage && !fresh ? BEARS[considered.overdue ? 'overdue' : stage] : undefined;
  const together =
    now !== undefined &&
    stage !== undefined &&
    named.length > 1 &&
    fitsAllWhileFresh(mind, stage, named, now.verdict);
  const others = named.filter(({ defect }) => defect !== first?.defect);
  const calming = together
    ? named.map(({ defect }) => defect)
    : first && first.chance >= LIKELY
      ? [first.defect]
      : [];
  const open = ofFilm && considered.next?.kind === 'stage' && !minute && !call.length;
  /** What nobody told of, as heating the room: the answer to what she asks stands before it, where there is one. */
  const answered = open || asks || isFirm(considered);
  const isBehind = ({ isPast, toldLast }: ToldRule): boolean => isPast ?? (answered && toldLast === true);
  return (
    <Here.Provider value={placeHere(ear.places)}>
      {minute && !isFirm(considered) && !call.length && (
        <p class="calm">
          <b>This minute.</b> {minute}
        </p>
      )}
      {call.map((rule) => (
        <Emergency key={rule.id} rule={rule} places={ear.places} />
      ))}
      {warnings
        .filter((rule) => !call.includes(rule) && !isBehind(rule))
        .map((rule) => (
          <Warning key={rule.id} rule={rule} />
        ))}
      {open && (
        <section>
          <h2 class="verdict leave">
            <span>Hands off until you know</span>
          </h2>
          {mayDry &&
            calming.map((defect) => (
              <p key={defect} class="calm">
                <b>While it dries:</b> {ear.whileSetting[defect] ?? ear.whileWet[defect]}
              </p>
            ))}
          <p class="why">No brush, no finger and no new coat before you know how dry it is.</p>
        </section>
      )}
      {asks && (
        <section>
          <h2 class="verdict wait">
            <span>Find the cause first</span>
          </h2>
          <p class="why">{bears} No sanding and no new coat before that.</p>
        </section>
      )}
      {now && isFirm(considered) && (
        <section>
          <h2 class={`verdict ${now.do}`}>
            <span>{now.hangs ? `${now.verdict} until you know` : now.verdict}</span>
          </h2>
          {together && <p class="of">The same for {named.length > 2 ? 'all' : 'both'} that you name.</p>}
          {fresh &&
            (now.do === 'leave' || now.hangs) &&
            calming.map((defect, at) => (
              <p key={defect} class={at ? 'why' : 'calm'}>
                {(stage === 'setting' && ear.whileSetting[defect]) || ear.whileWet[defect]}
              </p>
            ))}
          {now.hangs ? (
            <p class="why">Do nothing to it yet: what hands may do hangs on one more answer.</p>
          ) : (
            <>
              <p class="why">{now.say}</p>
              <p class="not">{now.not}</p>
            </>
          )}
          {now.hangs && first && !considered.next && (
            <a class="tape strip" href={nowUrl(first.defect, stage)}>
              <b>Find what to do now</b> <span>A question or two, and what you told goes along.</span>
            </a>
          )}
          {!together && others.length > 0 && <AlsoNamed named={others} stage={stage} />}
          {(fresh || dries) && !now.hangs && (
            <a class="tape strip" href={CLOCK}>
              {coat?.stage === stage ? (
                <>
                  <b>{`${until} ${coat.piece} is on the clock`}</b> <span>{coat.verdict}</span>
                </>
              ) : (
                <>
                  <b>{until} Start the coat clock</b> <span>It tells the time by your can and weather.</span>
                </>
              )}
            </a>
          )}
          {!fresh && now.remedy && now.flaw && (
            <a class="tape strip" href={remedyUrl(now.remedy)}>
              <b>The repair, step by step</b> <span>With the cautions that belong to each step</span>
            </a>
          )}
          {!fresh && !now.remedy && first && (
            <a class="quiet" href={nowUrl(first.defect, stage)}>
              What it is, and what to do then
            </a>
          )}
        </section>
      )}
      {warnings
        .filter((rule) => !call.includes(rule) && isBehind(rule))
        .map((rule) => (
          <Warning key={rule.id} rule={rule} behind />
        ))}
    </Here.Provider>
  );
};
