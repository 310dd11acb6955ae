import { layingOfCase } from '#engine/fitness.ts';
import { byHand } from '#engine/hands.ts';
import {
  type Case,
  cautionsApart,
  isOfSteps,
  type Knowledge,
  knowledgeOf,
  type ResolvedStep,
  type RuleEntry,
  readAddress,
  remediesTold,
  resolve,
  type Walked,
  walk,
  withStanding,
} from '#engine/index.ts';
import { sayFilmToSand } from '#engine/jobs/advice.ts';
import type { Step } from '#engine/model/step.ts';
import { fire } from '#engine/rules.ts';
import { type AdviceData, adviceEntries } from '../../shared/advice-data.ts';
import { waitWords } from '../../shared/span.ts';
import { ADVICE_DATA, readNodePath, walkDataUrl } from '../../shared/urls.ts';
import { entriesOf, type WalkData } from '../../shared/walk-data.ts';
import { caseNow } from '../clock/case-now.ts';
import { unlessOffline } from '../shared/fetch-json.ts';
import { noesOfKind } from '../shared/judge.ts';
import { pageUnits } from '../shared/say-date.ts';
import { boxOf } from './rule-box.ts';

const make = (name: string, words: string, className = ''): HTMLElement =>
  Object.assign(document.createElement(name), { textContent: words, className });

const fetched = async <T>(url: string): Promise<T> => {
  const response = await fetch(url);
  if (!response.ok) throw new Error(`${url}: ${response.status}`);
  return (await response.json()) as T;
};

/** The answers that the address of this page holds; they count before all else. */
const onPage = (known: Parameters<typeof readAddress>[0], segments: readonly string[]): Case => {
  const { stage, answers } = readAddress(known, segments);
  const facts: Record<string, Case[string]> = stage ? { ...withStanding({}, stage, 'answered') } : {};
  for (const [question, answer] of answers) facts[question] = { value: answer, how: 'answered' };
  return facts;
};

const held = (boxes: Iterable<HTMLElement>): Map<string, HTMLElement> =>
  new Map([...boxes].map((one) => [one.dataset['rule'] ?? '', one]));

/** Of the boxes that stand there those that no longer hold go, and those that now hold come. */
const fit = (
  there: ReadonlyMap<string, HTMLElement>,
  rules: readonly RuleEntry[],
  come: (rule: RuleEntry) => void,
): void => {
  for (const [id, box] of there) box.hidden = !rules.some((rule) => rule.id === id);
  for (const rule of rules) if (!there.has(rule.id)) come(rule);
};

/** The cautions of one step; its stops stand before the stretch that it lies in. */
const fitStep = (step: HTMLElement, rules: readonly RuleEntry[]): void =>
  fit(
    held(step.querySelectorAll<HTMLElement>('[data-rule]')),
    rules.filter(({ level, kind }) => level !== 'note' && kind !== 'stop'),
    (rule) => step.prepend(boxOf('care', rule)),
  );

/** Closes what lies behind stops, and opens it when none is left; what she opened herself stays open. */
const fitBehind = (behind: HTMLElement, stops: readonly RuleEntry[], whole: readonly RuleEntry[]): void => {
  const front = behind.querySelector<HTMLElement>(':scope > .front');
  const details = behind.querySelector<HTMLDetailsElement>(':scope > details');
  const summary = details?.querySelector<HTMLElement>(':scope > summary');
  if (!front || !details || !summary) return;
  fit(held(front.querySelectorAll<HTMLElement>('[data-rule]')), stops, (rule) =>
    front.prepend(boxOf('stop', rule)),
  );
  const standing = [...whole, ...stops];
  const ids = standing.map(({ id }) => id).join(' ');
  if (behind.dataset['stops'] === ids) return;
  behind.dataset['stops'] = ids;
  details.open = !standing.length;
  summary.hidden = !standing.length;
  const words = summary.querySelector('[data-open]');
  if (words) words.textContent = standing.map(({ open }) => open ?? '').join('. ');
};

/** What is noted below the steps. */
const fitNotes = (procedure: HTMLElement, rules: readonly RuleEntry[]): void =>
  fit(
    held(procedure.querySelectorAll<HTMLElement>(':scope > [data-rule]')),
    rules.filter(({ level }) => level === 'note'),
    (rule) => procedure.querySelector('.all-steps')?.after(boxOf('note', rule)),
  );

/** The cautions that stand before no step. */
const fitApart = (rules: readonly RuleEntry[]): void =>
  fit(held(document.querySelectorAll<HTMLElement>('.outcome > .then > [data-rule]')), rules, (rule) =>
    rule.level === 'note'
      ? document.querySelector('.outcome > .then')?.append(boxOf('apart-note', rule))
      : document.querySelector('.outcome > .then')?.prepend(boxOf('apart-care', rule)),
  );

/** The stops of the page, of which only some may go. The page's heading is the first of them, or the verdict. */
const fitStops = (stops: readonly RuleEntry[], mayGo: (rule: string) => boolean): void => {
  let section = document.querySelector<HTMLElement>('.stops');
  if (!section && stops.length) {
    section = boxOf('stops');
    document.querySelector('article.outcome')?.before(section);
  }
  if (!section) return;
  const there = held(section.querySelectorAll<HTMLElement>('[data-rule]'));
  for (const [id, box] of there) box.hidden = mayGo(id) && !stops.some((rule) => rule.id === id);
  for (const rule of stops)
    if (!there.has(rule.id)) section.querySelector('h1')?.after(boxOf('stop-first', rule));
  section.hidden = !section.querySelector('[data-rule]:not([hidden])');
  const verdict = document.getElementById('verdict');
  const name = section.hidden ? 'H1' : 'H2';
  if (verdict && verdict.tagName !== name) {
    const heading = make(name, '', verdict.className);
    heading.id = 'verdict';
    heading.append(...verdict.childNodes);
    verdict.replaceWith(heading);
  }
};

/** The film that lies there, before the first step that sands it; of a stripped face nothing is known. */
const tellFilm = (sanding: AdviceData['sanding'], procedure: ParentNode, on: Case): void => {
  for (const old of procedure.querySelectorAll('.film-so-far')) old.remove();
  const says = sayFilmToSand(sanding, on);
  const first = procedure.querySelector('[data-kind=sand]:not([hidden]), [data-kind=strip]:not([hidden])');
  if (!says || !first?.matches('[data-kind=sand]')) return;
  const line = make('p', '', 'limit film-so-far');
  line.append(make('b', 'The film so far: '), says);
  first.querySelector('.do')?.before(line);
};

/** The kind of top coat that a step lays; nothing where it lays none. */
const kindLaid = (step: Step | undefined, on: Case): unknown => {
  if (step?.kind !== 'coat') return undefined;
  switch (step.product) {
    case 'same':
    case 'same-in-gloss':
    case 'tinted-same':
    case 'mist-of-same':
      return on['family']?.value;
    case 'dewaxed-shellac':
      return 'shellac';
    case 'water-based':
    case 'wax':
    case 'oil':
      return step.product;
    default:
      return undefined;
  }
};

/** How each step is done with what was told, how she knows that it is done, and what if not. */
const tellHands = (known: Knowledge, hands: AdviceData['hands'], procedure: HTMLElement, on: Case): void => {
  for (const old of procedure.querySelectorAll('[data-hand]')) old.remove();
  const { steps } = known.get('remedy', procedure.dataset['remedy'] ?? '');
  for (const item of procedure.querySelectorAll<HTMLElement>('.steps > [data-step]:not([hidden])')) {
    const step = steps[Number(item.dataset['step'])];
    if (!step) continue;
    const { how, done, ifNot } = byHand(known, hands, on, step);
    const say = (words: string): void => {
      const line = make('p', words, 'worked');
      line.dataset['hand'] = '';
      item.append(line);
    };
    if (how) say(how);
    if (done && !item.querySelector('.worked:not([data-hand])')) say(`Done when: ${done} If not: ${ifNot}`);
  }
};

/** What forbids the first coat of a repair in the air that is told, said before it as a plan would say it. */
const tellCoat = async (known: Knowledge, procedure: HTMLElement, on: Case): Promise<void> => {
  const { steps } = known.get('remedy', procedure.dataset['remedy'] ?? '');
  const shown = [...procedure.querySelectorAll<HTMLElement>('.steps > [data-step]:not([hidden])')];
  const sourceOf = ({ dataset }: HTMLElement) => steps[Number(dataset['step'])];
  const first = shown.find((item) => kindLaid(sourceOf(item), on));
  // What lay below is gone with a film that is taken off.
  const stripped = shown.some(
    (item, at) => first && at < shown.indexOf(first) && sourceOf(item)?.kind === 'strip',
  );
  const laying = first && layingOfCase(on, { onOwnCoat: !stripped });
  const noes = laying
    ? await unlessOffline(
        noesOfKind(
          kindLaid(sourceOf(first), on),
          { ...laying, base: stripped ? undefined : laying.base },
          pageUnits(),
        ),
      )
    : undefined;
  for (const old of procedure.querySelectorAll('.no-coat')) old.remove();
  // The stops of the rules stand on the page already.
  for (const { says, instead } of noes?.filter(({ code }) => code !== 'rule') ?? []) {
    const line = make('p', '', 'limit no-coat');
    line.append(make('b', 'As told, no: '), [says, instead].filter(Boolean).join(' '));
    first?.querySelector('.do')?.before(line);
  }
};

/** What she tells stays under her finger, however much comes or goes above it. */
const inPlace = (change: () => void): void => {
  const panel = document.activeElement?.closest('hd-told');
  const before = panel?.getBoundingClientRect().top;
  change();
  const after = panel?.isConnected && panel.getBoundingClientRect().top;
  if (before !== undefined && typeof after === 'number' && after !== before) scrollBy(0, after - before);
};

const fitProcedure = (
  procedure: HTMLElement,
  steps: readonly ResolvedStep[],
  whole: readonly RuleEntry[],
): void => {
  const stepOf = (item: HTMLElement) => steps.find(({ at }) => at === Number(item.dataset['step']));
  for (const [index, behind] of [...procedure.querySelectorAll<HTMLElement>('.behind')].entries()) {
    const inside = [...behind.querySelectorAll<HTMLElement>(':scope > details > .steps > [data-step]')];
    const stops = inside.flatMap((item) => stepOf(item)?.before ?? []).filter(({ kind }) => kind === 'stop');
    fitBehind(behind, stops, index ? [] : whole);
  }
  for (const item of procedure.querySelectorAll<HTMLElement>('.steps > [data-step]')) {
    const step = stepOf(item);
    item.hidden = !step;
    item.querySelector<HTMLElement>('[data-only]')?.toggleAttribute('hidden', !step?.only);
    const hours = item.querySelector<HTMLElement>('[data-hours]');
    if (hours) {
      hours.hidden = !step?.hours;
      if (step?.hours) hours.textContent = waitWords(step.hours);
    }
    if (step) fitStep(item, step.before);
  }
  fitNotes(
    procedure,
    steps.flatMap((step) => step.before),
  );
};

/** Fits the sheet of a repair, which no walk has led to, to all that is told. */
const fitSheet = async (): Promise<void> => {
  const procedure = document.querySelector<HTMLElement>('.procedure[data-remedy]');
  if (!procedure) return;
  const advice = await fetched<AdviceData>(ADVICE_DATA);
  const known = knowledgeOf(adviceEntries(advice));
  const on = await caseNow();
  const { stops } = fire(known, on, []);
  inPlace(() => {
    const whole = stops.filter((rule) => !isOfSteps(rule));
    fit(held(procedure.querySelectorAll<HTMLElement>(':scope > .stop[data-rule]')), whole, (rule) =>
      procedure.querySelector('.all-steps')?.before(boxOf('stop', rule)),
    );
    fitProcedure(procedure, resolve(known, procedure.dataset['remedy'] ?? '', on), whole);
    tellFilm(advice.sanding, procedure, on);
    tellHands(known, advice.hands, procedure, on);
  });
  await tellCoat(known, procedure, on);
};

/**
 * Fits the outcome that stands on this page to all that is told: stops, cautions and steps that the facts rule out go,
 * those that they call for come. Where the facts lead to other hands the page is not hers: stops and the cautions that
 * hang on facts alone come, and nothing goes that hangs on a step.
 */
export const fitAdvice = async (): Promise<void> => {
  const place = readNodePath(location.pathname);
  const verdict = document.getElementById('verdict');
  if (!verdict) return fitSheet();
  if (!place) return;
  const [data, advice] = await Promise.all([
    fetched<WalkData>(walkDataUrl(encodeURIComponent(place.defect))),
    fetched<AdviceData>(ADVICE_DATA),
  ]);
  const known = knowledgeOf([...entriesOf(data), ...adviceEntries(advice)]);
  const on: Case = { ...(await caseNow()), ...onPage(known, place.segments) };
  const walked: Walked = walk(known, on, place.defect);
  const hers = walked.kind === 'outcome' && verdict.classList.contains(walked.action.do);
  const procedures = [...document.querySelectorAll<HTMLElement>('.procedure[data-remedy]')];
  const remedies = remediesTold(walked);
  const toHerSteps = hers && procedures.every(({ dataset }) => remedies.includes(dataset['remedy'] ?? ''));
  const ofFacts = (rule: RuleEntry) => !isOfSteps(rule);
  const apart = toHerSteps ? cautionsApart(known, on, walked) : walked.fired.cautions.filter(ofFacts);
  inPlace(() => {
    fitStops(walked.fired.stops, (id) => hers || ofFacts(known.get('rule', id)));
    fitApart(apart);
    if (hers)
      for (const procedure of procedures) {
        fitProcedure(
          procedure,
          resolve(known, procedure.dataset['remedy'] ?? '', on, walked.families),
          walked.fired.stops.filter(ofFacts),
        );
        tellFilm(advice.sanding, procedure, on);
        tellHands(known, advice.hands, procedure, on);
      }
  });
  if (hers) for (const procedure of procedures) await tellCoat(known, procedure, on);
};
