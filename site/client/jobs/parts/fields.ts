import { toCelsius, toFahrenheit } from '#engine/calc/units.ts';
import type { Change } from '#engine/jobs.ts';
import type { JobCard } from '#engine/model/job-card.ts';
import { nameUnits } from '../../shared/form/in-page.ts';
import { make } from '../../shared/make.ts';
import { localInput, usUnits } from '../../shared/say-date.ts';

/** The name of each field of the form, with what it is called on the card. */
const FIELDS = {
  name: 'name',
  kind: 'kind',
  base: 'base',
  'base-laid': 'baseLaidAt',
  tone: 'tone',
  age: 'age',
  product: 'product',
  sheen: 'sheen',
} as const satisfies Readonly<Record<string, keyof Change>>;
type Field = keyof typeof FIELDS;

const input = (form: HTMLFormElement, name: Field): HTMLInputElement | HTMLSelectElement =>
  form.elements.namedItem(name) as HTMLInputElement | HTMLSelectElement;

/** The coldest air and its dampness, as typed, within what a night can be. */
const NIGHT = ['night', 'night-humidity'] as const;
const nightText = ({ night }: JobCard, name: string): string => {
  if (!night) return '';
  const { celsius, relativeHumidity } = night;
  if (name !== 'night')
    return relativeHumidity === undefined ? '' : String(Math.round(relativeHumidity * 100));
  return String(Number((usUnits() ? toFahrenheit(celsius) : celsius).toFixed(usUnits() ? 0 : 1)));
};
const typed = (form: HTMLFormElement, name: string): number | undefined => {
  const text = (form.elements.namedItem(name) as HTMLInputElement).value.trim().replace(',', '.');
  return text ? Number(text) : undefined;
};
const nightIn = (form: HTMLFormElement): JobCard['night'] => {
  const [air, damp] = NIGHT.map((name) => typed(form, name));
  if (air === undefined) return undefined;
  const celsius = usUnits() ? toCelsius(air) : air;
  return { celsius, ...(damp !== undefined && { relativeHumidity: damp / 100 }) };
};
/** What is wrong with the night as it is typed. */
const nightFaults = (form: HTMLFormElement): Readonly<Record<(typeof NIGHT)[number], string>> => {
  const { celsius, relativeHumidity } = nightIn(form) ?? { celsius: 0 };
  const damp = typed(form, 'night-humidity');
  const cold = celsius >= -30 && celsius <= 50;
  const fits = damp === undefined || (damp >= 0 && damp <= 100);
  const alone = damp !== undefined && typed(form, 'night') === undefined;
  return {
    night: cold ? '' : 'That can not be: give the air temperature as a number, or leave it empty.',
    'night-humidity': !fits
      ? 'Give the humidity as a number, 0 to 100 %, or leave it empty.'
      : alone && relativeHumidity === undefined
        ? 'Give the coldest temperature too: humidity alone tells nothing.'
        : '',
  };
};

type Trials = NonNullable<JobCard['trials']>;
const ticks = (form: HTMLFormElement) => [...form.querySelectorAll<HTMLInputElement>('[name=trials]')];

const textOf = (card: JobCard, name: Field): string => {
  const value = card[FIELDS[name]];
  return typeof value === 'number' ? localInput(value) : (value ?? '');
};

/** What is wrong with the form as it stands, told beside its field; nothing where all is well. */
export const tellFieldFaults = (form: HTMLFormElement): boolean => {
  const name = input(form, 'name');
  const faults = {
    name: name.value.trim() ? '' : 'Give the piece a name, so that you find it again.',
    'base-laid': (input(form, 'base-laid') as HTMLInputElement).validity.badInput
      ? 'Give the day and the time, or leave it empty.'
      : '',
    ...nightFaults(form),
  };
  for (const [field, says] of Object.entries(faults)) {
    const place = form.querySelector(`#plan-${field}-fault`);
    if (place) place.textContent = says;
    if (says) place?.closest('details')?.setAttribute('open', '');
    (form.elements.namedItem(field) as HTMLElement).toggleAttribute('aria-invalid', Boolean(says));
  }
  return Object.values(faults).some(Boolean);
};

/** Of a field what goes onto the card. An empty choice takes it off. */
export const changeOf = (form: HTMLFormElement, name: string): Change => {
  if (name === 'trials')
    return { trials: ticks(form).flatMap(({ checked, value }) => (checked ? [value] : [])) as Trials };
  if (NIGHT.includes(name as never)) return { night: nightIn(form) };
  if (!(name in FIELDS)) return {};
  const field = name as Field;
  const value = input(form, field).value.trim();
  if (field === 'base-laid') return { baseLaidAt: value ? new Date(value).getTime() : undefined };
  if (field === 'name') return value ? { name: value.slice(0, 80) } : {};
  return { [FIELDS[field]]: value || undefined };
};

export const changeOfAll = (form: HTMLFormElement): Change =>
  Object.assign({}, ...[...Object.keys(FIELDS), 'night', 'trials'].map((name) => changeOf(form, name)));

/** Puts a card into the form. What she is typing and is not written yet stays. */
export const fillFields = (form: HTMLFormElement, card: JobCard, before?: JobCard): void => {
  for (const name of Object.keys(FIELDS) as Field[]) {
    const field = input(form, name);
    const text = textOf(card, name);
    const typing = before && document.activeElement === field && field.value !== textOf(before, name);
    if (!typing && field.value !== text) field.value = text;
  }
  for (const name of NIGHT) {
    const field = form.elements.namedItem(name) as HTMLInputElement;
    const text = nightText(card, name);
    const typing = before && document.activeElement === field && field.value !== nightText(before, name);
    if (!typing && field.value !== text) field.value = text;
  }
  nameUnits(form, usUnits() ? 'us' : 'metric');
  const trials: readonly string[] = card.trials ?? [];
  for (const tick of ticks(form)) tick.checked = trials.includes(tick.value);
};

/** What the form holds, as the head of the card: each thing by the name of its field, what is not said left out. */
export const pieceFacts = (form: HTMLFormElement): readonly HTMLElement[] => {
  const chosen = [...form.querySelectorAll('select')].flatMap(({ id, value, selectedOptions }) => {
    const name = form.querySelector(`label[for="${id}"]`)?.textContent?.trim();
    const says = selectedOptions[0]?.textContent?.trim();
    return value && name && says ? [[name, says] as const] : [];
  });
  const meets = ticks(form).flatMap((tick) =>
    tick.checked ? (tick.parentElement?.textContent?.trim() ?? []) : [],
  );
  const name = form.querySelector('[name=trials]')?.closest('fieldset')?.querySelector('legend')?.textContent;
  if (meets.length && name) chosen.push([name.trim(), meets.join(', ').toLowerCase()]);
  return chosen.map(([what, says]) => make('div', make('dt', what), make('dd', says)));
};
