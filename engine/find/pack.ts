/** Tables of small whole numbers as text, a sign each: compressed they take two thirds of what JSON takes. */

/** Signs that JSON writes as they are, from `#` on: the quote lies below, the backslash is passed over. */
const FIRST = 35;
const BACKSLASH = 92;
const LAST = 126;
/** Above the plain signs: from here on nothing is a control sign. */
const FAR = 0x100;
const PLAIN = LAST - FIRST;
/** Beyond this come halves of signs. */
const MOST = 0xd7ff - FAR;

/**
 * Whole numbers as text, a sign each, so that they are whole again by `unpack`. Throws RangeError beyond 0 to 55,039.
 */
export const pack = (numbers: readonly number[]): string =>
  numbers
    .map((number) => {
      if (!Number.isInteger(number) || number < 0 || number > MOST)
        throw new RangeError(`${number} cannot be packed: whole numbers from 0 to ${MOST} can`);
      if (number >= PLAIN) return String.fromCharCode(FAR + number);
      const code = FIRST + number;
      return String.fromCharCode(code < BACKSLASH ? code : code + 1);
    })
    .join('');

/** What `pack` has packed. */
export const unpack = (text: string): number[] => {
  const numbers: number[] = [];
  for (let at = 0; at < text.length; at++) {
    const code = text.charCodeAt(at);
    numbers.push(code >= FAR ? code - FAR : code - FIRST - (code > BACKSLASH ? 1 : 0));
  }
  return numbers;
};

/**
 * Rows of pairs, a place and what stands there: how many pairs each row has, how far each place is from the one before,
 * and what stands there less the least of all.
 */
export type PackedRows = {
  readonly counts: string;
  readonly gaps: string;
  readonly values: string;
  readonly least: number;
};

/** Rows of `place, value, place, value, …`, places rising from 0. */
export const packRows = (rows: readonly (readonly number[])[]): PackedRows => {
  const gaps: number[] = [];
  const values: number[] = [];
  for (const row of rows) {
    let before = -1;
    for (let at = 0; at < row.length; at += 2) {
      const place = row[at] ?? 0;
      gaps.push(place - before - 1);
      values.push(row[at + 1] ?? 0);
      before = place;
    }
  }
  const least = values.reduce((low, value) => Math.min(low, value), 0);
  return {
    counts: pack(rows.map(({ length }) => length / 2)),
    gaps: pack(gaps),
    values: pack(values.map((value) => value - least)),
    least,
  };
};

/** What `packRows` has packed. */
export const unpackRows = ({ counts, gaps, values, least }: PackedRows): number[][] => {
  const places = unpack(gaps);
  const standing = unpack(values);
  let at = 0;
  return unpack(counts).map((count) => {
    const row: number[] = [];
    let before = -1;
    for (const end = at + count; at < end; at++) {
      before += (places[at] ?? 0) + 1;
      row.push(before, (standing[at] ?? 0) + least);
    }
    return row;
  });
};
