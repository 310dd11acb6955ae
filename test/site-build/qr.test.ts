/** The line of a QR code covers the dark cells that the encoder (uqr) tells, and no other. */
import { encode } from 'uqr';
import { expect, it } from 'vitest';
import { qrPath } from '../../site/shared/qr.ts';

it.each(['https://halfdry.example/r/sand-and-recoat', 'https://halfdry.example/r/x', 'a'.repeat(120)])(
  'is drawn along the dark cells of %s',
  (text) => {
    const { size, path } = qrPath(text);
    const drawn = Array.from({ length: size }, () => Array<boolean>(size).fill(false));
    let [x, y] = [0, 0];
    for (const [, by, dx, dy, length] of path.matchAll(/([Mm])(-?\d+) (-?\d+)h(\d+)/g)) {
      x = by === 'M' ? Number(dx) : x + Number(dx);
      y = by === 'M' ? Number(dy) : y + Number(dy);
      for (const end = x + Number(length); x < end; x += 1) (drawn[y] ?? [])[x] = true;
    }
    expect(path).toMatch(/^M\d+ \d+h\d+(?:m-?\d+ -?\d+h\d+)+$/);
    expect(drawn).toEqual(encode(text, { ecc: 'M', border: 2 }).data);
  },
);
