import type { z } from 'zod';

export type Schema = z.core.$ZodType;

/** What the definition of a schema may hold, by the library's own names. */
type Inner = {
  readonly type: string;
  readonly format?: string;
  readonly shape?: Readonly<Record<string, Schema>>;
  readonly element?: Schema;
  readonly items?: readonly Schema[];
  readonly keyType?: Schema;
  readonly valueType?: Schema;
  readonly innerType?: Schema;
  readonly options?: readonly Schema[];
  readonly getter?: () => Schema;
  readonly out?: Schema;
  readonly values?: readonly unknown[];
  readonly checks?: readonly { readonly _zod: { readonly def: Check } }[];
};
type Check = { readonly check: string; readonly value?: unknown; readonly inclusive?: boolean };

export const innerOf = (schema: Schema): Inner => schema._zod.def;

/** What a schema wraps: what is optional, has a default or is asked for late. */
const wrapped = (schema: Schema): Schema | undefined => {
  const { innerType, getter, out } = innerOf(schema);
  return innerType ?? getter?.() ?? out;
};

/** The schemas that may hold at a path of a value; of kinds told apart by `kind`, that of the value. */
export const schemasAt = (schema: Schema, data: unknown, path: readonly PropertyKey[]): readonly Schema[] => {
  const inner = innerOf(schema);
  const further = wrapped(schema);
  if (further) return schemasAt(further, data, path);
  if (inner.options) {
    const kind = (data as { kind?: unknown } | undefined)?.kind;
    return inner.options.flatMap((option) => {
      const literal = innerOf(option).shape?.['kind'];
      const values = literal && innerOf(literal).values;
      return !values || values.includes(kind) ? schemasAt(option, data, path) : [];
    });
  }
  const [key, ...rest] = path;
  if (key === undefined) return [schema];
  const next = inner.shape?.[String(key)] ?? inner.element ?? inner.items?.[Number(key)] ?? inner.valueType;
  return next ? schemasAt(next, (data as Record<PropertyKey, unknown> | undefined)?.[key], rest) : [];
};

/** The fields that a schema allows at a path of a value; none where it is no object. */
export const fieldsAt = (schema: Schema, data: unknown, path: readonly PropertyKey[]): readonly string[] => [
  ...new Set(schemasAt(schema, data, path).flatMap((one) => Object.keys(innerOf(one).shape ?? {}))),
];

/** What a schema says of itself, or of what it wraps. */
const describedAs = (schema: Schema): string | undefined => {
  if ('description' in schema && typeof schema.description === 'string') return schema.description;
  const further = wrapped(schema);
  return further && describedAs(further);
};

/** What is said of a field of the object at a path. */
export const aboutField = (
  schema: Schema,
  data: unknown,
  path: readonly PropertyKey[],
  field: string,
): string | undefined =>
  schemasAt(schema, data, path)
    .flatMap((one) => innerOf(one).shape?.[field] ?? [])
    .map(describedAs)
    .find((said) => said !== undefined);

/** Whether a value fits a schema. */
export const fits = (schema: Schema, value: unknown): boolean => {
  const result = schema['~standard'].validate(value);
  return !(result instanceof Promise) && result.issues === undefined;
};

/** The least and the most that a number may be, where a schema gives both. */
export const spanOf = (schema: Schema): { least: number; most: number; whole: boolean } | undefined => {
  const { type, format, checks = [] } = innerOf(schema);
  if (type !== 'number') return undefined;
  const defs = checks.map((check) => check._zod.def);
  const bound = (name: string) => {
    const found = defs.find(({ check, inclusive }) => check === name && inclusive !== false);
    return typeof found?.value === 'number' ? found.value : undefined;
  };
  const [least, most] = [bound('greater_than'), bound('less_than')];
  const whole = format === 'safeint' || defs.some(({ check }) => check === 'number_format');
  return least === undefined || most === undefined ? undefined : { least, most, whole };
};
