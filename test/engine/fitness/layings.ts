/** Every product, and the air of a room to lay it in. */
import { known, productOf } from '../schedule/sheet.ts';

export const day = { celsius: 21, relativeHumidity: 0.5 };
export const products = known.products.map(({ id }) => productOf(id));

/** Each of them, and what it is where none is told. */
export const orNot = <T>(values: readonly T[]): readonly (T | undefined)[] => [undefined, ...values];
