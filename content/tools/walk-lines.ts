import {
  type Action,
  type Case,
  cautionsApart,
  type Knowledge,
  type ResolvedStep,
  remediesTold,
  resolve,
  type Walked,
} from '#engine/index.ts';
import { STAGES } from '#engine/model/stage.ts';

/** Where a walk stands, in lines for the terminal: stops first, then what to do, then why. */
export const walkLines = (known: Knowledge, on: Case, walked: Walked): readonly string[] => {
  const before = [
    ...walked.fired.stops.map((stop) => `STOP FIRST: ${stop.title}\n  ${stop.say}\n  ${stop.defers}`),
    ...walked.fired.holds.map((hold) => `Hold: ${hold.title}. ${hold.say}`),
  ];
  if (walked.kind === 'stage') return [...before, 'How dry is it?', `  --fact stage=${STAGES.join(' | ')}`];
  if (walked.kind === 'question') return [...before, ...questionLines(known, walked.question)];
  const outcome = walked.kind === 'outcome' ? walked : undefined;
  return [
    ...before,
    ...(outcome ? [actionLine(outcome.action)] : []),
    ...(outcome?.unsureAt ? [`To be sure: ${known.get('question', outcome.unsureAt).sure}`] : []),
    ...causeLines(walked),
    ...remediesTold(walked).flatMap((remedy) =>
      stepLines(known, remedy, resolve(known, remedy, on, walked.families)),
    ),
    ...cautionsApart(known, on, walked).map(
      (rule) => `\nCaution: ${rule.title}\n  ${rule.say}\n  ${rule.defers}`,
    ),
    ...(outcome?.goOn ? [`To find the cause anyway: --for-cause (next: ${outcome.goOn})`] : []),
  ];
};

const questionLines = (known: Knowledge, id: string): readonly string[] => {
  const { ask, how, yes, no, sure } = known.get('question', id);
  return [
    `${ask}\n  How to check: ${how}`,
    `  ${id}=yes     ${yes}`,
    `  ${id}=no      ${no}`,
    `  ${id}=unsure  ${sure}`,
  ];
};

const actionLine = ({ verdict, say, not, again }: Action): string =>
  `${verdict.toUpperCase()}\n  ${say}\n  Not now: ${not}\n  ${again}`;

const causeLines = ({ leaves }: Walked): readonly string[] =>
  leaves.map(
    (leaf) =>
      `${leaves.length > 1 ? 'Possible' : 'Cause'}: ${leaf.cause ?? ('leave' in leaf ? leaf.leave : leaf.remedy)}`,
  );

const stepLines = (known: Knowledge, remedy: string, steps: readonly ResolvedStep[]): readonly string[] => {
  const { name, worked, 'if-not': ifNot } = known.get('remedy', remedy);
  return [
    `\n${name} (${remedy})`,
    ...steps.flatMap((step, index) => [
      ...step.before.map((rule) => `   ! ${rule.title}: ${rule.say}`),
      `  ${index + 1}. ${step.grit ? `[${step.grit}] ` : ''}${step.say}`,
      ...step.limits.map((rule) => `     limit: ${rule.say}`),
    ]),
    `  Worked if: ${worked}\n  If not: ${ifNot.say}`,
  ];
};
