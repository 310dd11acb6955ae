import { answer, type Range, type Result, refuse } from './quantity.ts';

export type GritSystem = 'FEPA P' | 'CAMI';

/**
 * Mean grain, µm, by FEPA P grade (ISO 6344). Read from published comparison charts, so good to 5 %; P1500 and
 * finer are measured by another method and good to 8 %.
 */
const FEPA_P: Readonly<Record<number, number>> = {
  36: 538,
  40: 425,
  50: 336,
  60: 270,
  80: 200,
  100: 162,
  120: 125,
  150: 100,
  180: 82,
  220: 68,
  240: 60,
  280: 52,
  320: 46,
  360: 40,
  400: 35,
  500: 30,
  600: 26,
  800: 22,
  1000: 18,
  1200: 15,
  1500: 13,
  2000: 10,
  2500: 8,
};

/** Mean grain, µm, by the older US grade (ANSI B74.18). 800 is not in that standard: its equal, P1500, stands in. */
const CAMI: Readonly<Record<number, number>> = {
  36: 535,
  40: 428,
  50: 351,
  60: 268,
  80: 192,
  100: 141,
  120: 116,
  150: 93,
  180: 82,
  220: 68,
  240: 52,
  280: 42,
  320: 36,
  360: 28,
  400: 23.6,
  500: 18,
  600: 15.5,
  800: 13,
};

const GRADES = { 'FEPA P': FEPA_P, CAMI } as const;

/** Mean grain, µm, of a grade; a grade that is not in the chart is refused. */
export const grainMicrometers = (system: GritSystem, grade: number): Result<number> => {
  const size = GRADES[system][grade];
  if (size !== undefined) return answer(size);
  const known = Object.keys(GRADES[system]).map(Number);
  return refuse({
    code: 'unknown-value',
    quantity: `${system} grade`,
    unit: '',
    value: String(grade),
    min: Math.min(...known),
    max: Math.max(...known),
  });
};

/** Every grade of one system, coarse to fine. */
export const gradesOf = (system: GritSystem): number[] => Object.keys(GRADES[system]).map(Number);

/** The FEPA P grade whose grain is nearest in proportion: what a US grade is called on this site. */
export const nearestP = (system: GritSystem, grade: number): Result<number> => {
  const grain = grainMicrometers(system, grade);
  if (!grain.ok || system === 'FEPA P') return grain.ok ? answer(grade) : grain;
  const off = ([, size]: [string, number]) => Math.abs(Math.log(size / grain.value));
  const sorted = Object.entries(FEPA_P).sort((one, two) => off(one) - off(two));
  return answer(Number(sorted[0]?.[0]));
};

/** A grit as the site prints it: always with its P, and the US grade it came from. */
export const sayGrit = (system: GritSystem, grade: number): Result<string> => {
  const p = nearestP(system, grade);
  if (!p.ok) return p;
  return answer(system === 'FEPA P' ? `P${grade}` : `P${p.value} (US ${grade})`);
};

/**
 * Depth of the scratches that hand sanding leaves, µm: a tenth to three tenths of the mean grain.
 * That roughness grows in proportion to grain size is published (Gurau and others, BioResources 14(2), 2019);
 * the two fractions are our own estimate, since no printed table was found. Never show it as a measurement.
 */
export const scratchDepth = (grade: number): Result<Range> => {
  const grain = grainMicrometers('FEPA P', grade);
  if (!grain.ok) return grain;
  return answer({
    from: 0.1 * grain.value,
    to: 0.3 * grain.value,
    unit: 'µm',
    reasons: ['pressure-and-wear', 'our-estimate'],
  });
};
