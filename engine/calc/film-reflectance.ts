import { ciede2000 } from './color-difference.ts';
import { kubelkaMunk } from './kubelka-munk.ts';
import { labFromXyz, WHITE } from './lab.ts';
import { answer, outside, type Result } from './quantity.ts';

/**
 * A film by what it takes away and throws back over its whole thickness (K·X and S·X of Kubelka and Munk), 0 to 20.
 * Both grow in proportion to thickness: twice the coat, twice the haze and twice the yellow.
 */
export type Film = { readonly absorption: number; readonly scattering: number };

/**
 * Reflectance, 0–1, of a ground seen through a film, without the mirror image in its surface.
 * Kubelka–Munk, closed form: (1 − Rg (a − b coth bSX)) ÷ (a − Rg + b coth bSX), a = 1 + K/S, b = √(a² − 1).
 */
export const reflectanceOver = ({ absorption, scattering }: Film, ground: number): Result<number> => {
  const refused = outside(
    ['absorption', absorption, 0, 20, ''],
    ['scattering', scattering, 0, 20, ''],
    ['reflectance of the ground', ground, 0, 1, '0–1'],
  );
  return refused ?? answer(kubelkaMunk(absorption, scattering, ground));
};

/** Share of light, 0–1, that passes a clear film `coats` times as thick in one direction (Beer and Lambert). */
export const clearTransmittance = (ofOneCoat: number, coats: number): Result<number> =>
  outside(
    ['share of light that one coat lets through', ofOneCoat, 0, 1, '0–1'],
    ['coats', coats, 0, 20, ''],
  ) ?? answer(ofOneCoat ** coats);

const gray = (reflectance: number) =>
  labFromXyz([WHITE[0] * reflectance, reflectance, WHITE[2] * reflectance]);

/**
 * How different (CIEDE2000) a gray ground looks under a milky film from the same ground under a clear one.
 * Over black a hundredth of scattering is plainly seen; over white it is not.
 */
export const hazeDifference = (scattering: number, ground: number): Result<number> => {
  const veiled = reflectanceOver({ absorption: 0, scattering }, ground);
  return veiled.ok ? answer(ciede2000(gray(ground), gray(veiled.value))) : veiled;
};
