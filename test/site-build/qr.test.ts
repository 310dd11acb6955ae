/** The line of a QR code covers the dark cells that the encoder (uqr) tells, and no other; read by the standard it is the text. */
import { encode } from 'uqr';
import { expect, it } from 'vitest';
import { qrPath } from '../../site/shared/qr.ts';
import { cellsOf, readQr } from '../site/read-qr.ts';

it.each(['https://halfdry.example/r/sand-and-recoat', 'https://halfdry.example/r/x', 'a'.repeat(120)])(
  'is drawn along the dark cells of %s',
  (text) => {
    const { size, path } = qrPath(text);
    expect(path).toMatch(/^M\d+ \d+h\d+(?:m-?\d+ -?\d+h\d+)+$/);
    expect(cellsOf(size, path, 0)).toEqual(encode(text, { ecc: 'M', border: 2 }).data);
  },
);

it('is read back, whatever its length: an address, or a whole plan', () => {
  const long = `https://halfdry.example/schedule/#${'piece=dresser&top=2;'.repeat(40)}`;
  for (let length = 1; length < 700; length += 9) {
    const { size, path } = qrPath(long.slice(0, length));
    expect(readQr(cellsOf(size, path))).toBe(long.slice(0, length));
  }
});
