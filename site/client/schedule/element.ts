import type { Job, Outcome } from '#engine/schedule.ts';
import { NetworkFault } from '../shared/fetch-json.ts';
import { draftIn, fillForm, nameUnits } from '../shared/form/in-page.ts';
import { planTables } from '../shared/judge.ts';
import { sayLength } from '../shared/say-units.ts';
import { turnForm } from '../shared/schedule-units.ts';
import { keep, recall } from '../shared/storage.ts';
import { type Draft, linkOf, readJob, readLink } from './draft.ts';

type Preset = readonly [kind: string, wear: string, trials: readonly string[], ...(readonly number[])[]];
const PARTS = ['top', 'side', 'front', 'leg'];
const SIDES = ['count', 'long', 'wide'];
/** What a plan does without. */
const MAY_BE_EMPTY = ['base-age', 'night-humidity', 'start', 'promised'];

/** The planner: reads the form, plans, and shows the plan above it. The inputs stand in the address, behind #. */
export class ScheduleElement extends HTMLElement {
  #stop = new AbortController();
  #us = true;

  connectedCallback() {
    this.#stop = new AbortController();
    const { signal } = this.#stop;
    const { form } = this;
    form.addEventListener('change', (event) => this.#changed(event.target as HTMLInputElement), { signal });
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

  get form(): HTMLFormElement {
    return this.querySelector('form') as HTMLFormElement;
  }

  get #place(): HTMLElement {
    return this.querySelector('.plan') as HTMLElement;
  }

  get draft(): Draft {
    return { ...draftIn(this.form), kind: this.form.dataset['kind'] ?? 'furniture' };
  }

  /**
   * Puts a draft into the form. What it does not name is emptied where that may be, since a link names nothing that is
   * empty; all else is as it usually is, so that a link that was cut still makes a plan.
   */
  #fill(draft: Draft): void {
    this.form.reset();
    const left = Object.keys(this.draft).filter(
      (name) => name.startsWith('can-') || MAY_BE_EMPTY.includes(name),
    );
    fillForm(this.form, {
      trials: '',
      sun: '',
      ...Object.fromEntries(left.map((name) => [name, ''])),
      ...draft,
    });
    this.form.dataset['kind'] = draft['kind'] ?? 'furniture';
    this.#nameUnits();
  }

  #nameUnits(): void {
    this.#us = this.draft['units'] === 'us';
    nameUnits(this.form, this.#us ? 'us' : 'metric');
  }

  #changed(field: HTMLInputElement): void {
    if (field.name === 'units') {
      turnForm(this.form, field.value === 'us');
      this.#nameUnits();
    }
    if (field.name === 'preset') this.#preset(field.value);
    this.#keep();
  }

  #preset(id: string): void {
    const presets = JSON.parse(this.form.dataset['presets'] ?? '{}') as Record<string, Preset>;
    const found = presets[id];
    if (!found) return;
    const [kind, wear, trials, ...parts] = found;
    this.form.dataset['kind'] = kind;
    const set = (name: string, value: string) => {
      (this.form.elements.namedItem(name) as HTMLInputElement).value = value;
    };
    set('wear', wear);
    for (const tick of this.querySelectorAll<HTMLInputElement>('[name=trials]'))
      tick.checked = trials.includes(tick.value);
    for (const [index, part] of PARTS.entries())
      for (const [at, side] of SIDES.entries()) {
        const size = parts[index]?.[at] ?? 0;
        set(`${part}-${side}`, side === 'count' ? String(size) : sayLength(size, this.#us));
      }
  }

  /** A half-filled form outlives a locked phone; a browser that keeps nothing loses only that. */
  #keep(): void {
    keep('schedule-form', { version: 1, draft: this.draft });
  }

  async #follow(): Promise<void> {
    const linked = readLink(location.hash);
    if (linked) {
      if (linkOf(linked) === linkOf(this.draft) && !this.#place.hidden) return;
      this.#fill(linked);
      return this.#plan(true);
    }
    const kept = recall('schedule-form');
    if (kept) this.#fill(kept.draft);
    return undefined;
  }

  #faults(faults: readonly { field: string; says: string }[]): void {
    for (const place of this.querySelectorAll('.fault')) place.textContent = '';
    for (const field of this.querySelectorAll('[aria-invalid]')) field.removeAttribute('aria-invalid');
    for (const { field, says } of faults) {
      const place = this.querySelector(`#plan-${field}-fault`);
      if (place) place.textContent = says;
      const input =
        this.form.querySelector<HTMLElement>(`input[name="${field}"]`) ??
        this.form.querySelector<HTMLElement>(`[name="${field}-long"]`);
      input?.setAttribute('aria-invalid', 'true');
      input?.closest('details')?.setAttribute('open', '');
    }
    const first = this.querySelector<HTMLElement>('[aria-invalid]');
    this.#say(
      faults.length
        ? `Mend ${faults.length === 1 ? 'one field' : `${faults.length} fields`} above; nothing is lost.`
        : '',
    );
    first?.focus();
  }

  #say(text: string): void {
    const place = this.querySelector('#plan-form-fault');
    if (place) place.textContent = text;
  }

  async #plan(linked: boolean): Promise<void> {
    const now = Date.now();
    const { job, faults } = readJob(this.draft, now);
    this.#faults(faults);
    if (faults.length) return;
    try {
      const [data, { outcomeOf, show }] = await Promise.all([planTables(), import('./show.ts')]);
      const outcome: Outcome = outcomeOf(job, data, this.#us);
      this.#keep();
      const link = this.#link(job);
      if (!linked) history.replaceState(history.state, '', link);
      show(this.#place, {
        job,
        outcome,
        data,
        us: this.#us,
        linked,
        link,
        now,
        planFrom: (at) => this.#from(at, job),
      });
      this.#place.hidden = false;
      if (!linked) {
        this.#place.focus();
        this.#place.scrollIntoView({ block: 'start' });
      }
    } catch (error) {
      if (!(error instanceof NetworkFault)) throw error;
      this.#say(
        'The tables could not be loaded: no signal? Nothing is lost; try again, or plan by hand below.',
      );
    }
  }

  /** The address of this very plan: the start is written out, so that it stays the same tomorrow. */
  #link(job: Job): string {
    return `#${linkOf({ ...this.draft, start: localInput(job.start) })}`;
  }

  /** Plans anew from a later start; the base goes on drying until then. */
  #from(at: number, job: Job): void {
    const set = (name: string, value: string) => {
      (this.form.elements.namedItem(name) as HTMLInputElement).value = value;
    };
    const start = localInput(at);
    set('start', start);
    if (job.baseHours !== undefined)
      set(
        'base-age',
        String(Math.round(job.baseHours + (new Date(start).getTime() - job.start) / 3_600_000)),
      );
    void this.#plan(false);
  }
}

/** An instant as a field for day and time writes it, rounded up to the next five minutes. */
const localInput = (at: number): string => {
  const date = new Date(Math.ceil(at / 300_000) * 300_000);
  return new Date(date.getTime() - date.getTimezoneOffset() * 60_000).toISOString().slice(0, 16);
};
