const WRITTEN = /^([+-]?)(\d*)(?:[.,](\d*))?$/;

/**
 * A number as people write it: a comma or a point, a real minus sign, spaces between thousands. Undefined where nothing
 * is written, NaN where it is no number. `1e9` and `0x1f` are slips, not numbers.
 */
export const readNumber = (text: string): number | undefined => {
  const plain = text.replace(/\s/g, '').replace('−', '-');
  if (!plain) return undefined;
  const [, sign = '', whole = '', part = ''] = WRITTEN.exec(plain) ?? [];
  return whole || part ? Number(`${sign}${whole || 0}.${part || 0}`) : Number.NaN;
};

/** As a field shows it: at most so many digits, none for nothing. */
export const writeNumber = (value: number | undefined, digits: number): string =>
  value === undefined || !Number.isFinite(value) ? '' : String(Number(value.toFixed(digits)) + 0);
