/** A sentence of the content with names in braces, such as `{until}`; `P` are these names. */
export type Saying<P extends string = never> = string & { readonly places?: (place: P) => void };

const PLACE = /\{([^{}]*)\}/g;

/** The names in braces, in their order. */
export const placesIn = (says: string): readonly string[] =>
  [...says.matchAll(PLACE)].map(([, name = '']) => name);

/** A sentence with names in braces, each in whose place is said what it stands for. */
export const filled = <P extends string>(
  says: string | Saying<P>,
  parts: Readonly<Record<P, string>>,
): string => says.replaceAll(PLACE, (_, name: P) => parts[name] ?? '');

/** Sentences one behind the other, without those that are not said. */
export const inARow = (...said: readonly (string | undefined)[]): string => said.filter(Boolean).join(' ');
