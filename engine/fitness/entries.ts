import type { Case } from '../case/case.ts';
import type { ClockProduct, LaidCoat } from '../clock/coat.ts';
import { hardenerOf } from '../clock/hardener.ts';
import { readyForNext } from '../clock/reading.ts';
import { filmUpTo } from '../clock/thick.ts';
import type { CardCoat } from '../model/job-card.ts';
import { entryOf } from '../plain/entry-of.ts';
import { HOUR_MS } from '../plain/time.ts';
import { filmTold } from './film-risk.ts';
import type { Laying } from './laying.ts';

/** What a coat itself tells, whoever lays it: its air, its tool and its can. */
type Coming = Pick<CardCoat, 'celsius' | 'relativeHumidity' | 'surfaceCelsius' | 'applicator'>;

/** The air that a coat is laid in. */
export const airOf = ({ celsius, relativeHumidity, surfaceCelsius }: Coming): Laying['day'] => ({
  celsius,
  relativeHumidity,
  ...(surfaceCelsius !== undefined && { surfaceCelsius }),
});

/**
 * A coat that is about to be put on the clock, on a piece of which this is known; nothing of it where no one has said.
 */
export const layingOfCoat = (coat: LaidCoat, piece: Omit<Laying, 'day'> = {}): Laying => ({
  ...piece,
  onOwnCoat: coat.coatNumber > 1,
  sheen: coat.sheen ?? piece.sheen,
  tone: coat.baseTone ?? piece.tone,
  applicator: coat.applicator ?? piece.applicator,
  hardener: coat.hardener ?? piece.hardener,
  label: coat.label ?? piece.label,
  day: airOf(coat),
  ...(coat.night && { night: coat.night }),
});

/** The same over a coat of her own that lies there already; of one whose product is not known what else it tells. */
export const overCoat = (
  laying: Laying,
  below: LaidCoat | undefined,
  laidAt: number,
  products: Readonly<Record<string, ClockProduct>>,
): Laying => {
  const film = below && filmUpTo(below, products);
  const hardenerBelow = below && hardenerOf([below, ...(below.below ?? [])], products);
  // What its card has told of the piece need not be told again.
  const over = {
    ...laying,
    ...(below?.age && laying.age === undefined && { age: below.age }),
    ...(hardenerBelow && { hardenerBelow }),
    ...(below?.flaw && { openFlaw: below.flaw }),
    // What its card knows of the film goes before what the coats alone tell.
    ...(film?.families.length && !laying.film && { film }),
  };
  const product = below && entryOf(products, below.product);
  if (!product) return over;
  const hours = (laidAt - below.laidAt) / HOUR_MS;
  return {
    ...over,
    ownBelow: { family: product.family, hours, bears: readyForNext(below, products) },
  };
};

const choice = <T extends string>(on: Case, name: string): T | undefined => {
  const value = on[name]?.value;
  return typeof value === 'string' ? (value as T) : undefined;
};

const number = (on: Case, name: string): number | undefined => {
  const value = on[name]?.value;
  return typeof value === 'number' ? value : undefined;
};

/** What a case knows of a piece that a coat is about to be laid on. */
export const pieceOfCase = (on: Case): Omit<Laying, 'day'> => ({
  kind: choice(on, 'piece'),
  wear: 'normal',
  base: choice(on, 'base'),
  tone: choice(on, 'base-tone'),
  age: choice(on, 'age'),
  sheen: choice(on, 'sheen'),
  applicator: choice(on, 'applicator'),
  hardener: choice(on, 'hardener'),
});

/** A coat that a repair calls for, from the facts of its walk. Nothing where the air is not known. */
export const layingOfCase = (
  on: Case,
  more: Pick<Laying, 'trials' | 'baseHours' | 'onOwnCoat'> = {},
): Laying | undefined => {
  const [celsius, relativeHumidity] = [number(on, 'air-celsius'), number(on, 'relative-humidity')];
  if (celsius === undefined || relativeHumidity === undefined) return undefined;
  const film = more.onOwnCoat ? number(on, 'film-micrometers') : undefined;
  return {
    ...more,
    ...pieceOfCase(on),
    ...(film !== undefined && { film: filmTold(film, on) }),
    day: airOf({ celsius, relativeHumidity, surfaceCelsius: number(on, 'surface-celsius') }),
  };
};
