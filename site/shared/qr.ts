import { encode } from 'uqr';

/** A text that is longer than an address of a page makes fine cells: less of it is told twice. */
const LONG = 120;

/**
 * A QR code as one line to be drawn a cell wide: every run of dark cells in a row is a stretch of it, from where the last
 * one ended. Told so it packs to under half of what rectangles by their places take, on every sheet.
 */
export const qrPath = (text: string): { size: number; path: string } => {
  const { data, size } = encode(text, { ecc: text.length > LONG ? 'L' : 'M', border: 2 });
  const runs = data.flatMap((row, y) =>
    [
      ...row
        .map((dark) => (dark ? '1' : '0'))
        .join('')
        .matchAll(/1+/g),
    ].map(({ index, 0: { length } }) => ({ x: index, y, length })),
  );
  const path = runs.map(({ x, y, length }, at) => {
    const last = runs[at - 1];
    const move = last ? `m${x - last.x - last.length} ${y - last.y}` : `M${x} ${y}`;
    return `${move}h${length}`;
  });
  return { size, path: path.join('') };
};
