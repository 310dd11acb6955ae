import {
  type Action,
  type Case,
  cautionsApart,
  type Knowledge,
  type ResolvedStep,
  type RuleEntry,
  remediesTold,
  resolve,
  stretches,
  type Walked,
} from '#engine/index.ts';
import { STAGES } from '#engine/model/stage.ts';
import type { Step } from '#engine/model/step.ts';

/** Where a walk stands, in lines for the terminal: stops first, then what to do, then why. */
export const walkLines = (
  known: Knowledge,
  on: Case,
  walked: Walked,
  /** What the stops ask for is done, so that the steps behind them are open. */
  settled = false,
): readonly string[] => {
  const before = [
    ...walked.fired.stops.map((stop) => `STOP FIRST: ${stop.title}\n  ${stop.say}\n  ${stop.defers}`),
    ...walked.fired.holds.map((hold) => `Hold: ${hold.title}. ${hold.say}`),
  ];
  if (walked.kind === 'stage') return [...before, 'How dry is it?', `  --fact stage=${STAGES.join(' | ')}`];
  if (walked.kind === 'question') return [...before, ...questionLines(known, walked.question)];
  const outcome = walked.kind === 'outcome' ? walked : undefined;
  const apart = cautionsApart(known, on, walked);
  return [
    ...before,
    ...(outcome ? [actionLine(outcome.action)] : []),
    ...(outcome?.unsureAt ? sureLines(known, outcome.unsureAt) : []),
    ...causeLines(walked),
    ...apart.filter(({ level }) => level !== 'note').map(apartLine),
    ...remediesTold(walked).flatMap((remedy) =>
      stepLines(known, remedy, resolve(known, remedy, on, walked.families), settled),
    ),
    ...apart.filter(({ level }) => level === 'note').map(apartLine),
    ...(outcome?.goOn ? [`To find the cause anyway: --for-cause (next: ${outcome.goOn})`] : []),
  ];
};

/** A caution that stands before no step: it comes before all of them, a note after. */
const apartLine = (rule: RuleEntry): string => `\nCaution: ${rule.title}\n  ${rule.say}\n  ${rule.defers}`;

const questionLines = (known: Knowledge, id: string): readonly string[] => {
  const { ask, how, yes, no, sure } = known.get('question', id);
  return [
    `${ask}\n  How to check: ${how}`,
    `  ${id}=yes     ${yes}`,
    `  ${id}=no      ${no}`,
    `  ${id}=unsure  ${sure}`,
  ];
};

/** The check that decides, and that of a piece of which nobody knows the can or the day. */
const sureLines = (known: Knowledge, question: string): readonly string[] => {
  const { sure, 'on-the-piece': onPiece } = known.get('question', question);
  return [`To be sure: ${sure}`, ...(onPiece ? [`No can, or bought finished? ${onPiece}`] : [])];
};

const actionLine = ({ verdict, say, not, again }: Action): string =>
  `${verdict.toUpperCase()}\n  ${say}\n  Not now: ${not}\n  ${again}`;

const causeLines = ({ leaves }: Walked): readonly string[] =>
  leaves.map(
    (leaf) =>
      `${leaves.length > 1 ? 'Possible' : 'Cause'}: ${leaf.cause ?? ('leave' in leaf ? leaf.leave : leaf.remedy)}`,
  );

/** For which part of the piece a step is, where that is not told. */
const onlyFor = (step: Step | undefined): string => {
  const part = step?.when?.['part'];
  return part ? `(part=${[part].flat().join('|')}) ` : '';
};

/** Steps up to the first stop that is not settled; what lies behind it is closed, and it is told for whom. */
const stretchLines = (
  known: Knowledge,
  remedy: string,
  steps: readonly ResolvedStep[],
  settled: boolean,
): readonly string[] => {
  const all = known.get('remedy', remedy).steps;
  const lines: string[] = [];
  let number = 0;
  for (const stretch of stretches(known, remedy, steps)) {
    for (const stop of stretch.stops)
      lines.push(`   STOP before step ${number + 1}: ${stop.title}\n     ${stop.say}`);
    if (stretch.stops.length && !settled) {
      const open = stretch.stops.map((stop) => stop.open).join('. ');
      lines.push(
        `   Closed from step ${number + 1} of ${steps.length} on. ${open}: add --settled` +
          `${stretch.stops.some(({ when }) => when && 'age' in (when.not ?? when)) ? ', or --fact age=since-1993' : ''}.`,
      );
      return lines;
    }
    for (const step of stretch.steps) {
      number++;
      lines.push(
        ...step.before.filter(({ kind }) => kind !== 'stop').map((rule) => `   ! ${rule.title}: ${rule.say}`),
        `  ${number}. ${step.only ? onlyFor(all[step.at]) : ''}${step.grit ? `[${step.grit}] ` : ''}${step.say}`,
        ...step.limits.map((rule) => `     limit: ${rule.say}`),
      );
    }
  }
  return lines;
};

const stepLines = (
  known: Knowledge,
  remedy: string,
  steps: readonly ResolvedStep[],
  settled: boolean,
): readonly string[] => {
  const { name, worked, 'if-not': ifNot } = known.get('remedy', remedy);
  return [
    `\n${name} (${remedy})`,
    ...stretchLines(known, remedy, steps, settled),
    `  Worked if: ${worked}\n  If not: ${ifNot.say}`,
  ];
};
