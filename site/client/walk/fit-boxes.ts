import type { ResolvedStep } from '#engine/index.ts';
import type { AdviceRule } from '../../shared/advice-data.ts';
import { waitWords } from '../../shared/span.ts';
import { openOnly } from '../../shared/told-rule.ts';
import { counted } from '../shared/counted.ts';
import { element, partIn } from '../shared/element.ts';
import { boxOf } from './rule-box.ts';

type AdviceStep = ResolvedStep<AdviceRule>;

const boxesIn = (host: ParentNode, selector: string): ReadonlyMap<string, HTMLElement> =>
  new Map([...host.querySelectorAll<HTMLElement>(selector)].map((one) => [one.dataset['rule'] ?? '', one]));

/** Of the boxes that stand there those that no longer hold go, and those that now hold come. */
const fitBoxes = (
  there: ReadonlyMap<string, HTMLElement>,
  rules: readonly AdviceRule[],
  come: (rule: AdviceRule) => void,
): void => {
  for (const [id, box] of there) box.hidden = !rules.some((rule) => rule.id === id);
  for (const rule of rules) if (!there.has(rule.id)) come(rule);
};

/** Where the cautions of a step stand; a step that had none gets the place. */
const caresOf = (step: HTMLElement): HTMLElement => {
  const there = partIn(step, 'cares');
  if (there) return there;
  const made = boxOf('cares');
  step.prepend(made);
  return made;
};

/** The cautions of one step; its stops stand before the stretch that it lies in. */
const fitStep = (step: HTMLElement, rules: readonly AdviceRule[]): void =>
  fitBoxes(
    boxesIn(step, '[data-rule]'),
    rules.filter(({ level, kind }) => level !== 'note' && kind !== 'stop'),
    (rule) => caresOf(step).prepend(boxOf('care', rule)),
  );

/** A stop that stands at the head of the page is not told again before the steps. */
const toldAbove = ({ id }: AdviceRule): boolean =>
  !!partIn(document, 'stops')?.querySelector(`[data-rule="${CSS.escape(id)}"]:not([hidden])`);

/** Closes what lies behind stops, and opens it when none is left; what she opened herself stays open. */
const fitBehind = (behind: HTMLElement, stops: readonly AdviceRule[], whole: readonly AdviceRule[]): void => {
  const front = behind.querySelector<HTMLElement>(':scope > [data-part=front]');
  const details = behind.querySelector<HTMLDetailsElement>(':scope > details');
  behind.toggleAttribute('data-told', stops.length > 0 && stops.every(toldAbove));
  const summary = details?.querySelector<HTMLElement>(':scope > summary');
  if (!front || !details || !summary) return;
  fitBoxes(
    boxesIn(front, '[data-rule]'),
    stops.filter((rule) => !toldAbove(rule)),
    (rule) => front.prepend(boxOf('stop', rule)),
  );
  const standing = [...whole, ...stops];
  const ids = standing.map(({ id }) => id).join(' ');
  if (behind.dataset['stops'] === ids) return;
  behind.dataset['stops'] = ids;
  details.open = !standing.length;
  summary.hidden = !standing.length;
  const words = summary.querySelector('[data-open]');
  if (words) words.textContent = openOnly(standing);
};

/** The cautions that stand before no step. */
export const fitApart = (rules: readonly AdviceRule[]): void => {
  const section = partIn(document, 'then');
  if (!section) return;
  fitBoxes(boxesIn(section, ':scope > [data-rule]'), rules, (rule) =>
    rule.level === 'note'
      ? section.append(boxOf('apart-note', rule))
      : section.prepend(boxOf('apart-care', rule)),
  );
};

/** A heading of another level that is the same in all else. */
const sameAs = (heading: HTMLElement, level: 'h1' | 'h2'): HTMLElement => {
  const { id, className, dataset, childNodes } = heading;
  const same = element(level, { id, className }, ...childNodes);
  Object.assign(same.dataset, dataset);
  return same;
};

const toVerdict = (): void => {
  const verdict = document.getElementById('verdict');
  verdict?.setAttribute('tabindex', '-1');
  verdict?.focus();
};

/** The stops of the page, of which only some may go. The page's heading is the first of them, or the verdict. */
export const fitStops = (stops: readonly AdviceRule[], mayGo: (rule: string) => boolean): void => {
  let section = partIn(document, 'stops');
  if (!section && stops.length) {
    section = boxOf('stops');
    document.querySelector('main article')?.before(section);
  }
  if (!section) return;
  const there = boxesIn(section, '[data-rule]');
  for (const [id, box] of there) box.hidden = mayGo(id) && !stops.some((rule) => rule.id === id);
  for (const rule of stops)
    if (!there.has(rule.id)) section.querySelector('h1')?.after(boxOf('stop-first', rule));
  const answered = section.contains(document.activeElement);
  section.hidden = !section.querySelector('[data-rule]:not([hidden])');
  const verdict = document.getElementById('verdict');
  const level = section.hidden ? 'h1' : 'h2';
  if (verdict && verdict.localName !== level) verdict.replaceWith(sameAs(verdict, level));
  // Her answer took its own place away: what it led to is next.
  if (answered && section.hidden) toVerdict();
};

/** The stops of a sheet that belong to the whole repair; beside them stand its notes, which are no boxes. */
export const fitWholeStops = (procedure: HTMLElement, stops: readonly AdviceRule[]): void =>
  fitBoxes(boxesIn(procedure, ':scope > div[data-rule]'), stops, (rule) =>
    partIn(procedure, 'all-steps')?.before(boxOf('stop', rule)),
  );

const shown = (host: ParentNode, selector: string): boolean =>
  !!host.querySelector(`${selector}:not([hidden])`);

/** Once the part is told only its own way is left, and stands unfolded as any step; what is cautioned is never folded. */
const fitByPart = (row: HTMLElement): void => {
  const ways = [...row.querySelectorAll<HTMLElement>('[data-step]:not([hidden])')];
  const own = ways.some((way) => !shown(way, '[data-only]'));
  row.hidden = !ways.length;
  row.toggleAttribute('data-own', own);
  row.querySelector('details')?.toggleAttribute('open', own || ways.some((way) => shown(way, '[data-rule]')));
};

/** Old paint is tested, once its age is told. */
const TESTED = ['is-there-old-paint-below', 'lead-before-sanding'];

/** What stands before the first step: a question while it is open, then what its answer asks for. */
const firstOf = (behind: HTMLElement): string => {
  if (behind.querySelector('[data-gate] fieldset')) return 'First a question, then ';
  const stops = behind.dataset['stops']?.split(' ') ?? [];
  return stops.some((id) => TESTED.includes(id)) ? 'First a test, then ' : 'First a stop, then ';
};

/** It may go on a sentence that has begun. */
const cased = (says: string, before: string): string => (before.startsWith('f') ? says.toLowerCase() : says);

/** How many steps are in the order, told above them; what only some do is none, but where it stands in for its step. */
const tellCount = (procedure: HTMLElement): void => {
  const inOrder = [...procedure.querySelectorAll<HTMLElement>('[data-steps] > li:not([hidden])')].filter(
    (item) =>
      item.hasAttribute('data-own') || !(item.dataset['part'] === 'by-part' || shown(item, '[data-only]')),
  );
  partIn(procedure, 'how-many')?.replaceChildren(counted(inOrder.length, 'step'));
  // What stood before them is over.
  const behind = procedure.querySelector<HTMLElement>('[data-stops]');
  const first = partIn(procedure, 'first');
  first?.toggleAttribute('hidden', !behind?.dataset['stops']);
  if (first && behind) first.textContent = cased(firstOf(behind), first.textContent);
};

/** The steps of a repair with what stands before each; `whole` are the stops that close all of it. */
export const fitProcedure = (
  procedure: HTMLElement,
  steps: readonly AdviceStep[],
  whole: readonly AdviceRule[],
): void => {
  const stepOf = (item: HTMLElement) => steps.find(({ at }) => at === Number(item.dataset['step']));
  for (const [index, behind] of [...procedure.querySelectorAll<HTMLElement>('[data-stops]')].entries()) {
    const inside = [...behind.querySelectorAll<HTMLElement>(':scope > details > ol [data-step]')];
    const stops = inside.flatMap((item) => stepOf(item)?.before ?? []).filter(({ kind }) => kind === 'stop');
    fitBehind(behind, stops, index ? [] : whole);
  }
  for (const item of procedure.querySelectorAll<HTMLElement>('[data-step]')) {
    const step = stepOf(item);
    item.hidden = !step;
    item.querySelector('[data-only]')?.toggleAttribute('hidden', !step?.only);
    item.querySelector(':scope > details')?.toggleAttribute('open', !step?.only);
    const hours = item.querySelector<HTMLElement>('[data-hours]');
    if (hours) {
      hours.hidden = !step?.hours;
      if (step?.hours) hours.textContent = waitWords(step.hours);
    }
    if (step) fitStep(item, step.before);
  }
  for (const row of procedure.querySelectorAll<HTMLElement>('[data-part=by-part]')) fitByPart(row);
  tellCount(procedure);
  fitBoxes(
    boxesIn(procedure, ':scope > details[data-rule]'),
    steps.flatMap((step) => step.before).filter(({ level }) => level === 'note'),
    (rule) => partIn(procedure, 'all-steps')?.after(boxOf('note', rule)),
  );
};
