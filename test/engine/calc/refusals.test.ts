/**
 * What each calculator takes, as its own documentation states it: both ends of each range are taken, a hair beyond is
 * refused, by the name, the unit and the range of what was wrong, and of several the first.
 */
import { describe, expect, it } from 'vitest';
import { grainMicrometers, nearestP, sayGrit, scratchDepth } from '#engine/calc/abrasives.ts';
import { AIR_CELSIUS } from '#engine/calc/air.ts';
import { bubbleRise } from '#engine/calc/bubble-rise.ts';
import { dewPoint } from '#engine/calc/dew-point.ts';
import { dewPointMargin } from '#engine/calc/dew-point-margin.ts';
import {
  coatsFor,
  dryFilmMicrometers,
  litersFor,
  squareMetersPerLiter,
  wetFilmFromCoverage,
  wetFilmMicrometers,
} from '#engine/calc/film.ts';
import { clearTransmittance, hazeDifference, reflectanceOver } from '#engine/calc/film-reflectance.ts';
import { humidityRatio } from '#engine/calc/humidity-ratio.ts';
import { labFromHex } from '#engine/calc/lab.ts';
import { levelingSeconds, quickestLevelingSeconds } from '#engine/calc/leveling.ts';
import type { Result, Unit } from '#engine/calc/quantity.ts';
import { fallingFilm, sagLimitMicrometers } from '#engine/calc/sag.ts';
import { saturationPressure } from '#engine/calc/saturation-pressure.ts';
import { vaporPressureDeficit } from '#engine/calc/vapor-pressure-deficit.ts';
import { water, waterSurfaceTension } from '#engine/calc/water.ts';
import { wetBulb } from '#engine/calc/wet-bulb.ts';
import { woodMoisturePercent, woodMoistureRange } from '#engine/calc/wood-moisture.ts';
import { yellowness } from '#engine/calc/yellowness.ts';

type Row = readonly [
  calculator: string,
  quantity: string,
  unit: Unit,
  range: readonly [number, number],
  call: (value: number) => Result<unknown>,
];
const AIR = [-40, 60] as const;
const SHARE = [0, 1] as const;
const ripple = {
  filmMicrometers: 100,
  spacingMillimeters: 2,
  viscosityPascalSeconds: 1,
  surfaceTensionNewtonsPerMeter: 0.03,
  densityKilogramsPerCubicMeter: 1000,
};
const bubble = {
  diameterMicrometers: 50,
  filmMicrometers: 600,
  viscosityPascalSeconds: 1,
  densityKilogramsPerCubicMeter: 1000,
};
const upright = { filmMicrometers: 100, viscosityPascalSeconds: 1, densityKilogramsPerCubicMeter: 1000 };
const inAir = (
  name: string,
  call: (air: { celsius: number; relativeHumidity: number }) => Result<unknown>,
): Row[] => [[name, 'air temperature', '°C', AIR, (celsius) => call({ celsius, relativeHumidity: 0.5 })]];

const ROWS: readonly Row[] = [
  ...inAir('vaporPressureDeficit', vaporPressureDeficit),
  ...inAir('humidityRatio', humidityRatio),
  ...inAir('wetBulb', wetBulb),
  ...inAir('dewPoint', dewPoint),
  ...[vaporPressureDeficit, humidityRatio, wetBulb].map(
    (call): Row => [
      call.name,
      'relative humidity',
      '0–1',
      SHARE,
      (relativeHumidity) => call({ celsius: 20, relativeHumidity }),
    ],
  ),
  [
    'dewPointMargin',
    'surface temperature',
    '°C',
    [-40, 80],
    (value) => dewPointMargin({ celsius: 20, relativeHumidity: 0.5 }, value),
  ],
  ['saturationPressure', 'temperature', '°C', [-100, 200], saturationPressure],
  ['waterSurfaceTension', 'water temperature', '°C', [0.01, 370], waterSurfaceTension],
  ['water', 'water temperature', '°C', [1, 100], water],
  [
    'quickestLevelingSeconds',
    'water temperature',
    '°C',
    [1, 100],
    (value) => quickestLevelingSeconds(100, 2, value),
  ],
  [
    'woodMoisture',
    'air temperature',
    '°C',
    [-1.2, 54.5],
    (celsius) => woodMoisturePercent({ celsius, relativeHumidity: 0.5 }),
  ],
  [
    'woodMoisture',
    'relative humidity',
    '0–1',
    [0.05, 0.95],
    (relativeHumidity) => woodMoisturePercent({ celsius: 20, relativeHumidity }),
  ],
  [
    'woodMoistureRange',
    'relative humidity',
    '0–1',
    [0.05, 0.95],
    (relativeHumidity) => woodMoistureRange({ celsius: 20, relativeHumidity }),
  ],
  ['yellowness', 'luminance', '', [0.001, 1.2], (y) => yellowness([0.9, y, 0.9])],
  [
    'reflectanceOver',
    'absorption',
    '',
    [0, 20],
    (absorption) => reflectanceOver({ absorption, scattering: 1 }, 0.5),
  ],
  [
    'reflectanceOver',
    'scattering',
    '',
    [0, 20],
    (scattering) => reflectanceOver({ absorption: 1, scattering }, 0.5),
  ],
  [
    'reflectanceOver',
    'reflectance of the ground',
    '0–1',
    SHARE,
    (ground) => reflectanceOver({ absorption: 1, scattering: 1 }, ground),
  ],
  [
    'clearTransmittance',
    'share of light that one coat lets through',
    '0–1',
    SHARE,
    (share) => clearTransmittance(share, 2),
  ],
  ['clearTransmittance', 'coats', '', [0, 20], (coats) => clearTransmittance(0.9, coats)],
  ['hazeDifference', 'scattering', '', [0, 20], (scattering) => hazeDifference(scattering, 0.5)],
  ['hazeDifference', 'reflectance of the ground', '0–1', SHARE, (ground) => hazeDifference(1, ground)],
  ['dryFilm', 'wet film', 'µm', [1, 2000], (wet) => dryFilmMicrometers(wet, 0.4)],
  ['dryFilm', 'volume solids', '0–1', [0.01, 1], (solids) => dryFilmMicrometers(100, solids)],
  ['wetFilm', 'dry film', 'µm', [0.1, 2000], (dry) => wetFilmMicrometers(dry, 0.4)],
  ['wetFilm', 'volume solids', '0–1', [0.01, 1], (solids) => wetFilmMicrometers(100, solids)],
  ['coverage', 'dry film', 'µm', [0.1, 2000], (dry) => squareMetersPerLiter(dry, 0.4, 0.5)],
  ['coverage', 'volume solids', '0–1', [0.01, 1], (solids) => squareMetersPerLiter(50, solids, 0.5)],
  [
    'coverage',
    'share that lands on the piece',
    '0–1',
    [0.05, 1],
    (share) => squareMetersPerLiter(50, 0.4, share),
  ],
  ['wetFilmFromCoverage', 'spreading rate', 'm²/L', [0.5, 1000], wetFilmFromCoverage],
  ['coatsFor', 'dry film', 'µm', [0.1, 2000], (build) => coatsFor(build, 30)],
  ['coatsFor', 'dry film', 'µm', [0.1, 2000], (one) => coatsFor(60, one)],
  ['litersFor', 'area', '', [0.001, 200], (area) => litersFor(area, 3, 100, 0.1)],
  ['litersFor', 'number of coats', '', [1, 20], (coats) => litersFor(2, coats, 100, 0.1)],
  ['litersFor', 'wet film', 'µm', [1, 2000], (wet) => litersFor(2, 3, wet, 0.1)],
  ['litersFor', 'loss', '0–1', SHARE, (loss) => litersFor(2, 3, 100, loss)],
  [
    'leveling',
    'wet film',
    'µm',
    [1, 2000],
    (filmMicrometers) => levelingSeconds({ ...ripple, filmMicrometers }),
  ],
  [
    'leveling',
    'spacing of the marks',
    'mm',
    [0.1, 100],
    (spacingMillimeters) => levelingSeconds({ ...ripple, spacingMillimeters }),
  ],
  [
    'leveling',
    'viscosity',
    'Pa·s',
    [0.0002, 1000],
    (viscosityPascalSeconds) => levelingSeconds({ ...ripple, viscosityPascalSeconds }),
  ],
  [
    'leveling',
    'surface tension',
    'N/m',
    [0.01, 0.08],
    (surfaceTensionNewtonsPerMeter) => levelingSeconds({ ...ripple, surfaceTensionNewtonsPerMeter }),
  ],
  [
    'leveling',
    'density',
    'kg/m³',
    [500, 2500],
    (densityKilogramsPerCubicMeter) => levelingSeconds({ ...ripple, densityKilogramsPerCubicMeter }),
  ],
  [
    'bubbleRise',
    'bubble diameter',
    'µm',
    [1, 500],
    (diameterMicrometers) => bubbleRise({ ...bubble, diameterMicrometers }),
  ],
  [
    'bubbleRise in a thin film',
    'bubble diameter',
    'µm',
    [1, 80],
    (diameterMicrometers) => bubbleRise({ ...bubble, filmMicrometers: 80, diameterMicrometers }),
  ],
  [
    'bubbleRise',
    'wet film',
    'µm',
    [1, 2000],
    (filmMicrometers) => bubbleRise({ ...bubble, diameterMicrometers: 1, filmMicrometers }),
  ],
  [
    'bubbleRise',
    'viscosity',
    'Pa·s',
    [0.01, 1000],
    (viscosityPascalSeconds) => bubbleRise({ ...bubble, viscosityPascalSeconds }),
  ],
  [
    'bubbleRise',
    'density',
    'kg/m³',
    [500, 2500],
    (densityKilogramsPerCubicMeter) => bubbleRise({ ...bubble, densityKilogramsPerCubicMeter }),
  ],
  [
    'fallingFilm',
    'wet film',
    'µm',
    [1, 2000],
    (filmMicrometers) => fallingFilm({ ...upright, filmMicrometers }),
  ],
  [
    'fallingFilm',
    'viscosity',
    'Pa·s',
    [0.001, 1000],
    (viscosityPascalSeconds) => fallingFilm({ ...upright, viscosityPascalSeconds }),
  ],
  [
    'fallingFilm',
    'density',
    'kg/m³',
    [500, 2500],
    (densityKilogramsPerCubicMeter) => fallingFilm({ ...upright, densityKilogramsPerCubicMeter }),
  ],
  [
    'sagLimit',
    'viscosity',
    'Pa·s',
    [0.001, 1000],
    (viscosity) => sagLimitMicrometers(viscosity, 1000, 5, 300),
  ],
  ['sagLimit', 'density', 'kg/m³', [500, 2500], (density) => sagLimitMicrometers(1, density, 5, 300)],
  ['sagLimit', 'creep', 'mm', [0.1, 100], (creep) => sagLimitMicrometers(1, 1000, creep, 300)],
  ['sagLimit', 'open time', 's', [1, 3600], (seconds) => sagLimitMicrometers(1, 1000, 5, seconds)],
];

describe.each(ROWS)('%s: %s, in “%s”, %j', (_name, quantity, unit, [min, max], call) => {
  it('is taken at both ends and refused beyond, and where it is no number', () => {
    const hair = (max - min) * 1e-6;
    for (const value of [min, (min + max) / 2, max]) expect([value, call(value).ok]).toEqual([value, true]);
    for (const value of [min - hair, max + hair, Number.NaN, Number.POSITIVE_INFINITY])
      expect(call(value)).toEqual({
        ok: false,
        problem: { code: 'out-of-range', quantity, unit, value, min, max },
      });
  });
});

describe('of several that are wrong', () => {
  it('the first is told', () => {
    const first = (result: Result<unknown>) => !result.ok && result.problem.quantity;
    expect(first(wetBulb({ celsius: 99, relativeHumidity: 9 }))).toBe('air temperature');
    expect(first(dewPoint({ celsius: 99, relativeHumidity: 0 }))).toBe('air temperature');
    expect(first(dewPointMargin({ celsius: 99, relativeHumidity: 9 }, 99))).toBe('surface temperature');
    expect(first(dewPointMargin({ celsius: 99, relativeHumidity: 9 }, 9))).toBe('air temperature');
    expect(first(fallingFilm({ ...upright, filmMicrometers: 0, viscosityPascalSeconds: 0 }))).toBe(
      'wet film',
    );
    expect(first(sagLimitMicrometers(0, 0, 0, 0))).toBe('viscosity');
    expect(first(sagLimitMicrometers(1, 1000, 0, 0))).toBe('creep');
    expect(first(dryFilmMicrometers(0, 0))).toBe('wet film');
    expect(first(litersFor(0, 0, 0, 9))).toBe('area');
    expect(first(quickestLevelingSeconds(0, 0, 20))).toBe('wet film');
    expect(first(hazeDifference(99, 9))).toBe('scattering');
    expect(first(woodMoistureRange({ celsius: 99, relativeHumidity: 9 }))).toBe('air temperature');
  });
});

describe('air', () => {
  it('has a dew point down to 0.1 % humidity, and none in bone-dry air', () => {
    const at = (relativeHumidity: number) => dewPoint({ celsius: 20, relativeHumidity });
    expect([at(0.001).ok, at(1).ok]).toEqual([true, true]);
    expect(at(0.0009)).toEqual({
      ok: false,
      problem: {
        code: 'out-of-range',
        quantity: 'relative humidity',
        unit: '0–1',
        value: 0.0009,
        min: 0.001,
        max: 1,
      },
    });
    expect(at(1.1)).toMatchObject({ problem: { quantity: 'relative humidity', min: 0, max: 1 } });
  });
  it('of a coat, of a card and of physics reaches further each time', () => {
    // A coat from −30 to 50 °C, a can’s own air to 60, printed tables of damp air from −40 to 60.
    expect(AIR_CELSIUS).toEqual({ laid: [-30, 50], kept: [-30, 60], reckoned: [-40, 60] });
  });
});

describe('what has no figure', () => {
  it('is a grade that is not in the chart, told with the coarsest and the finest', () => {
    for (const call of [grainMicrometers, nearestP, sayGrit] as const)
      expect(call('CAMI', 1000)).toEqual({
        ok: false,
        problem: {
          code: 'unknown-value',
          quantity: 'CAMI grade',
          unit: '',
          value: '1000',
          min: 36,
          max: 800,
        },
      });
    for (const call of [grainMicrometers, nearestP, sayGrit] as const)
      expect(call('FEPA P', 321)).toMatchObject({
        ok: false,
        problem: {
          code: 'unknown-value',
          quantity: 'FEPA P grade',
          unit: '',
          value: '321',
          min: 36,
          max: 2500,
        },
      });
    expect(scratchDepth(90)).toMatchObject({ ok: false, problem: { quantity: 'FEPA P grade' } });
  });
  it('is a color that is not written with six digits', () => {
    for (const bad of ['', 'red', '#fff', '123456', '#12345g', '#1234567', 'x#123456'])
      expect(labFromHex(bad)).toEqual({
        ok: false,
        problem: { code: 'unknown-value', quantity: 'color (#rrggbb)', unit: '', value: bad, min: 0, max: 0 },
      });
    expect(labFromHex('#FFffFf').ok).toBe(true);
  });
});

describe('a range', () => {
  it('says its unit and what made it wide', () => {
    expect(scratchDepth(320)).toEqual({
      ok: true,
      value: {
        from: expect.closeTo(4.6, 9),
        to: expect.closeTo(13.8, 9),
        unit: 'µm',
        reasons: ['pressure-and-wear', 'our-estimate'],
      },
    });
    const middle = woodMoisturePercent({ celsius: 20, relativeHumidity: 0.5 });
    const wide = woodMoistureRange({ celsius: 20, relativeHumidity: 0.5 });
    if (!middle.ok || !wide.ok) throw new Error('both are there');
    expect(wide.value).toEqual({
      from: expect.closeTo(middle.value - 1, 9),
      to: expect.closeTo(middle.value + 1, 9),
      unit: '%',
      reasons: ['species-differ', 'wetting-or-drying'],
    });
    // Never below nothing: 5 % humidity leaves little more than one part in a hundred.
    const dry = woodMoistureRange({ celsius: 54.5, relativeHumidity: 0.05 });
    expect(dry.ok && dry.value.from).toBe(0);
  });
});
