import { isKeyOf } from '#engine/plain/entry-of.ts';
import type { AnyFields, Draft, FieldFault } from './form.ts';
import type { Units } from './units.ts';

/** What stands in the form now. */
export const draftIn = (form: HTMLFormElement): Draft => {
  const all = new FormData(form);
  const names = [...new Set(all.keys())];
  return Object.fromEntries(names.map((name) => [name, all.getAll(name).map(String).join(',')]));
};

/** The words of what is chosen in a field: of a choice, of ticks, or of a list. */
export const chosenWords = (form: HTMLFormElement, name: string): readonly string[] =>
  controlsOf(form)
    .filter((control) => control.name === name)
    .flatMap((control) =>
      control instanceof HTMLSelectElement
        ? [...control.selectedOptions].map(({ text }) => text)
        : control instanceof HTMLInputElement && control.checked
          ? [...(control.labels ?? [])].map(({ textContent }) => textContent?.trim() ?? '')
          : [],
    );

type Control = HTMLInputElement | HTMLSelectElement | HTMLTextAreaElement;
const isControl = (element: Element): element is Control =>
  element instanceof HTMLInputElement ||
  element instanceof HTMLSelectElement ||
  element instanceof HTMLTextAreaElement;
const controlsOf = (form: HTMLFormElement): readonly Control[] =>
  [...form.elements].filter(isControl).filter(({ name }) => name);

/**
 * Writes a draft into the form, only what it names. A choice that is not offered leaves what is chosen: nothing chosen
 * would read as an answer.
 */
export const fillForm = (form: HTMLFormElement, draft: Draft): void => {
  for (const control of controlsOf(form)) {
    const text = draft[control.name];
    if (text === undefined) continue;
    if (control instanceof HTMLInputElement && control.type === 'checkbox')
      control.checked = text.split(',').includes(control.value);
    else if (control instanceof HTMLInputElement && control.type === 'radio') {
      if (control.value === text) control.checked = true;
    } else if (control instanceof HTMLSelectElement) {
      if ([...control.options].some(({ value }) => value === text)) control.value = text;
    } else control.value = text;
  }
};

/** Asks for a hardener of the kinds of finish that may come with one, and where one is told. */
export const askHardener = (form: HTMLFormElement, { product = '', hardener }: Draft): void => {
  const part = form.querySelector<HTMLElement>('[data-hardened]');
  if (part) part.hidden = !hardener && !part.dataset['hardened']?.split(' ').includes(product);
};

/** Writes the unit in use beside each field. */
export const nameUnits = (form: HTMLElement, units: Units): void => {
  for (const unit of form.querySelectorAll<HTMLElement>('[data-us]'))
    unit.textContent = (units === 'us' ? unit.dataset['us'] : unit.dataset['metric']) ?? '';
};

const write = (element: Element, text: string): void => {
  if (element.textContent !== text) element.textContent = text;
};

/** What stands in a field was reckoned from what was typed there; said until something else stands in it. */
const RECKONED = new WeakMap<Control, { readonly text: string; readonly says: string }>();
/** What of the fields beside a line was reckoned, where nothing is wrong there. */
const reckonedBeside = (line: Element): string =>
  [...(line.parentElement?.querySelectorAll('input') ?? [])]
    .filter((input) => input.closest('div') === line.parentElement)
    .flatMap((input) => {
      const reckoned = RECKONED.get(input);
      return reckoned?.text === input.value ? [reckoned.says] : [];
    })
    .join(' ');

const tellLine = (line: HTMLElement, fault: string | undefined): void => {
  const text = fault ?? reckonedBeside(line);
  line.toggleAttribute('data-note', fault === undefined && text !== '');
  write(line, text);
};

/** Writes what was typed into a number field as the number alone: “70 °F” as 70, and 21 °C as 70 where °F are asked. */
export const writePlain = <F extends AnyFields<F>>(fields: F, control: Control, units: Units): void => {
  const field = isKeyOf(fields, control.name) ? fields[control.name] : undefined;
  const plain = field?.plain?.(control.value, units);
  if (!plain) return;
  control.value = plain.text;
  if (plain.says) RECKONED.set(control, { text: plain.text, says: plain.says });
};

/** Takes the units off what is typed, before anything else hears of it, and says beside a field what was reckoned. */
export const plainNumbers = <F extends AnyFields<F>>(
  form: HTMLFormElement,
  fields: F,
  unitsNow: () => Units,
  signal: AbortSignal,
): void => {
  form.addEventListener(
    'change',
    ({ target }) => {
      if (target instanceof HTMLInputElement) writePlain(fields, target, unitsNow());
    },
    { capture: true, signal },
  );
  onWhole(
    form,
    (control) => {
      const line = control.closest('div')?.querySelector<HTMLElement>(':scope > [id$=-fault]');
      if (line && (!line.textContent || 'note' in line.dataset)) tellLine(line, undefined);
    },
    signal,
  );
};

/**
 * Tells each fault beside its field: the text goes into `#<prefix>-<field>-fault`, which the field is described by. The
 * field itself is marked for those who do not see it. A text that stands there already is not written again, since it
 * would be read out again. Gives the first field at fault.
 */
export const tellFaults = (
  form: HTMLFormElement,
  prefix: string,
  faults: readonly (FieldFault & { readonly stops?: boolean })[],
): HTMLElement | undefined => {
  const said = new Map(faults.toReversed().map((fault) => [`${prefix}-${fault.field}-fault`, fault]));
  for (const line of form.querySelectorAll<HTMLElement>('[id$=-fault]'))
    if (line.id !== `${prefix}-form-fault`) tellLine(line, said.get(line.id)?.says);
  let first: HTMLElement | undefined;
  for (const control of controlsOf(form)) {
    const told = control.closest('[aria-describedby]');
    const fault = told
      ?.getAttribute('aria-describedby')
      ?.split(' ')
      .map((id) => said.get(id))
      .find((one) => one && one.stops !== false);
    if (fault) control.setAttribute('aria-invalid', 'true');
    else control.removeAttribute('aria-invalid');
    if (fault) first ??= control;
  }
  return first;
};

/** Fields with a year, which is 2, 20 and 202 before it is 2026; each of them is told as a change. */
const WITH_YEAR = ['date', 'datetime-local', 'month', 'week'];
const FOUR_DIGITS = /^[12]\d{3}-/;
/** Whether a year is still being typed. */
const isTyped = (control: Control): boolean =>
  WITH_YEAR.includes(control.type) && document.activeElement === control && !FOUR_DIGITS.test(control.value);

/**
 * Calls when a field is whole: a choice at once, a text when she leaves it, a day not while its year is typed. While a
 * button is pressed it waits: what is told would move the button from under the pointer, and the click would be lost.
 */
export const onWhole = (
  form: HTMLFormElement,
  whole: (control: Control) => void,
  signal: AbortSignal,
): void => {
  const typed = new Set<Control>();
  const waiting = new Set<Control>();
  let pressed = false;
  const tell = (control: Control) => {
    if (pressed) waiting.add(control);
    else whole(control);
  };
  const released = () => {
    pressed = false;
    // After the click, which comes right behind.
    setTimeout(() => {
      for (const control of waiting) whole(control);
      waiting.clear();
    });
  };
  const press = () => {
    pressed = true;
  };
  const options = { signal, capture: true };
  document.addEventListener('pointerdown', press, options);
  document.addEventListener('pointerup', released, options);
  document.addEventListener('pointercancel', released, options);
  form.addEventListener(
    'change',
    ({ target }) => {
      if (!(target instanceof Element) || !isControl(target)) return;
      if (isTyped(target)) typed.add(target);
      else tell(target);
    },
    { signal },
  );
  form.addEventListener(
    'focusout',
    ({ target }) => {
      if (target instanceof Element && isControl(target) && typed.delete(target)) tell(target);
    },
    { signal },
  );
};
