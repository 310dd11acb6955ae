import {
  type Case,
  knowledgeOf,
  type RuleEntry,
  readAddress,
  resolve,
  type Walked,
  walk,
} from '#engine/index.ts';
import { sayFilmToSand } from '#engine/jobs/advice.ts';
import { type AdviceData, adviceEntries } from '../lib/advice-data.ts';
import { ADVICE_DATA, readNodePath, walkDataUrl } from '../lib/urls.ts';
import { entriesOf, type WalkData } from '../lib/walk-data.ts';
import { caseNow } from './clock-case.ts';

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
  const facts: Record<string, Case[string]> = stage ? { stage: { value: stage, how: 'answered' } } : {};
  for (const [question, answer] of answers) facts[question] = { value: answer, how: 'answered' };
  return facts;
};

const caution = (rule: RuleEntry): HTMLElement => {
  const box = make('div', '', `caution ${rule.level}`);
  box.dataset['rule'] = rule.id;
  const label = make('p', '', 'tape label');
  label.append(make('b', `${rule.kind === 'stop' ? 'Stop' : 'Before this step'}: ${rule.title}`));
  box.append(label, make('p', rule.say));
  return box;
};

const held = (within: ParentNode): Map<string, HTMLElement> =>
  new Map(
    [...within.querySelectorAll<HTMLElement>('[data-rule]')].map((one) => [one.dataset['rule'] ?? '', one]),
  );

/** The cautions of one step: those that no longer hold go, those that now hold come. */
const fitStep = (step: HTMLElement, rules: readonly RuleEntry[]): void => {
  const there = held(step);
  for (const [id, box] of there) box.hidden = !rules.some((rule) => rule.id === id);
  for (const rule of rules) if (rule.level !== 'note' && !there.has(rule.id)) step.prepend(caution(rule));
};

/** The stops of the page; with `all` those that no longer hold go. The page's heading is the first of them, or the verdict. */
const fitStops = (stops: readonly RuleEntry[], all: boolean): void => {
  const outcome = document.querySelector('article.outcome');
  let section = document.querySelector<HTMLElement>('.stops');
  if (!section && stops.length) {
    section = make('section', '', 'stops');
    section.setAttribute('aria-labelledby', 'stop');
    const title = make('h1', '', 'verdict stop');
    title.id = 'stop';
    title.append(make('span', 'Stop first'));
    const on = Object.assign(make('a', '', 'quiet'), { href: '#verdict' });
    on.append(make('b', 'That is settled: go on'));
    section.append(title, on);
    outcome?.before(section);
  }
  if (!section) return;
  const there = held(section);
  if (all) for (const [id, box] of there) box.hidden = !stops.some((rule) => rule.id === id);
  for (const rule of stops) {
    if (there.has(rule.id)) continue;
    const box = make('div', '', 'stop-rule');
    box.dataset['rule'] = rule.id;
    box.append(make('h2', rule.title), make('p', rule.say), make('p', `${rule.why} ${rule.defers}`, 'small'));
    section.querySelector('h1')?.after(box);
  }
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
const tellFilm = (procedure: ParentNode, on: Case): void => {
  for (const old of procedure.querySelectorAll('.film-so-far')) old.remove();
  const says = sayFilmToSand(on);
  const first = procedure.querySelector('[data-kind=sand]:not([hidden]), [data-kind=strip]:not([hidden])');
  if (!says || !first?.matches('[data-kind=sand]')) return;
  const line = make('p', '', 'limit film-so-far');
  line.append(make('b', 'The film so far: '), says);
  first.querySelector('.do')?.before(line);
};

/**
 * Fits the outcome that stands on this page to all that is told: stops, cautions and steps that the facts rule out go,
 * those that they call for come. Where the facts lead to other hands the page is not hers: stops come, and nothing goes.
 */
export const fitAdvice = async (): Promise<void> => {
  const place = readNodePath(location.pathname);
  const verdict = document.getElementById('verdict');
  if (!place || !verdict) return;
  const [data, advice] = await Promise.all([
    fetched<WalkData>(walkDataUrl(encodeURIComponent(place.defect))),
    fetched<AdviceData>(ADVICE_DATA),
  ]);
  const known = knowledgeOf([...entriesOf(data), ...adviceEntries(advice)]);
  const on: Case = { ...(await caseNow()), ...onPage(known, place.segments) };
  const walked: Walked = walk(known, on, place.defect);
  // A stop for what is told comes on any page; only on her own page may one go.
  const hers = walked.kind === 'outcome' && verdict.classList.contains(walked.action.do);
  fitStops(walked.fired.stops, hers);
  if (!hers) return;
  for (const procedure of document.querySelectorAll<HTMLElement>('.procedure[data-remedy]')) {
    const steps = resolve(known, procedure.dataset['remedy'] ?? '', on);
    for (const item of procedure.querySelectorAll<HTMLElement>('.steps > [data-step]')) {
      const step = steps.find(({ at }) => at === Number(item.dataset['step']));
      item.hidden = !step;
      item.querySelector<HTMLElement>('[data-only]')?.toggleAttribute('hidden', !step?.only);
      if (step) fitStep(item, step.before);
    }
    tellFilm(procedure, on);
    const before = steps.flatMap((step) => step.before);
    for (const line of procedure.querySelectorAll<HTMLElement>('p[data-rule]'))
      line.hidden = !before.some(({ id }) => id === line.dataset['rule']);
  }
};
