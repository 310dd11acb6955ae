import { sayWeather } from '#engine/calc/say-weather.ts';
import { weatherVerdict } from '#engine/calc/weather.ts';
import type { ClockProduct, CoatFault, LaidCoat } from '#engine/clock.ts';
import { nameUnits, turnUnits } from '../shared/clock-units.ts';
import { timeStyle } from '../shared/time-style.ts';
import { coatIn, type Draft, FIELD_NAMES, faultsOf } from './draft.ts';
import { offerProduct, readStanding, type Standing, type Touched, withdrawProduct } from './standing.ts';

const KEY = 'halfdry.clock.form';
/** What belongs to one coat alone and is not offered again for the next. */
const ONCE = ['when', 'ago', 'at', 'surface', 'amount', 'area'];
const VERDICTS = { go: 'Go', 'go-with-care': 'Go, with care', no: 'Not now' } as const;

type Products = Readonly<Record<string, ClockProduct>>;
/** The form of a new coat: remembers what is typed, judges the weather, and tells each fault beside its field. */
export class CoatForm {
  readonly #form: HTMLFormElement;
  readonly #products: Products;
  /** The coat that is corrected, and what stood in the form before. */
  #standing: (Standing & { readonly before: Draft }) | undefined;

  constructor(
    form: HTMLFormElement,
    products: Products,
    laid: (coat: LaidCoat) => void,
    signal: AbortSignal,
  ) {
    this.#form = form;
    this.#products = products;
    this.#recall();
    form.addEventListener('input', (event) => this.#changed(event.target as HTMLInputElement), { signal });
    form.addEventListener('click', (event) => this.#step(event.target as Element), { signal });
    form.addEventListener(
      'submit',
      (event) => {
        event.preventDefault();
        this.#submit(laid);
      },
      { signal },
    );
    this.#show();
  }

  /** The next coat of a piece: the same again, one more. */
  next(coat: LaidCoat): void {
    this.#set('product', coat.product);
    this.#set('piece', coat.piece);
    this.#set('coat', String(coat.coatNumber + 1));
    this.#show();
  }

  /** Puts a coat that stands already into the form. What was typed for the next coat comes back with `end`. */
  correct(standing: Standing): void {
    this.end();
    this.#standing = { ...standing, before: this.#draft };
    const filled = standing.draft(this.#us);
    offerProduct(this.#form, filled['product'] ?? '');
    this.#fill(filled);
  }

  /** Over with the correction: the form is again that of the next coat. */
  end(): void {
    const standing = this.#standing;
    if (!standing) return;
    this.#standing = undefined;
    withdrawProduct(this.#form);
    this.#fill(standing.before);
  }

  /** Whether something of the coat that is corrected was typed over. */
  get typedOver(): boolean {
    return this.#touched(...Object.keys(this.#standing?.draft(this.#us) ?? {}));
  }

  #touched: Touched = (...names) => {
    const filled = this.#standing?.draft(this.#us) ?? {};
    const draft = this.#draft;
    return names.some((name) => (draft[name] ?? '') !== (filled[name] ?? ''));
  };

  #fill(draft: Draft): void {
    for (const [name, value] of Object.entries(draft)) this.#set(name, value);
    nameUnits(this.#form, this.#us);
    this.#tell([]);
    this.#show();
  }

  get #draft(): Draft {
    return Object.fromEntries([...new FormData(this.#form)].map(([name, value]) => [name, String(value)]));
  }

  #set(name: string, value: string): void {
    const field = this.#form.elements.namedItem(name);
    if (!field || !('value' in field)) return;
    const before = field.value;
    field.value = value;
    // A choice that is no longer offered leaves nothing chosen, and that would read as an answer.
    if (field.value !== value) field.value = before;
  }

  #recall(): void {
    let kept: Draft = {};
    try {
      kept = (JSON.parse(localStorage.getItem(KEY) ?? '{}') as Draft | null) ?? {};
    } catch {
      // Denied or damaged: the form begins anew.
    }
    const metric = !/^en-(US|LR)|^my/.test(navigator.language);
    if (!kept['units'] && metric) {
      this.#set('units', 'metric');
      turnUnits(this.#form, false);
    }
    for (const [name, value] of Object.entries(kept)) if (typeof value === 'string') this.#set(name, value);
    nameUnits(this.#form, this.#us);
  }

  #keep(draft: Draft): void {
    try {
      localStorage.setItem(KEY, JSON.stringify(draft));
    } catch {
      // Told where the coat itself can not be kept; what is typed stays in the form.
    }
  }

  get #us(): boolean {
    return this.#draft['units'] === 'us';
  }

  #changed(field: HTMLInputElement): void {
    if (field.name === 'units') this.#turn();
    if (!this.#standing) this.#keep(this.#draft);
    this.#show();
  }

  /** Into the other units. What was not touched is told anew from the coat: to turn a rounded number rounds twice. */
  #turn(): void {
    const before = this.#standing?.draft(!this.#us);
    const after = this.#standing?.draft(this.#us);
    const draft = this.#draft;
    turnUnits(this.#form, this.#us);
    for (const [name, value] of Object.entries(after ?? {}))
      if ((draft[name] ?? '') === before?.[name]) this.#set(name, value);
  }

  #step(target: Element): void {
    const button = target.closest('.stepper button');
    const stepper = button?.parentElement;
    const field = stepper?.querySelector('input');
    if (!button || !stepper || !field) return;
    const step = Number(stepper.dataset['step']) * (button === stepper.firstElementChild ? -1 : 1);
    const value = Number(field.value.replace(',', '.'));
    const empty = !field.value.trim() || Number.isNaN(value);
    const us = this.#us && field.name === 'surface';
    const from = Number(stepper.dataset['from']);
    field.value = String(
      empty ? (us ? Math.round(from * 1.8 + 32) : from) : Math.round((value + step) * 10) / 10,
    );
    this.#changed(field);
  }

  #product(draft: Draft): ClockProduct | undefined {
    const product = this.#products[draft['product'] ?? ''];
    // Of a product without figures here a slip of the pen is still one, by any figures.
    return product ?? (this.#standing && Object.values(this.#products)[0]);
  }

  /** The coat that the form tells of with its faults; of one that is corrected only those in what was touched. */
  #read(
    draft: Draft,
    product: ClockProduct,
  ): { readonly coat: LaidCoat; readonly faults: readonly CoatFault[] } {
    const [now, style] = [Date.now(), timeStyle()];
    const standing = this.#standing;
    if (standing) return readStanding(draft, standing, this.#touched, product, now, style);
    const { coat, absent } = coatIn(draft, now);
    return { coat, faults: faultsOf(absent, coat, product, now, style) };
  }

  /** What depends on the answers: which fields are asked, and whether the weather is fit. */
  #show(): void {
    const draft = this.#draft;
    for (const part of this.#form.querySelectorAll<HTMLElement>('[data-when]'))
      part.hidden = part.dataset['when'] !== draft['when'];
    const product = this.#product(draft);
    const output = this.#form.elements.namedItem('weather') as HTMLOutputElement;
    output.replaceChildren();
    if (!product) return;
    const { coat, faults } = this.#read(draft, product);
    this.#tell(faults);
    if (this.#standing) return;
    const judged = weatherVerdict(product, coat);
    if (!judged.ok) return;
    const { verdict, reasons } = judged.value;
    output.append(
      Object.assign(document.createElement('b'), {
        className: `tape label ${verdict === 'no' ? 'stop' : ''}`,
        textContent: `The weather: ${VERDICTS[verdict]}`,
      }),
      ...reasons.map((reason) =>
        Object.assign(document.createElement('p'), { textContent: sayWeather(reason, 'before') }),
      ),
    );
  }

  #tell(faults: readonly CoatFault[]): void {
    for (const place of this.#form.querySelectorAll('.fault')) place.textContent = '';
    for (const field of this.#form.querySelectorAll('[aria-invalid]')) field.removeAttribute('aria-invalid');
    for (const { field, says, stops } of faults) {
      const name = FIELD_NAMES[field] ?? field;
      const place = document.getElementById(`clock-${name}-fault`);
      if (place && !place.textContent) place.textContent = says;
      const input = document.getElementById(`clock-${name}`);
      if (stops) input?.setAttribute('aria-invalid', 'true');
    }
  }

  #submit(laid: (coat: LaidCoat) => void): void {
    const draft = this.#draft;
    const product = this.#product(draft);
    const told = document.getElementById('clock-form-fault');
    if (!product) return;
    const { coat, faults } = this.#read(draft, product);
    this.#tell(faults);
    const first = faults.find(({ stops }) => stops);
    if (told)
      told.textContent = first
        ? `${this.#standing ? 'Not changed yet' : 'The clock has not started'}: see the marked fields. Nothing is lost.`
        : '';
    if (first) {
      const field = document.getElementById(`clock-${FIELD_NAMES[first.field] ?? first.field}`);
      field?.closest('details')?.setAttribute('open', '');
      field?.focus();
      return;
    }
    const standing = this.#standing;
    laid(coat);
    if (standing) return;
    this.#keep(Object.fromEntries(Object.entries(draft).filter(([name]) => !ONCE.includes(name))));
    for (const name of ONCE) this.#set(name, name === 'when' ? 'now' : '');
    this.#set('ago', '10');
    this.#show();
  }
}
