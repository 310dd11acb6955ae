import { type AnyFields, type Draft, turnDraft, unitsIn } from '../form/form.ts';
import type { KeptCan } from '../storage.ts';

/** So many cans are kept. */
export const MOST_CANS = 40;
/** Letters in the name of one. */
export const MOST_IN_NAME = 40;

/** What the clock and the plan ask of a can under two names, in the same unit. */
const SAME = [
  ['label-touch', 'can-touch'],
  ['label-handle', 'can-handle'],
  ['label-recoat', 'can-recoat'],
  ['label-no-coat', 'can-no-coat'],
  ['label-no-coat-to', 'can-no-coat-to'],
  ['label-light-use', 'can-light'],
  ['label-cure', 'can-cure'],
] as const;

/** What the can says, and what of its second part was mixed in. */
const isOfCan = (name: string): boolean =>
  name.startsWith('label-') || name.startsWith('can-') || name === 'hardener';

/** What a form holds of its can, as it is kept; nothing where it holds nothing of it. */
export const canIn = (draft: Draft, name: string, id: string): KeptCan | undefined => {
  const said = Object.entries(draft).flatMap(([field, text]) =>
    isOfCan(field) && text.trim() ? [[field, text.trim()] as const] : [],
  );
  if (!said.length) return undefined;
  const says: Draft = Object.fromEntries(said);
  const both = SAME.flatMap(([one, other]) => {
    const text = says[one] ?? says[other];
    return text === undefined ? [] : [[one, text] as const, [other, text] as const];
  });
  return {
    id,
    name: name.trim().slice(0, MOST_IN_NAME).trim(),
    product: draft['product'] ?? '',
    units: unitsIn(draft),
    says: { ...says, ...Object.fromEntries(both) },
  };
};

/** A kept can as it stands in a form: what the can does not say is emptied, and quantities are in the units of the form. */
export const asDraft = <F extends AnyFields<F>>(fields: F, can: KeptCan, draft: Draft): Draft => {
  const units = unitsIn(draft);
  const says = can.units === units ? can.says : turnDraft(fields, can.says, units);
  const names = Object.keys(fields).filter(isOfCan);
  return { product: can.product, ...Object.fromEntries(names.map((name) => [name, says[name] ?? ''])) };
};

/**
 * The name of the kept can that a form holds, to the last figure; nothing once one of them was changed, or where the form
 * holds no figure of it.
 */
export const nameOfCan = <F extends AnyFields<F>>(
  fields: F,
  cans: readonly KeptCan[],
  draft: Draft,
): string | undefined =>
  cans.find((can) => {
    const filled = Object.entries(asDraft(fields, can, draft));
    return (
      filled.some(([name, text]) => name !== 'product' && text) &&
      filled.every(([name, text]) => (draft[name] ?? '') === text)
    );
  })?.name;

/** The cans with one more on top; one of the same name is taken for the same can. */
export const withCan = (cans: readonly KeptCan[], can: KeptCan): readonly KeptCan[] =>
  [can, ...cans.filter(({ name }) => name.toLowerCase() !== can.name.toLowerCase())].slice(0, MOST_CANS);
