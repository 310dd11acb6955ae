import { toFahrenheit } from '../../calc/units.ts';
import { HOUR_MIN } from '../../plain/time.ts';
import { type Heard, type HeardFact, SURE } from '../words/heard.ts';
import type { Waits } from './waits.ts';

/** What a link carries to the form of a page, by the names of its fields. */
export type Carried = Readonly<Record<string, string>>;

type Told = (fact: HeardFact['fact']) => HeardFact | undefined;

const normal = (text: string): string => ` ${text.toLowerCase().replaceAll(/[^a-z0-9]+/g, ' ')} `;

/**
 * The can that is named, the longest name first. Where words leave open which of its kind it is, the slowest, so that no
 * time is told too short: a form without a can would stand on one of another kind.
 */
const canOf = (waits: Waits, text: string, told: Told): string | undefined => {
  const family = told('family')?.value;
  const said = normal(text);
  const named = waits.cans
    .filter((one) => one.family === family)
    .flatMap(({ id, names }) => names.map((name) => ({ id, name: normal(name) })))
    .filter(({ name }) => said.includes(name))
    .sort((a, b) => b.name.length - a.name.length);
  const ofKind = waits.cans.filter((one) => one.family === family);
  const [slowest] = [...ofKind].sort((a, b) => b.recoat[1] - a.recoat[1] || b.recoat[0] - a.recoat[0]);
  return named[0]?.id ?? slowest?.id;
};

/** Whether the figure of the air was told in °C, or taken so; else the form is filled in °F. */
const isMetric = (text: string, air: HeardFact | undefined): boolean =>
  (air?.rests ?? []).some(
    ({ from, to }) =>
      /\d\s*(?:°|º|deg\w*)?\s*c(?:elsius)?\b/i.test(text.slice(from, to + 10)) ||
      Math.abs(Number.parseFloat(text.slice(from, to)) - Number(air?.value)) < 1,
  );

/** The figures of the air, in the units that the form has already. */
const airOf = (text: string, told: Told, units?: string): Carried => {
  const [air, humidity] = [told('air-celsius'), told('relative-humidity')];
  if (!air && !humidity) return {};
  const metric = units ? units === 'metric' : isMetric(text, air);
  const celsius = Number(air?.value);
  return {
    ...(air && {
      units: metric ? 'metric' : 'us',
      air: String(Math.round(metric ? celsius : toFahrenheit(celsius))),
    }),
    ...(humidity && { humidity: String(Math.round(Number(humidity.value) * 100)) }),
  };
};

const only = (fields: Readonly<Record<string, string | number | undefined>>): Carried =>
  Object.fromEntries(
    Object.entries(fields).flatMap(([name, value]) => (value === undefined ? [] : [[name, String(value)]])),
  );

/** The form that a page has for what is told. */
const FORMS: Readonly<Record<string, (waits: Waits, text: string, told: Told, units?: string) => Carried>> = {
  'page/clock': (waits, text, told, units) => {
    const hours = told('hours-since-coat')?.value;
    return {
      ...only({
        product: canOf(waits, text, told),
        coat: told('coat-number')?.value,
        tool: told('applicator')?.value,
        ...(hours !== undefined && { when: 'ago', ago: Math.round(Number(hours) * HOUR_MIN) }),
      }),
      ...airOf(text, told, units),
    };
  },
  'page/schedule': (waits, text, told, units) => ({
    ...only({
      product: canOf(waits, text, told),
      kind: told('piece')?.value,
      base: told('base')?.value,
      tone: told('base-tone')?.value,
      age: told('age')?.value,
    }),
    ...airOf(text, told, units),
  }),
  'page/which-coat': (_, __, told) =>
    only({
      piece: told('piece')?.value,
      base: told('base')?.value,
      tone: told('base-tone')?.value,
      age: told('age')?.value,
    }),
};

/** What is told for sure, as the form of a page takes it; nothing for a page without one. */
export const carriedTo = (waits: Waits, page: string, { text, facts, asksFor }: Heard): Carried => {
  const form = Object.hasOwn(FORMS, page) ? FORMS[page] : undefined;
  const carries = asksFor?.page === page ? asksFor.carries : undefined;
  const told: Told = (name) => facts.find(({ fact, sure }) => fact === name && sure >= SURE);
  return { ...form?.(waits, text, told, carries?.['units']), ...carries };
};
