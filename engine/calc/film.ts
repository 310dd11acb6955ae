import { answer, type Check, outside, type Result } from './quantity.ts';

const wet = (micrometers: number): Check => ['wet film', micrometers, 1, 2000, 'µm'];
const dry = (micrometers: number): Check => ['dry film', micrometers, 0.1, 2000, 'µm'];
const solids = (fraction: number): Check => ['volume solids', fraction, 0.01, 1, '0–1'];
const transfer = (fraction: number): Check => ['share that lands on the piece', fraction, 0.05, 1, '0–1'];

/** Dry film, µm: wet film times volume solids (MIL-HDBK-1110, 2.1.5). Wet 1 to 2000 µm, solids 1 to 100 %. */
export const dryFilmMicrometers = (wetMicrometers: number, volumeSolids: number): Result<number> =>
  outside(wet(wetMicrometers), solids(volumeSolids)) ?? answer(wetMicrometers * volumeSolids);

/** Wet film, µm, that leaves a wanted dry film. Dry 0.1 to 2000 µm, solids 1 to 100 %. */
export const wetFilmMicrometers = (dryMicrometers: number, volumeSolids: number): Result<number> =>
  outside(dry(dryMicrometers), solids(volumeSolids)) ?? answer(dryMicrometers / volumeSolids);

/**
 * Area that a liter covers, m²/L: 1000 × volume solids × share that lands on the piece ÷ dry film in µm.
 * Share: 1 without loss, 0.3 to 0.7 for spraying. In US units 1604 ft²·mil per gallon.
 */
export const squareMetersPerLiter = (
  dryMicrometers: number,
  volumeSolids: number,
  transferEfficiency = 1,
): Result<number> =>
  outside(dry(dryMicrometers), solids(volumeSolids), transfer(transferEfficiency)) ??
  answer((1000 * volumeSolids * transferEfficiency) / dryMicrometers);

/** Wet film, µm, of a coat laid at a spreading rate without loss. Valid from 0.5 to 1000 m²/L. */
export const wetFilmFromCoverage = (squareMetersPerLiter: number): Result<number> =>
  outside(['spreading rate', squareMetersPerLiter, 0.5, 1000, 'm²/L']) ?? answer(1000 / squareMetersPerLiter);

/** Coats for a wanted dry build, rounded up. Dry film of one coat from the same limits as above. */
export const coatsFor = (buildMicrometers: number, dryMicrometersPerCoat: number): Result<number> =>
  outside(dry(buildMicrometers), dry(dryMicrometersPerCoat)) ??
  answer(Math.ceil(buildMicrometers / dryMicrometersPerCoat - 1e-9));

/**
 * Liters to buy: area × wet film × coats, with the share lost in the tool or the air added on top.
 * Loss by common practice: 0.1 for brush, pad or cloth, 0.3 to 0.5 for a can or gun. Area up to 200 m².
 */
export const litersFor = (
  squareMeters: number,
  coats: number,
  wetMicrometers: number,
  loss: number,
): Result<number> =>
  outside(
    ['area', squareMeters, 0.001, 200, ''],
    ['number of coats', coats, 1, 20, ''],
    wet(wetMicrometers),
    ['loss', loss, 0, 1, '0–1'],
  ) ?? answer((squareMeters * coats * wetMicrometers * (1 + loss)) / 1000);
