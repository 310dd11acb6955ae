import { either } from './either.ts';
import type { Fault } from './issue.ts';

/** One fault by its code. */
export type Of<C extends Fault['code']> = Extract<Fault, { code: C }>;

/** What is wrong, and how the author mends it, without the place. */
export type Told = [what: string, mend: string];

/** The words for each of these codes. */
export type Say<C extends Fault['code']> = { readonly [K in C]: (issue: Of<K>) => Told };

export const maybe = (name: string | undefined): string => (name ? `did you mean "${name}"?` : '');

export const list = (names: readonly string[]): string =>
  names.slice(0, 24).join(', ') + (names.length > 24 ? ', …' : '');

/** A few are told as a choice, more as a list. */
export const oneOf = (names: readonly string[]): string =>
  names.length > 2 ? `write one of ${list(names)}` : `write ${either(names)}`;
