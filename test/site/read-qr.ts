/**
 * Reads a QR code from its dark cells, as a phone does once it has found them (ISO/IEC 18004, model 2; the tables of
 * blocks by version are from memory of it). What it mends of a smudge is left out: these are whole.
 */
type Cells = readonly (readonly boolean[])[];

/** Codewords that mend a block, and blocks, by version from 1; for L and M, the levels of this site. */
const MENDS = {
  L: [7, 10, 15, 20, 26, 18, 20, 24, 30, 18, 20, 24, 26, 30, 22, 24, 28, 30, 28, 28],
  M: [10, 16, 26, 18, 24, 16, 18, 22, 22, 26, 30, 22, 22, 24, 24, 28, 28, 26, 26, 26],
} as const;
const BLOCKS = {
  L: [1, 1, 1, 1, 1, 2, 2, 2, 2, 4, 4, 4, 4, 4, 6, 6, 6, 6, 7, 8],
  M: [1, 1, 1, 2, 2, 4, 4, 4, 5, 5, 5, 8, 9, 9, 10, 10, 11, 13, 14, 16],
} as const;
const MASKS: readonly ((x: number, y: number) => boolean)[] = [
  (x, y) => (x + y) % 2 === 0,
  (_x, y) => y % 2 === 0,
  (x) => x % 3 === 0,
  (x, y) => (x + y) % 3 === 0,
  (x, y) => (Math.floor(x / 3) + Math.floor(y / 2)) % 2 === 0,
  (x, y) => ((x * y) % 2) + ((x * y) % 3) === 0,
  (x, y) => (((x * y) % 2) + ((x * y) % 3)) % 2 === 0,
  (x, y) => (((x + y) % 2) + ((x * y) % 3)) % 2 === 0,
];
/** What the bits of the format are crossed with, so that they are never all light. */
const FORMAT_MASK = 0b101010000010010;
const FINDER = 8;
const TIMING = 6;

/** The middles of the small squares that straighten a larger code, along either side. */
const middlesOf = (version: number, size: number): readonly number[] => {
  if (version === 1) return [];
  const count = Math.floor(version / 7) + 2;
  const step = Math.ceil((size - 13) / (count * 2 - 2)) * 2;
  return [TIMING, ...Array.from({ length: count - 1 }, (_, at) => size - 7 - (count - 2 - at) * step)];
};

/** Whether a cell holds no text but helps to find, straighten or tell the code. */
const helps = (version: number, size: number) => {
  const middles = middlesOf(version, size);
  const last = middles.at(-1);
  const corner = (x: number, y: number) =>
    (x === TIMING && (y === TIMING || y === last)) || (x === last && y === TIMING);
  return (x: number, y: number): boolean =>
    (x <= FINDER && y <= FINDER) ||
    (x >= size - FINDER && y <= FINDER) ||
    (x <= FINDER && y >= size - FINDER) ||
    x === TIMING ||
    y === TIMING ||
    middles.some((a) => middles.some((b) => !corner(a, b) && Math.abs(x - a) <= 2 && Math.abs(y - b) <= 2)) ||
    (version >= 7 && ((y < 6 && x >= size - 11) || (x < 6 && y >= size - 11)));
};

const numberOf = (bits: readonly boolean[]): number => bits.reduce((sum, bit) => sum * 2 + Number(bit), 0);

/** Fifteen bits along the left upper corner: the level, the mask, and what mends them. */
const formatOf = (cell: (x: number, y: number) => boolean) => {
  const along = [0, 1, 2, 3, 4, 5, 7, 8];
  const bits = [...along.map((x) => cell(x, FINDER)), ...[7, 5, 4, 3, 2, 1, 0].map((y) => cell(FINDER, y))];
  const format = numberOf(bits) ^ FORMAT_MASK;
  const level = ({ 1: 'L', 0: 'M' } as const)[format >> 13];
  if (!level) throw new Error('a level that this site does not print');
  return { level, mask: MASKS[(format >> 10) & 0b111] };
};

/** Two columns at a time from the right, up and down in turn; the upright line of timing is passed over. */
const bitsOf = (
  size: number,
  cell: (x: number, y: number) => boolean,
  skip: (x: number, y: number) => boolean,
) => {
  const bits: boolean[] = [];
  let up = true;
  for (let right = size - 1; right > 0; right -= right === TIMING + 2 ? 3 : 2) {
    for (let at = 0; at < size; at += 1)
      for (const x of [right, right - 1]) {
        const y = up ? size - 1 - at : at;
        if (!skip(x, y)) bits.push(cell(x, y));
      }
    up = !up;
  }
  return bits;
};

/** The blocks lie interleaved: the first codeword of each, then the second; the later blocks may have one more. */
const dataOf = (words: readonly number[], blocks: number, mends: number): readonly number[] => {
  const each = Math.floor(words.length / blocks) - mends;
  const short = blocks - (words.length % blocks);
  const all = Array.from({ length: blocks }, (): number[] => []);
  let next = 0;
  for (let at = 0; at <= each; at += 1)
    for (const [index, block] of all.entries())
      if (at < each || index >= short) block.push(words[next++] ?? 0);
  return all.flat();
};

/** The text of a code without its quiet rim. Throws where it is no code of bytes. */
export const readQr = (cells: Cells): string => {
  const size = cells.length;
  const version = (size - 17) / 4;
  const cell = (x: number, y: number) => cells[y]?.[x] ?? false;
  const { level, mask } = formatOf(cell);
  const bits = bitsOf(size, (x, y) => cell(x, y) !== mask?.(x, y), helps(version, size));
  const words = Array.from({ length: Math.floor(bits.length / 8) }, (_, at) =>
    numberOf(bits.slice(at * 8, at * 8 + 8)),
  );
  const data = dataOf(words, BLOCKS[level][version - 1] ?? 0, MENDS[level][version - 1] ?? 0);
  const stream = data.flatMap((word) => Array.from({ length: 8 }, (_, at) => ((word >> (7 - at)) & 1) === 1));
  if (numberOf(stream.slice(0, 4)) !== 0b0100) throw new Error('no code of bytes');
  const counts = version < 10 ? 8 : 16;
  const length = numberOf(stream.slice(4, 4 + counts));
  const bytes = Array.from({ length }, (_, at) =>
    numberOf(stream.slice(4 + counts + at * 8, 12 + counts + at * 8)),
  );
  return new TextDecoder().decode(new Uint8Array(bytes));
};

/** The dark cells of a code that is drawn as one line, its rim left out (site/shared/qr.ts). */
export const cellsOf = (size: number, path: string, rim = 2): Cells => {
  const drawn = Array.from({ length: size }, () => Array<boolean>(size).fill(false));
  let [x, y] = [0, 0];
  for (const [, by, dx, dy, length] of path.matchAll(/([Mm])(-?\d+) (-?\d+)h(\d+)/g)) {
    x = by === 'M' ? Number(dx) : x + Number(dx);
    y = by === 'M' ? Number(dy) : y + Number(dy);
    for (const end = x + Number(length); x < end; x += 1) (drawn[y] ?? [])[x] = true;
  }
  return drawn.slice(rim, size - rim).map((row) => row.slice(rim, size - rim));
};
