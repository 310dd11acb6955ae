import type { ClockProduct, CoatFault, LaidCoat, TimeStyle } from '#engine/clock.ts';
import type { Draft } from '../shared/form/form.ts';
import type { Units } from '../shared/form/units.ts';
import { plainId } from '../shared/plain-id.ts';
import { coatIn, type DraftFault, faultsOf } from './draft.ts';
import { FIELD_NAMES } from './fields.ts';

/** Whether one of these fields holds anything else than what was filled in. */
export type Touched = (...names: readonly string[]) => boolean;

/** A coat that stands already and is corrected in the form. */
export type CorrectedCoat = {
  /** How it stands in the form. */
  readonly draft: (units: Units) => Draft;
  /** What was read, with all that was not touched as it was. */
  readonly corrected: (read: LaidCoat, touched: Touched) => LaidCoat;
  readonly faults: (coat: LaidCoat) => readonly CoatFault[];
};

/** The fields that a fault may lie in. */
const fieldsOf = (field: string, draft: Draft): readonly string[] => {
  if (field.startsWith('label-')) return Object.keys(draft).filter((name) => name.startsWith('label-'));
  if (field === 'at') return ['when', 'at', 'ago', 'at-hour'];
  return field === 'amount' ? ['amount', 'area'] : [field];
};

/** The coat as it is corrected, with the faults in what was touched: what she did not change does not stop her. */
export const readStanding = (
  draft: Draft,
  standing: CorrectedCoat,
  touched: Touched,
  product: ClockProduct,
  now: number,
  style: TimeStyle,
): { readonly coat: LaidCoat; readonly faults: readonly DraftFault[] } => {
  const { coat: read, faults: unread } = coatIn(draft, now);
  const coat = standing.corrected(read, touched);
  const slips = faultsOf(unread, coat, product, now, style).filter(
    ({ field, stops }) => stops && touched(...fieldsOf(field, draft)),
  );
  const own = standing
    .faults(coat)
    .map(({ field, says, stops }) => ({ field: FIELD_NAMES[field] ?? field, says, stops }));
  return { coat, faults: [...slips, ...own] };
};

/** A product that is not known here stays chosen, so that correcting the air does not change it unseen. */
export const offerProduct = (form: HTMLFormElement, product: string): void => {
  const select = form.elements.namedItem('product');
  if (!(select instanceof HTMLSelectElement) || [...select.options].some(({ value }) => value === product))
    return;
  const option = new Option(`${plainId(product)}, not known here`, product);
  option.dataset['unknown'] = '';
  select.add(option);
};
export const withdrawProduct = (form: HTMLFormElement): void =>
  form.querySelector('option[data-unknown]')?.remove();
