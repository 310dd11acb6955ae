import { type FieldUnit, isOwnDegree, spokenUnit } from './measures.ts';
import { readNumber } from './number.ts';

/** What was typed into a number field. */
export type Typed = {
  /** In the unit of the field; nothing where the field is empty, NaN where it is no number that is sure. */
  readonly value: number | undefined;
  /** It was told in another unit, and reckoned into that of the field. */
  readonly reckoned?: true;
  /** Why there is no number: two of them, or one of something else than the field asks for. */
  readonly unclear?: 'two' | 'unit';
};

const VULGAR: Readonly<Record<string, string>> = {
  '½': '1/2',
  '¼': '1/4',
  '¾': '3/4',
  '⅓': '1/3',
  '⅔': '2/3',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};
/** Parts that rulers and measuring cups have; a stroke between other numbers may be a day, or “of”. */
const PARTS = ['2', '3', '4', '5', '8', '10', '16', '32', '64'];

/** A number, whole with a part behind it, or a part alone; then all up to the next number. */
const PIECE = /(?:(\d+)[\s-]+)?(\d+)\s*[/⁄]\s*(\d+)(?!\d)([^\d]*)|(\d[\d\s]*(?:[.,]\d*)?|[.,]\d+)([^\d]*)/gy;
const RANGE = /\d\s*(?:-|–|—|~|\.\.+|to|or|bis)\s*[\d.,]/i;

type Piece = { readonly number: number; readonly unit: string };

const pieceOf = (match: RegExpExecArray): Piece => {
  const [, whole = '0', top = '', bottom = '', behind = '', plain, unit = ''] = match;
  if (plain !== undefined) return { number: readNumber(plain) ?? Number.NaN, unit: unit.trim() };
  const isPart = PARTS.includes(bottom) && Number(top) < Number(bottom);
  return {
    number: isPart ? Number(whole) + Number(top) / Number(bottom) : Number.NaN,
    unit: behind.trim(),
  };
};

/** The pieces of a text, in their order; nothing where something is no piece. */
const piecesOf = (text: string): readonly Piece[] | undefined => {
  const pieces: Piece[] = [];
  PIECE.lastIndex = 0;
  let at = 0;
  while (at < text.length) {
    const match = PIECE.exec(text);
    if (!match) return undefined;
    at = PIECE.lastIndex;
    pieces.push(pieceOf(match));
  }
  return pieces;
};

const NONE: Typed = { value: Number.NaN };

/** One number with a unit behind it, in the unit of the field. */
const inUnit = ({ number, unit }: Piece, field: FieldUnit | undefined): Typed => {
  if (!unit || (isOwnDegree(unit) && field?.measure === 'degrees')) return { value: number };
  const toBase = field && spokenUnit(field.measure, unit);
  if (!toBase) return /[\p{L}°%"'′″’”]/u.test(unit) ? { ...NONE, unclear: 'unit' } : NONE;
  // The way there and back would leave 70.00000000000001 of 70.
  const own = spokenUnit(field.measure, field.sign) === toBase;
  return own ? { value: number } : { value: field.fromBase(toBase(number)), reckoned: true };
};

/** “1 ft 6 in”, “1 h 30 min”: the larger unit first, of things that begin at nothing. */
const sumOf = (pieces: readonly Piece[], field: FieldUnit | undefined): Typed => {
  if (!field || field.measure === 'degrees') return NONE;
  const [first, second] = pieces.map(({ number, unit }) => {
    const toBase = spokenUnit(field.measure, unit);
    return toBase && { base: toBase(number), one: toBase(1) };
  });
  if (!first || !second || pieces.length > 2 || second.base >= first.one) return NONE;
  return { value: field.fromBase(first.base + second.base), reckoned: true };
};

/**
 * A number as people type it into a field: with its unit, with another of the same measure, as 1 1/2 or ½. What may
 * mean two things is none.
 */
export const readTyped = (text: string, field: FieldUnit | undefined): Typed => {
  const plain = readNumber(text);
  if (plain === undefined || !Number.isNaN(plain)) return { value: plain };
  const written = text
    .trim()
    .replace(/[½¼¾⅓⅔⅛⅜⅝⅞]/g, (part) => ` ${VULGAR[part]}`)
    .replace(/^([+-]?|−)\s+/, '$1')
    // A figure of a unit is no number of its own.
    .replace(/(?<=[a-z])\^?2(?!\d)/gi, '²');
  const [sign = ''] = /^[+−-]?/.exec(written) ?? [];
  const pieces = piecesOf(written.slice(sign.length).trim());
  const [piece] = pieces ?? [];
  if (!pieces || !piece) return NONE;
  if (pieces.length > 1) {
    const sum = sign ? NONE : sumOf(pieces, field);
    return Number.isNaN(sum.value) && RANGE.test(written) ? { ...NONE, unclear: 'two' } : sum;
  }
  if (Number.isNaN(piece.number)) return NONE;
  return inUnit(sign && sign !== '+' ? { ...piece, number: -piece.number } : piece, field);
};
