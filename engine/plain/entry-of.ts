/** Whether a table has this key itself; one that every object has by birth, such as `constructor`, is none. */
export const isKeyOf = <T extends object>(table: T, key: PropertyKey | undefined): key is keyof T =>
  key !== undefined && Object.hasOwn(table, key);

/** The entry of a table by its key; nothing where it has none. */
export const entryOf = <T>(table: Readonly<Record<string, T>>, key: string | undefined): T | undefined =>
  isKeyOf(table, key) ? table[key] : undefined;

/** Whether a value is one of these: what comes as any text is then known by its name. */
export const isOneOf = <T>(of: readonly T[], value: unknown): value is T => of.some((one) => one === value);

/** The keys of an object that holds no others than its type says. */
export const keysOf = <T extends object>(of: T): readonly (keyof T & string)[] =>
  Object.keys(of).filter((key) => isKeyOf(of, key));
