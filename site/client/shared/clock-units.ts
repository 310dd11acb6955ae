import {
  toCelsius,
  toFahrenheit,
  toFluidOunces,
  toMilliliters,
  toSquareFeet,
  toSquareMeters,
} from '#engine/calc/units.ts';

type Way = readonly [toUs: (value: number) => number, toMetric: (value: number) => number, digits: number];

const FIELDS: Readonly<Record<string, Way>> = {
  air: [toFahrenheit, toCelsius, 0],
  surface: [toFahrenheit, toCelsius, 0],
  amount: [toFluidOunces, toMilliliters, 1],
  area: [toSquareFeet, toSquareMeters, 1],
};

/** Turns what stands in the fields over into the other units; what is no number is left as it is. */
export const turnUnits = (form: HTMLFormElement, us: boolean): void => {
  for (const [name, [toUs, toMetric, digits]] of Object.entries(FIELDS)) {
    const field = form.elements.namedItem(name) as HTMLInputElement;
    const value = Number(field.value.replace(',', '.'));
    if (!field.value.trim() || Number.isNaN(value)) continue;
    field.value = String(Number((us ? toUs(value) : toMetric(value)).toFixed(digits)));
  }
  nameUnits(form, us);
};

/** Writes the unit in use beside each field. */
export const nameUnits = (form: HTMLFormElement, us: boolean): void => {
  for (const unit of form.querySelectorAll<HTMLElement>('[data-us]'))
    unit.textContent = (us ? unit.dataset['us'] : unit.dataset['metric']) ?? '';
};

/** The air of a coat, as on any dial. */
export const sayAir = ({
  celsius,
  relativeHumidity,
}: {
  celsius: number;
  relativeHumidity: number;
}): string =>
  `${Math.round(toFahrenheit(celsius))} °F (${Math.round(celsius)} °C), ${Math.round(relativeHumidity * 100)} %`;
