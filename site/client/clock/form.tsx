import { render } from 'preact';
import { weatherVerdict } from '#engine/calc/weather.ts';
import type { ClockProduct, LaidCoat } from '#engine/clock.ts';
import type { Judgement, Laying } from '#engine/fitness.ts';
import { entryOf } from '#engine/plain/entry-of.ts';
import ownCans from '../../styles/own-cans.css?inline';
import { wireCans } from '../shared/cans/wire.ts';
import { partIn } from '../shared/element.ts';
import { unlessOffline } from '../shared/fetch-json.ts';
import { type Draft, draftTurner, keepable, unitsIn } from '../shared/form/form.ts';
import {
  askHardener,
  draftIn,
  fillForm,
  nameUnits,
  onWhole,
  plainNumbers,
  tellFaults,
  writePlain,
} from '../shared/form/in-page.ts';
import { readNumber, writeNumber } from '../shared/form/number.ts';
import { QUANTITIES, type Units, unitsOf } from '../shared/form/units.ts';
import { judgeCoat } from '../shared/judge.ts';
import { wear } from '../shared/late-style.ts';
import { keep, recall } from '../shared/storage.ts';
import { timeStyle } from '../shared/time-style.ts';
import { BeforeCoat } from './before-coat.tsx';
import { coatIn, type DraftFault, faultsOf, toldInLink, twiceIn } from './draft.ts';
import { CAN_FIELDS, COAT_FIELDS, OF_ONE_COAT } from './fields.ts';
import { canDraft } from './refill.ts';
import { type CorrectedCoat, offerProduct, readStanding, type Touched, withdrawProduct } from './standing.ts';
import { Weather } from './weather.tsx';

wear(ownCans);

/** What belongs to one coat alone and is not offered again for the next. */
const ONCE = ['when', 'ago', 'at', 'at-hour', 'night', ...OF_ONE_COAT];

const emptied = (names: readonly string[]): Draft => Object.fromEntries(names.map((name) => [name, '']));
/** What was measured of one coat, or read from its can. */
const OF_ANOTHER = emptied(OF_ONE_COAT);
const OF_ANOTHER_CAN = emptied([...OF_ONE_COAT, ...CAN_FIELDS, 'hardener']);

/** What the form is for. */
type Use = {
  readonly products: Products;
  /** A coat as it comes to lie on its piece, for the judgement of it. */
  readonly layingOf: (coat: LaidCoat) => Laying;
  /**
   * Takes a coat that was read without a fault, with the judgement of one that is new; nothing of that where its tables
   * could not be had. True once it is laid.
   */
  readonly laid: (coat: LaidCoat, judgement: Judgement | undefined) => Promise<boolean>;
};
type Products = Readonly<Record<string, ClockProduct>>;

/** The form of a new coat: remembers what is typed, judges the weather, and tells each fault beside its field. */
export class CoatForm {
  readonly #form: HTMLFormElement;
  readonly #use: Use;
  /** The units that the numbers in the form are in. */
  #units: Units = 'us';
  /** The coat that is corrected, and what stood in the form before. */
  #standing: (CorrectedCoat & { readonly before: Draft }) | undefined;
  readonly #turned = draftTurner(COAT_FIELDS);
  /** Judgements that were asked for: of two that overtake each other the later one stands. */
  #asked = 0;

  constructor(form: HTMLFormElement, use: Use, signal: AbortSignal) {
    this.#form = form;
    this.#use = use;
    wireCans(form, COAT_FIELDS, signal);
    plainNumbers(form, COAT_FIELDS, () => this.#units, signal);
    this.#recall();
    onWhole(form, ({ name }) => this.#changed(name), signal);
    // What is half typed outlives a locked phone, too.
    form.addEventListener('input', () => this.#keep(), { signal });
    form.addEventListener('click', ({ target }) => this.#step(target), { signal });
    form.addEventListener(
      'submit',
      (event) => {
        event.preventDefault();
        void this.#submit();
      },
      { signal },
    );
    this.#show();
  }

  /** The next coat of a piece: the same again, one more. */
  next({
    product,
    piece,
    coatNumber,
    applicator,
    label,
    hardener = '',
  }: Pick<LaidCoat, 'product' | 'piece' | 'coatNumber' | 'applicator' | 'label'> & {
    readonly hardener?: LaidCoat['hardener'] | '';
  }): void {
    const tool = applicator && { tool: applicator };
    const can = canDraft(label, this.#units);
    const coat = String(coatNumber + 1);
    fillForm(this.#form, { ...OF_ANOTHER, ...can, product, piece, coat, hardener, ...tool });
    this.#show();
  }

  /** Puts a coat that stands already into the form. What was typed for the next coat comes back with `end`. */
  correct(standing: CorrectedCoat): void {
    this.end();
    this.#standing = { ...standing, before: this.#draft };
    const filled = standing.draft(this.#units);
    offerProduct(this.#form, filled['product'] ?? '');
    this.#fill(filled);
  }

  /** The time counts from now in another air, which is asked; all else stays as it was told. */
  fromNow(): void {
    fillForm(this.#form, { when: 'now', surface: '', night: '' });
    this.#show();
    const air = this.#form.elements.namedItem('air');
    if (!(air instanceof HTMLInputElement)) return;
    air.focus();
    air.select();
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
    return this.#touched(...Object.keys(this.#standing?.draft(this.#units) ?? {}));
  }

  /** The coat is laid: what belongs to it alone is not offered again. */
  #laid(): void {
    if (this.#standing) return;
    fillForm(this.#form, { ...emptied(ONCE), when: 'now', ago: '10' });
    this.#keep();
    this.#show();
  }

  #touched: Touched = (...names) => {
    const filled = this.#standing?.draft(this.#units) ?? {};
    const draft = this.#draft;
    return names.some((name) => (draft[name] ?? '') !== (filled[name] ?? ''));
  };

  #fill(draft: Draft): void {
    fillForm(this.#form, draft);
    this.#units = unitsIn(this.#draft);
    nameUnits(this.#form, this.#units);
    tellFaults(this.#form, 'clock', []);
    this.#show();
  }

  get #draft(): Draft {
    return draftIn(this.#form);
  }

  #recall(): void {
    const told = toldInLink(location.hash);
    // Another can was meant by what was typed before: its times and its pieces are no times of this one.
    const before = recall('clock-form')?.draft ?? {};
    const kept: Draft = { ...before, ...(told && { ...OF_ANOTHER_CAN, night: '', ...told }) };
    this.#units = unitsIn(this.#draft);
    if (!kept['units'] && unitsOf(navigator.language) === 'metric') {
      fillForm(this.#form, { units: 'metric' });
      this.#turn();
    }
    this.#fill(kept);
    // What counts beyond this day's air is not left where nobody sees it.
    const { surface, night } = this.#draft;
    if (surface || night) partIn(this.#form, 'more')?.setAttribute('open', '');
  }

  /** Where the browser keeps nothing, what is typed stays in the form; it is told where the coat can not be kept. */
  #keep(): void {
    if (!this.#standing) keep('clock-form', { version: 1, draft: keepable(this.#draft) });
  }

  #changed(name: string): void {
    if (name === 'units') this.#turn();
    // A can belongs to its product, and to the piece that it stood beside; so does what was measured.
    if ((name === 'product' || name === 'piece') && !this.#standing) fillForm(this.#form, OF_ANOTHER_CAN);
    if (name === 'hours') this.#keepHours();
    this.#keep();
    this.#show();
  }

  /** How times are printed is chosen once for all pages, also while a coat is corrected. */
  #keepHours(): void {
    const { hours = '' } = this.#draft;
    const standing = this.#standing;
    if (!standing) return;
    this.#standing = { ...standing, before: { ...standing.before, hours } };
    keep('clock-form', { version: 1, draft: { ...recall('clock-form')?.draft, hours } });
  }

  /** Into the other units. What was not touched is told anew from the coat: to turn a rounded number rounds twice. */
  #turn(): void {
    const draft = this.#draft;
    const units = unitsIn(draft);
    const before = this.#standing?.draft(this.#units) ?? {};
    const after = this.#standing?.draft(units) ?? {};
    const turned = this.#turned(draft, units);
    fillForm(
      this.#form,
      Object.fromEntries(
        Object.entries(turned).map(([name, text]) => [
          name,
          name in after && (draft[name] ?? '') === before[name] ? (after[name] ?? '') : text,
        ]),
      ),
    );
    this.#units = units;
    nameUnits(this.#form, units);
  }

  #step(target: EventTarget | null): void {
    const button = target instanceof Element ? target.closest('[data-from] > button') : undefined;
    const stepper = button?.parentElement;
    const field = stepper?.querySelector('input');
    if (!button || !stepper || !field) return;
    const step = Number(stepper.dataset['step']) * (button === stepper.firstElementChild ? -1 : 1);
    writePlain(COAT_FIELDS, field, this.#units);
    const value = readNumber(field.value);
    const from = Number(stepper.dataset['from']);
    const first =
      this.#units === 'us' && ['surface', 'night', 'label-air'].includes(field.name)
        ? QUANTITIES.degrees.toUs(from)
        : from;
    field.value = writeNumber(value === undefined || Number.isNaN(value) ? first : value + step, 1);
    this.#changed(field.name);
  }

  #product(draft: Draft): ClockProduct | undefined {
    const id = draft['product'] ?? '';
    // Of a product without figures here a slip of the pen is still one, by any figures.
    return entryOf(this.#use.products, id) ?? (this.#standing && Object.values(this.#use.products)[0]);
  }

  /** The coat that the form tells of with its faults; of one that is corrected only those in what was touched. */
  #read(
    draft: Draft,
    product: ClockProduct,
  ): { readonly coat: LaidCoat; readonly faults: readonly DraftFault[] } {
    const now = Date.now();
    const style = { ...timeStyle(), units: this.#units };
    const standing = this.#standing;
    if (standing) return readStanding(draft, standing, this.#touched, product, now, style);
    const { coat, faults } = coatIn(draft, now);
    return { coat, faults: faultsOf(faults, coat, product, now, style) };
  }

  /** What depends on the answers: which fields are asked, and whether the weather is fit. */
  #show(): void {
    const draft = this.#draft;
    askHardener(this.#form, draft);
    const asked = [draft['when'], ...(twiceIn(draft).length ? ['twice'] : [])];
    for (const part of this.#form.querySelectorAll<HTMLElement>('[data-when]'))
      part.hidden = !asked.includes(part.dataset['when']);
    const product = this.#product(draft);
    const output = this.#form.elements.namedItem('weather');
    if (!(output instanceof HTMLOutputElement)) return;
    if (!product) {
      this.#asked += 1;
      render(null, output);
      return;
    }
    const { coat, faults } = this.#read(draft, product);
    tellFaults(this.#form, 'clock', faults);
    void this.#tellBefore(coat, product, output);
  }

  /** What stands before a new coat: the weather at once, and all else as soon as the tables are here. */
  async #tellBefore(coat: LaidCoat, product: ClockProduct, output: HTMLOutputElement): Promise<void> {
    const asked = ++this.#asked;
    const judged = this.#standing ? undefined : weatherVerdict(product, coat);
    if (!judged?.ok) {
      render(null, output);
      return;
    }
    if (!output.hasChildNodes()) render(<Weather verdict={judged.value} units={this.#units} />, output);
    const judgement = await this.#judgementOf(coat);
    if (asked !== this.#asked) return;
    render(
      judgement ? (
        <BeforeCoat judgement={judgement} />
      ) : (
        <Weather verdict={judged.value} units={this.#units} />
      ),
      output,
    );
  }

  /** The judgement of a coat; nothing where its tables can not be had. */
  #judgementOf(coat: LaidCoat): Promise<Judgement | undefined> {
    return unlessOffline(
      judgeCoat(coat.product, this.#use.layingOf(coat), { at: coat.laidAt, units: this.#units }),
    );
  }

  async #submit(): Promise<void> {
    const draft = this.#draft;
    const product = this.#product(draft);
    const said = document.getElementById('clock-form-fault');
    if (!product) return;
    const { coat, faults } = this.#read(draft, product);
    const first = tellFaults(this.#form, 'clock', faults);
    const stopped = faults.some(({ stops }) => stops);
    if (said)
      said.textContent = stopped
        ? `${this.#standing ? 'Not changed yet' : 'The clock has not started'}: see the marked fields. Nothing is lost.`
        : '';
    if (stopped) {
      first?.closest('details')?.setAttribute('open', '');
      first?.focus();
      return;
    }
    const judgement = this.#standing ? undefined : await this.#judgementOf(coat);
    if (await this.#use.laid(coat, judgement)) this.#laid();
  }
}
