/** Weather at the very limits of each product: at them it may be laid, beyond them not. The limits are the products' own. */
import { describe, expect, it } from 'vitest';
import { dewPointCelsius } from '#engine/calc/dew-point.ts';
import { belowDewPoint, outsideClimate } from '#engine/calc/drying/climate.ts';
import { outsideLimits } from '#engine/calc/drying/limits.ts';
import { dryingProduct, PRODUCTS } from './products.ts';

const codeOf = (found: ReturnType<typeof outsideLimits>) =>
  found && `${found.problem.code} ${'quantity' in found.problem ? found.problem.quantity : ''}`;

describe.each([...PRODUCTS.keys()])('%s', (id) => {
  const product = dryingProduct(id);
  const { celsius, relativeHumidity } = product.limits;
  const forms = product.filmFormationCelsius?.from ?? Number.NEGATIVE_INFINITY;
  const middle = (relativeHumidity.from + Math.min(relativeHumidity.to, 0.6)) / 2;

  it('may be laid at its limits of air and damp', () => {
    if (celsius.from >= forms)
      expect(outsideLimits(product, { celsius: celsius.from, relativeHumidity: middle })).toBeUndefined();
    expect(outsideLimits(product, { celsius: celsius.to, relativeHumidity: middle })).toBeUndefined();
    const warm = Math.max(celsius.from, Math.min(celsius.to, 23));
    for (const damp of [relativeHumidity.from, Math.min(relativeHumidity.to, 0.99)])
      expect(outsideLimits(product, { celsius: warm, relativeHumidity: damp })).toBeUndefined();
  });

  it('may not beyond them, and it is said of what', () => {
    expect(codeOf(outsideLimits(product, { celsius: celsius.to + 0.1, relativeHumidity: middle }))).toBe(
      'outside-product-limits air temperature',
    );
    const cold = outsideLimits(product, { celsius: celsius.from - 0.1, relativeHumidity: middle });
    expect(['outside-product-limits air temperature', 'below-film-formation surface temperature']).toContain(
      codeOf(cold),
    );
    const warm = Math.max(celsius.from, Math.min(celsius.to, 23));
    if (relativeHumidity.to < 0.98)
      expect(
        codeOf(outsideLimits(product, { celsius: warm, relativeHumidity: relativeHumidity.to + 0.005 })),
      ).toBe('outside-product-limits relative humidity');
    // A face beyond them in air that is right.
    expect(
      codeOf(
        outsideLimits(product, { celsius: warm, surfaceCelsius: celsius.to + 0.1, relativeHumidity: middle }),
      ),
    ).toBe('outside-product-limits surface temperature');
  });

  it('forms no film on a face colder than it needs, and does on one as warm', () => {
    if (!product.filmFormationCelsius) return;
    const air = { celsius: Math.max(forms + 3, celsius.from), relativeHumidity: middle };
    expect(codeOf(outsideLimits(product, { ...air, surfaceCelsius: forms - 0.1 }))).toBe(
      'below-film-formation surface temperature',
    );
    if (forms >= celsius.from)
      expect(outsideLimits(product, { ...air, surfaceCelsius: forms })).toBeUndefined();
  });
});

describe('a face in the air', () => {
  it('is wet at the dew point and below, and dry above', () => {
    const air = { celsius: 20, relativeHumidity: 0.6 };
    const dew = dewPointCelsius(air);
    expect(codeOf(belowDewPoint({ ...air, surfaceCelsius: dew }))).toMatch(/^surface-below-dew-point/);
    expect(belowDewPoint({ ...air, surfaceCelsius: dew + 0.01 })).toBeUndefined();
    expect(belowDewPoint(air)).toBeUndefined();
  });
  it('and air beyond every thermometer are slips of the pen', () => {
    const good = { celsius: 20, relativeHumidity: 0.5 };
    for (const [more, quantity] of [
      [{ celsius: -30.1 }, 'air temperature'],
      [{ celsius: 50.1 }, 'air temperature'],
      [{ relativeHumidity: -0.01 }, 'relative humidity'],
      [{ relativeHumidity: 1.01 }, 'relative humidity'],
      [{ surfaceCelsius: -30.1 }, 'surface temperature'],
      [{ surfaceCelsius: 50.1 }, 'surface temperature'],
    ] as const)
      expect(codeOf(outsideClimate({ ...good, ...more }))).toContain(quantity);
    for (const more of [{ celsius: -30 }, { celsius: 50 }, { relativeHumidity: 0 }, { relativeHumidity: 1 }])
      expect(outsideClimate({ ...good, ...more })).toBeUndefined();
  });
});
