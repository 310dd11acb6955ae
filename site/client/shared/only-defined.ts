type Defined<T> = { [K in keyof T]: Exclude<T[K], undefined> };

/** The keys that hold something: what is stored or sent has no others. */
export function onlyDefined<T extends object>(values: T): Defined<T>;
export function onlyDefined(values: object): object {
  return Object.fromEntries(Object.entries(values).filter(([, value]) => value !== undefined));
}
