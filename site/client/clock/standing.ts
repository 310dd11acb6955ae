import type { ClockProduct, CoatFault, LaidCoat, TimeStyle } from '#engine/clock.ts';
import { coatIn, type Draft, FIELD_NAMES, faultsOf } from './draft.ts';

/** Whether one of these fields holds anything else than what was filled in. */
export type Touched = (...names: readonly string[]) => boolean;

/** A coat that stands already and is corrected in the form. */
export type Standing = {
  /** How it stands in the form, in US units or metric. */
  readonly draft: (us: boolean) => Draft;
  /** What was read, with all that was not touched as it was. */
  readonly corrected: (read: LaidCoat, touched: Touched) => LaidCoat;
  readonly faults: (coat: LaidCoat) => readonly CoatFault[];
};

/** The fields that a fault may lie in. */
const fieldsOf = (field: CoatFault['field'], draft: Draft): readonly string[] => {
  if (field.startsWith('label-')) return Object.keys(draft).filter((name) => name.startsWith('label-'));
  if (field === 'laidAt') return ['when', 'at', 'ago'];
  return field === 'amount' ? ['amount', 'area'] : [FIELD_NAMES[field] ?? field];
};

/** The coat as it is corrected, with the faults in what was touched: what she did not change does not stop her. */
export const readStanding = (
  draft: Draft,
  standing: Standing,
  touched: Touched,
  product: ClockProduct,
  now: number,
  style: TimeStyle,
): { readonly coat: LaidCoat; readonly faults: readonly CoatFault[] } => {
  const { coat: read, absent } = coatIn(draft, now);
  const coat = standing.corrected(read, touched);
  const slips = faultsOf(absent, coat, product, now, style).filter(
    ({ field, stops }) => stops && touched(...fieldsOf(field, draft)),
  );
  return { coat, faults: [...slips, ...standing.faults(coat)] };
};

/** A product that is not known here stays chosen, so that correcting the air does not change it unseen. */
export const offerProduct = (form: HTMLFormElement, product: string): void => {
  const select = form.elements.namedItem('product') as HTMLSelectElement;
  if ([...select.options].some(({ value }) => value === product)) return;
  const option = new Option(`${product.replaceAll('-', ' ')}, not known here`, product);
  option.dataset['unknown'] = '';
  select.add(option);
};
export const withdrawProduct = (form: HTMLFormElement): void =>
  form.querySelector('option[data-unknown]')?.remove();
