import {
  type Case,
  cautionsApart,
  decide,
  type FiringRule,
  isOfSteps,
  readAddress,
  remediesTold,
  resolve,
  withStanding,
} from '#engine/index.ts';
import { fire } from '#engine/rules/rules.ts';
import { outcomeKnowledge, sheetKnowledge } from '../../shared/advice-knowledge.ts';
import { ADVICE_DATA } from '../../shared/data-files.ts';
import { readNodePath } from '../../shared/urls.ts';
import { caseNow } from '../clock/case-now.ts';
import { fetchedOnce } from '../shared/fetch-json.ts';
import { walkDataOf } from '../shared/walk-knowledge.ts';
import { fitApart, fitProcedure, fitStops, fitWholeStops } from './fit-boxes.ts';
import { fitSettled } from './settled.ts';
import { fitCoatRefusal, fitStepNotes } from './step-notes.ts';
import { withAnswers } from './tapped.ts';

const adviceOnce = fetchedOnce(ADVICE_DATA);

/** The answers that the address of this page holds; they count before all else. */
const onPage = (known: Parameters<typeof readAddress>[0], segments: readonly string[]): Case => {
  const { stage, answers } = readAddress(known, segments);
  return withAnswers(stage ? withStanding({}, stage, 'answered') : {}, answers);
};

const isOfFacts = (rule: FiringRule): boolean => !isOfSteps(rule);

/** What she tells stays under her finger, however much comes or goes above it. */
const inPlace = (change: () => void): void => {
  const panel = document.activeElement?.closest('hd-told');
  const before = panel?.getBoundingClientRect().top;
  change();
  const after = panel?.isConnected && panel.getBoundingClientRect().top;
  if (before !== undefined && typeof after === 'number' && after !== before) scrollBy(0, after - before);
};

/** Fits the sheet of a repair, which no walk has led to, to all that is told. */
const fitSheet = async (): Promise<void> => {
  const procedure = document.querySelector<HTMLElement>('section[data-remedy]');
  if (!procedure) return;
  const advice = await adviceOnce();
  const known = sheetKnowledge(advice);
  const on = await caseNow();
  const whole = fire(known, on, []).stops.filter(isOfFacts);
  inPlace(() => {
    fitWholeStops(procedure, whole);
    fitProcedure(procedure, resolve(known, procedure.dataset['remedy'] ?? '', on), whole);
    fitStepNotes(known, advice, procedure, on);
  });
  await fitCoatRefusal(known, procedure, on);
};

/**
 * Fits the outcome that stands on this page to all that is told: stops, cautions and steps that the facts rule out go,
 * those that they call for come. Where the facts lead to other hands the page is not hers: stops and the cautions that
 * hang on facts alone come, and nothing goes that hangs on a step.
 */
export const fitAdvice = async (): Promise<void> => {
  const node = readNodePath(location.pathname);
  const verdict = document.getElementById('verdict');
  if (!verdict) return fitSheet();
  if (!node) return;
  const [data, advice] = await Promise.all([walkDataOf(node.defect), adviceOnce()]);
  const known = outcomeKnowledge(advice, data);
  const on: Case = { ...(await caseNow()), ...onPage(known, node.segments) };
  const walked = decide(known, on, node.defect);
  const hers = walked.kind === 'outcome' && verdict.dataset['do'] === walked.action.do;
  const procedures = [...document.querySelectorAll<HTMLElement>('section[data-remedy]')];
  const remedies = remediesTold(walked);
  const toHerSteps = hers && procedures.every(({ dataset }) => remedies.includes(dataset['remedy'] ?? ''));
  const { stops, cautions } = walked.fired;
  const apart = toHerSteps ? cautionsApart(known, on, walked) : cautions.filter(isOfFacts);
  inPlace(() => {
    fitStops(stops, (id) => hers || isOfFacts(known.get('rule', id)));
    fitSettled(on);
    fitApart(apart);
    if (hers)
      for (const procedure of procedures) {
        const steps = resolve(known, procedure.dataset['remedy'] ?? '', on, walked.families);
        fitProcedure(procedure, steps, stops.filter(isOfFacts));
        fitStepNotes(known, advice, procedure, on);
      }
  });
  if (hers) for (const procedure of procedures) await fitCoatRefusal(known, procedure, on);
};
