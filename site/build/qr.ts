import { encode } from 'uqr';

/** A QR code as one path: every run of dark cells in a row is one rectangle, a cell being one unit. */
export const qrPath = (text: string): { size: number; path: string } => {
  const { data, size } = encode(text, { ecc: 'M', border: 2 });
  const runs = data.flatMap((row, y) =>
    [
      ...row
        .map((dark) => (dark ? '1' : '0'))
        .join('')
        .matchAll(/1+/g),
    ].map(({ index, 0: { length } }) => `M${index} ${y}h${length}v1h-${length}z`),
  );
  return { size, path: runs.join('') };
};
