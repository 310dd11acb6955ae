/** An object with these of its keys alone; one that holds nothing is left out. */
export function pick<T extends object, K extends keyof T>(from: T, ...keys: readonly K[]): Pick<T, K>;
// That the keys are those of the result is plain here, and beyond what a type can follow.
export function pick(from: object, ...keys: readonly PropertyKey[]): object {
  return Object.fromEntries(
    Object.entries(from).filter(([key, is]) => is !== undefined && keys.includes(key)),
  );
}
