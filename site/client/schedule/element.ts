import * as v from 'valibot';
import { entryOf, isOneOf, keysOf } from '#engine/plain/entry-of.ts';
import { HOUR_MS } from '#engine/plain/time.ts';
import type { Job } from '#engine/schedule.ts';
import ownCans from '../../styles/own-cans.css?inline';
import planResult from '../../styles/plan-result.css?inline';
import { nameOfCan } from '../shared/cans/kept.ts';
import { wireCans } from '../shared/cans/wire.ts';
import { late, NetworkFault, unlessOffline } from '../shared/fetch-json.ts';
import { type Draft, draftTurner, type FieldFault, keepable, unitsIn } from '../shared/form/form.ts';
import {
  askHardener,
  chosenWords,
  draftIn,
  fillForm,
  nameUnits,
  plainNumbers,
  tellFaults,
} from '../shared/form/in-page.ts';
import { localText } from '../shared/form/local-time.ts';
import { readNumber, writeNumber } from '../shared/form/number.ts';
import { saidTone, toneOver } from '../shared/form/tone-over.ts';
import { wear } from '../shared/late-style.ts';
import { readPageData } from '../shared/page-data.ts';
import { planTables } from '../shared/plan-tables.ts';
import { pageUnits } from '../shared/say-date.ts';
import { sayLength } from '../shared/say-units.ts';
import { keep, recall } from '../shared/storage.ts';
import { timeStyle } from '../shared/time-style.ts';
import { addBothFaces, askBothFaces } from './both-faces.ts';
import { linkOf, notOffered, readJob, readLink, rounded, toldInLink } from './draft.ts';
import { PLAN_FIELDS } from './fields.ts';
import { coatLine, pieceLine, useLine, weatherLine } from './fold-lines.ts';
import { nightFollowing, usualNight } from './night.ts';
import type { OtherCoat } from './shown.ts';

wear(ownCans);
wear(planResult);

/** A ready-made piece: its kind, its wear, what it meets, and of each part how many faces, and their sides in millimeters. */
const PRESETS = v.record(
  v.string(),
  v.tupleWithRest([v.string(), v.string(), v.array(v.string())], v.array(v.number())),
);
const PARTS = ['top', 'side', 'front', 'leg'];
/** What a plan does without. */
const MAY_BE_EMPTY = ['base-age', 'night-humidity', 'start', 'promised', 'hardener'];

/** The planner: reads the form, plans, and shows the plan below it. The inputs stand in the address, behind #. */
export class ScheduleElement extends HTMLElement {
  #stop = new AbortController();
  readonly #turned = draftTurner(PLAN_FIELDS);
  /** The last air by day that could be read: the night follows it. */
  #air = '';
  /** She chose the tool herself: another top coat does not change it. */
  #toolHers = false;
  /** She chose what shows through herself: another base does not change it. */
  #toneHers = false;

  connectedCallback() {
    this.#stop = new AbortController();
    const { signal } = this.#stop;
    const form = this.#form;
    addBothFaces(form);
    askBothFaces(form, this.#draft);
    this.#noteAir();
    wireCans(form, PLAN_FIELDS, signal);
    plainNumbers(form, PLAN_FIELDS, () => unitsIn(this.#draft), signal);
    form.addEventListener('change', ({ target }) => this.#changed(target), { signal });
    form.addEventListener(
      'submit',
      (event) => {
        event.preventDefault();
        void this.#plan(false);
      },
      { signal },
    );
    addEventListener('hashchange', () => void this.#follow(), { signal });
    void this.#follow();
  }

  disconnectedCallback() {
    this.#stop.abort();
  }

  get #form(): HTMLFormElement {
    return this.#part('form');
  }

  /** What holds the form: closed once there is a plan. */
  get #change(): HTMLDetailsElement {
    return this.#part('[data-part=change]');
  }

  get #place(): HTMLElement {
    return this.#part('[data-part=plan]');
  }

  #part<E extends HTMLElement>(selector: string): E {
    const found = this.querySelector<E>(selector);
    if (!found) throw new Error(`the page brought no ${selector} for the plan`);
    return found;
  }

  get #draft(): Draft {
    const { turned, ...draft } = draftIn(this.#form);
    // How it is turned says nothing where nothing is: an address of one face is as it always was.
    return {
      ...draft,
      ...(draft['both'] && turned !== undefined && { turned }),
      kind: this.#form.dataset['kind'] ?? 'furniture',
    };
  }

  /**
   * Puts a draft into the form. What it does not name is emptied where that may be, since a link names nothing that is
   * empty; all else is as it usually is, so that a link that was cut still makes a plan.
   */
  #fill(draft: Draft): void {
    this.#form.reset();
    this.#turnToHers(draft);
    // A draft that names a ready-made piece and no size means the sizes of that piece.
    if (draft['preset'] && draft['top-count'] === undefined) this.#preset(draft['preset']);
    const emptied = Object.keys(this.#draft).filter(
      (name) => name.startsWith('can-') || MAY_BE_EMPTY.includes(name),
    );
    // A link that tells the day alone means the night that goes with it.
    const night =
      draft['air'] === undefined ? undefined : usualNight({ ...this.#draft, ...draft }, this.#colder);
    this.#put({
      trials: '',
      sun: '',
      both: '',
      kind: 'furniture',
      ...Object.fromEntries(emptied.map((name) => [name, ''])),
      ...(night !== undefined && { night }),
      ...draft,
    });
    this.#toolHers = false;
    this.#toneHers = saidTone({ base: 'latex-paint', ...draft });
    nameUnits(this.#form, unitsIn(this.#draft));
  }

  /** What kind of thing it is comes with its preset, so no field holds it. */
  #put({ kind, ...draft }: Draft): void {
    if (kind !== undefined) this.#form.dataset['kind'] = kind;
    fillForm(this.#form, draft);
    this.#noteAir();
    this.#tellFolded();
  }

  /** Into the units of the page, where nothing that is told stands in others; what nobody chose is whole degrees then. */
  #turnToHers(told: Draft): void {
    const units = pageUnits();
    const measured = keysOf(PLAN_FIELDS).some((name) => told[name] && PLAN_FIELDS[name].turn);
    if (told['units'] || measured || units === unitsIn(this.#draft)) return;
    const turned = this.#turned(this.#draft, units);
    const air = writeNumber(readNumber(turned['air'] ?? ''), 0);
    const night = usualNight({ ...turned, air, units }, this.#colder);
    this.#put({ ...turned, units, air, ...(night !== undefined && { night }) });
    this.#preset(this.#draft['preset'] ?? '');
    nameUnits(this.#form, units);
  }

  get #colder(): number {
    return Number(this.#form.dataset['colder']);
  }

  #noteAir(): void {
    const { air = '' } = this.#draft;
    if (Number.isFinite(readNumber(air))) this.#air = air;
  }

  /** What has a usual answer is folded: what it holds is told in its line. */
  #tellFolded(): void {
    const draft = this.#draft;
    askHardener(this.#form, draft);
    askBothFaces(this.#form, draft);
    const wordsOf = (field: string) => chosenWords(this.#form, field);
    const lines = {
      piece: pieceLine(draft, wordsOf),
      use: useLine(wordsOf),
      coat: coatLine(draft, wordsOf),
      weather: weatherLine(draft, timeStyle().hour12),
    };
    for (const [part, line] of Object.entries(lines)) this.#part(`[data-part=${part}]`).textContent = line;
  }

  #changed(target: EventTarget | null): void {
    if (!(target instanceof HTMLInputElement || target instanceof HTMLSelectElement)) return;
    if (target.name === 'units') {
      const units = unitsIn(this.#draft);
      this.#put(this.#turned(this.#draft, units));
      nameUnits(this.#form, units);
    }
    if (target.name === 'preset') this.#preset(target.value);
    if (target.name === 'tool') this.#toolHers = true;
    if (target.name === 'tone') this.#toneHers = true;
    if (target.name === 'base' && !this.#toneHers) this.#put({ tone: toneOver(target.value) });
    if (target.name === 'product') {
      // What was mixed into the other can says nothing of this one.
      this.#put({ hardener: '' });
      void this.#usualTool();
    }
    if (target.name === 'air') {
      const night = nightFollowing(this.#draft, this.#air, this.#colder);
      this.#put(night === undefined ? {} : { night });
    }
    this.#tellFolded();
    this.#keep();
  }

  /** The tool that usually lays the chosen top coat, where the one that stands there does not and was not her choice. */
  async #usualTool(): Promise<void> {
    if (this.#toolHers) return;
    const { products } = (await unlessOffline(planTables())) ?? { products: [] };
    const { product, tool = '' } = this.#draft;
    const tools = keysOf(products.find(({ id }) => id === product)?.['wet-film-micrometers'] ?? {});
    const [first] = tools;
    if (first && !isOneOf<string>(tools, tool))
      this.#put({ tool: isOneOf<string>(tools, 'brush') ? 'brush' : first });
  }

  #preset(id: string): void {
    const found = entryOf(readPageData(PRESETS, this.#form.dataset['presets']), id);
    if (!found) return;
    const [kind, wear, trials, ...parts] = found;
    const us = unitsIn(this.#draft) === 'us';
    const sizes = PARTS.flatMap((part, index) => {
      const [count = 0, ...sides] = parts[index] ?? [];
      const [long = '', wide = ''] = sides.map((side) => sayLength(side, us));
      return [
        [`${part}-count`, String(count)],
        [`${part}-long`, long],
        [`${part}-wide`, wide],
      ];
    });
    this.#put({ kind, wear, trials: trials.join(','), both: '', ...Object.fromEntries(sizes) });
  }

  /** A half-filled form outlives a locked phone; a browser that keeps nothing loses only that. */
  #keep(): void {
    keep('schedule-form', { version: 1, draft: keepable(this.#draft) });
  }

  async #follow(): Promise<void> {
    const linked = readLink(location.hash);
    if (linked) {
      const { draft, cut } = linked;
      if (linkOf(draft) === linkOf(this.#draft) && !this.#place.hidden) return;
      this.#fill(draft);
      const lost = notOffered(draft, this.#draft);
      if (lost.length) return this.#tell(lost);
      if (!draft['tool']) await this.#usualTool();
      return this.#plan(true, cut);
    }
    const kept = recall('schedule-form');
    const told = toldInLink(location.hash);
    if (kept || told) this.#fill({ ...kept?.draft, ...told });
    else this.#turnToHers({});
    return undefined;
  }

  #tell(faults: readonly FieldFault[]): void {
    const first = tellFaults(this.#form, 'plan', faults);
    if (faults.length) this.#change.open = true;
    for (const fold of this.#form.querySelectorAll('details:has([aria-invalid])'))
      fold.setAttribute('open', '');
    const fields = faults.length === 1 ? 'one field' : `${faults.length} fields`;
    this.#say(faults.length ? `Mend ${fields} above; nothing is lost.` : '');
    first?.focus();
  }

  #say(text: string): void {
    this.#part('#plan-form-fault').textContent = text;
  }

  async #plan(linked: boolean, cut = false): Promise<void> {
    const now = Date.now();
    const { job, faults } = readJob(this.#draft, now);
    this.#tell(faults);
    if (!job) return;
    try {
      const [data, { showPlan }] = await Promise.all([planTables(), late(() => import('./view.tsx'))]);
      this.#keep();
      const link = this.#link(job);
      const us = unitsIn(this.#draft) === 'us';
      const planFrom = (at: number) => this.#planFrom(at, job);
      const planWith = (other: OtherCoat) => this.#planWith(other);
      const planTested = () => this.#planTested();
      const planBy = (tool: string) => this.#planBy(tool);
      showPlan(this.#place, {
        job,
        data,
        us,
        can: nameOfCan(PLAN_FIELDS, recall('cans')?.cans ?? [], this.#draft),
        linked,
        cut,
        link,
        now,
        planFrom,
        planWith,
        planBy,
        planTested,
      });
      this.#change.open = false;
      if (linked) return;
      history.replaceState(history.state, '', link);
      this.#place.focus();
      this.#place.scrollIntoView({ block: 'start' });
    } catch (error) {
      if (!(error instanceof NetworkFault)) throw error;
      this.#say(
        'The tables could not be loaded: no signal? Nothing is lost; try again, or plan by hand below.',
      );
    }
  }

  /** The address of this very plan: the start is written out, so that it stays the same tomorrow. */
  #link(job: Job): string {
    return `#${linkOf({ ...this.#draft, start: localText(job.start) })}`;
  }

  /** Plans anew from a later start; the base goes on drying until then. */
  #planFrom(at: number, { baseHours, start: before }: Job): void {
    const start = rounded(at);
    const age = baseHours !== undefined && Math.round(baseHours + (start - before) / HOUR_MS);
    this.#put({ start: localText(start), ...(age !== false && { 'base-age': String(age) }) });
    void this.#plan(false);
  }

  /** Plans anew where no layer holds lead: the same answer as for paint that is young enough. */
  #planTested(): void {
    this.#put({ age: 'since-1993' });
    void this.#plan(false);
  }

  #planBy(tool: string): void {
    this.#put({ tool });
    void this.#plan(false);
  }

  /** Plans anew with another top coat; what the can of the first said is no longer told. */
  #planWith({ product, tool }: OtherCoat): void {
    const onCan = Object.keys(this.#draft).filter((name) => name.startsWith('can-'));
    this.#put({ product, tool, hardener: '', ...Object.fromEntries(onCan.map((name) => [name, ''])) });
    void this.#plan(false);
  }
}
