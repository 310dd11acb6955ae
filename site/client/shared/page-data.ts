import * as v from 'valibot';

/** What the build wrote into the page as JSON. Where it is something else the build is at fault, and this throws. */
export const readPageData = <S extends v.GenericSchema>(
  schema: S,
  text: string | undefined,
): v.InferOutput<S> => v.parse(schema, JSON.parse(text ?? 'null'));

/** An object of the engine that holds at least these keys; what lies deeper is the build's own. */
export const objectWith = <T extends object>(...keys: readonly (keyof T)[]) =>
  v.custom<T>((value) => typeof value === 'object' && value !== null && keys.every((key) => key in value));
