import * as v from 'valibot';
import { keysOf } from '#engine/plain/entry-of.ts';
import type { Field, ValueIn } from './fields.ts';
import type { Units } from './units.ts';

/** What stands in a form, by name, as typed; of ticks all that are set, joined by commas. */
export type Draft = Readonly<Record<string, string>>;

/** The units that a form is filled in with, where it asks for them. */
export const unitsIn = (draft: Draft): Units => (draft['units'] === 'us' ? 'us' : 'metric');

/** What is wrong with one field, in a sentence that says what to do. */
export type FieldFault = { readonly field: string; readonly says: string };

/** All that a form tells, by the names of its fields. */
export type Values<F> = { readonly [K in keyof F]: ValueIn<F[K]> };

export type FormRead<F> =
  | { readonly ok: true; readonly values: Values<F>; readonly faults: readonly [] }
  /** Those that could be read, and every fault by its field. */
  | { readonly ok: false; readonly values: Partial<Values<F>>; readonly faults: readonly FieldFault[] };

export type AnyFields<F> = { readonly [K in keyof F]: Field<ValueIn<F[K]>> };

/** Reads every field by itself, so that one fault hides no other. */
export const readForm = <F extends AnyFields<F>>(fields: F, draft: Draft, units: Units): FormRead<F> => {
  const values: Partial<Record<keyof F, unknown>> = {};
  const faults: FieldFault[] = [];
  for (const name of keysOf(fields)) {
    const read = v.safeParse(fields[name].schema(units), draft[name] ?? '', { abortPipeEarly: true });
    if (read.success) values[name] = read.output;
    else faults.push({ field: name, says: read.issues[0].message });
  }
  return faults.length
    ? { ok: false, values: values as Partial<Values<F>>, faults }
    : { ok: true, values: values as Values<F>, faults: [] };
};

/** The way back: values as they stand in the fields. Where a field has no value, nothing is written. */
export const writeForm = <F extends AnyFields<F>>(
  fields: F,
  values: Partial<Values<F>>,
  units: Units,
): Draft => {
  const draft: Record<string, string> = {};
  for (const name of keysOf(fields)) {
    const value = values[name];
    if (value !== undefined) draft[name] = fields[name].write(value, units);
  }
  return draft;
};

/** A draft in the other units. What is no quantity, or no number, stays as typed. */
export const turnDraft = <F extends AnyFields<F>>(fields: F, draft: Draft, to: Units): Draft =>
  Object.fromEntries(
    Object.entries(draft).map(([name, text]) => [
      name,
      (name in fields && fields[name as keyof F].turn?.(text, to)) || text,
    ]),
  );

/**
 * `turnDraft` for a form that may be turned back: what was not touched in between stands again as it was typed, since to
 * turn a rounded number rounds twice.
 */
export const draftTurner = <F extends AnyFields<F>>(fields: F): ((draft: Draft, to: Units) => Draft) => {
  let typed: Draft = {};
  let shown: Draft = {};
  let shownIn: Units | undefined;
  return (draft, to) => {
    const mayGoBack = shownIn !== undefined && shownIn !== to;
    const turned = Object.fromEntries(
      Object.entries(turnDraft(fields, draft, to)).map(([name, text]) => {
        const before = name in fields && fields[name as keyof F].turn ? typed[name] : undefined;
        const back = mayGoBack && before !== undefined && draft[name] === shown[name];
        return [name, back ? before : text];
      }),
    );
    typed = draft;
    shown = turned;
    shownIn = to;
    return turned;
  };
};

/** Letters that are kept of a field. */
export const LONGEST_TEXT = 200;

/** What of a draft is kept: what is too long for any field is told beside it, and would not be read back. */
export const keepable = (draft: Draft): Draft =>
  Object.fromEntries(Object.entries(draft).filter(([, text]) => text.length <= LONGEST_TEXT));
