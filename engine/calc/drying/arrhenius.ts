/** Molar gas constant, J/(mol K): exact since 2019. */
const GAS_CONSTANT = 8.314462618;
const kelvin = (celsius: number): number => celsius + 273.15;

/**
 * How many times faster a step with this activation energy goes at `toCelsius` than at `fromCelsius`
 * (Arrhenius: exp(E/R · (1/T₁ − 1/T₂))).
 */
export const arrheniusFactor = (kilojoulesPerMole: number, fromCelsius: number, toCelsius: number): number =>
  Math.exp(((kilojoulesPerMole * 1000) / GAS_CONSTANT) * (1 / kelvin(fromCelsius) - 1 / kelvin(toCelsius)));
