import { litersFor, wetFilmFromCoverage } from '../../calc/film.ts';
import { toSquareFeetPerGallon } from '../../calc/units.ts';
import type { Family } from '../../model/family.ts';
import { entryOf } from '../../plain/entry-of.ts';
import { filled } from '../../plain/filled.ts';
import type { Ear, Match } from '../words/match.ts';
import { countAt } from '../words/spans.ts';
import type { Word } from '../words/words.ts';
import { carriedAmount } from './carried-amount.ts';
import { WITHOUT_KIND } from './hours-asked.ts';
import { each, layersOf, sentencesOf, type TableAnswer } from './layers-asked.ts';
import { sayArea, sayCoverage, sayFaces, sayLiters } from './say-amounts.ts';
import { type Reader, readerOf } from './size-tokens.ts';
import { type Coverage, type ToldAreas, toldAreas, toldVolume } from './told-coverage.ts';
import { countOfArea, isToldMetric, type ToldFaces, toldFaces } from './told-faces.ts';
import type { Waits } from './waits.ts';

/** So many kinds are told of at most. */
const MOST_KINDS = 3;
/** So long an answer leaves a short reply room for its link. */
const ROOM = 310;
/** The plan takes so many coats at most. */
const MOST_COATS = 12;
const QUARTS_PER_GALLON = 4;
type Ends = readonly [number, number];

/** "Three coats": how many are to be laid; nothing where two numbers are told, or "two or three". */
const coatsIn = (ear: Ear, words: readonly Word[]): number | undefined => {
  const told = new Set<number>();
  for (let at = 0; at < words.length; at++) {
    const count = countAt(ear, words, at);
    const behind = count && words[count.to]?.word;
    if (!behind || !ear.laid.has(behind) || !behind.startsWith('coat') || count.value > MOST_COATS) continue;
    if (words[at - 1]?.word === 'or' && at > 1 && countAt(ear, words, at - 2)) return undefined;
    told.add(count.value);
  }
  const [only, ...others] = told;
  return others.length ? undefined : only;
};

const sayEnds = ([from, to]: Ends, times: number): string =>
  [from, to].map((end) => String(Number((end * times).toFixed(end * times < 20 ? 1 : 0)))).join(' to ');

/** What a liter of a kind covers, in both units. */
const sayUsual = (ends: Ends, isMetric: boolean): string => {
  const metric = `${sayEnds(ends, 1)} m² a liter`;
  const us = `${sayEnds(ends, toSquareFeetPerGallon(1) / QUARTS_PER_GALLON)} sq ft a quart`;
  return isMetric ? `${metric} (${us})` : `${us} (${metric})`;
};

/** Liters for so many coats: the least where a liter covers most. */
const litersAt = (squareMeters: number, coats: number, [low, high]: Ends, loss: number): Ends | undefined => {
  const [least, most] = [high, low].map((coverage) => {
    const wet = wetFilmFromCoverage(coverage);
    const liters = wet.ok ? litersFor(squareMeters, coats, wet.value, loss) : wet;
    return liters.ok ? liters.value : undefined;
  });
  return least === undefined || most === undefined ? undefined : [least, most];
};

type Told = {
  readonly areas: ToldAreas | undefined;
  readonly faces: ToldFaces | undefined;
  readonly squareMeters: number;
  readonly isMetric: boolean;
};

/** The area that is told, or that comes of the sizes; not where both are, which may mean the same. */
const areaIn = (ear: Ear, reader: Reader, isMetric: boolean): Told | undefined => {
  const { sizes } = ear.lexicon.tables;
  const areas = toldAreas(reader, sizes);
  if (!areas) return undefined;
  const faces = areas.squareMeters === undefined ? toldFaces(ear, reader, sizes, isMetric) : undefined;
  const told = faces && {
    squareMeters: faces.sides * faces.faces.reduce((sum, one) => sum + one.squareMeters, 0),
    isMetric: isToldMetric(faces),
  };
  const count = areas.squareMeters === undefined ? 1 : countOfArea(ear, reader, sizes, areas.ofEach);
  const one = areas.squareMeters ?? told?.squareMeters;
  if (one === undefined || count === undefined) return undefined;
  const squareMeters = one * count;
  return { areas, faces, squareMeters, isMetric: told?.isMetric ?? areas.isMetric };
};

type Kind = NonNullable<Waits['kinds'][Family]>;
type Asking = {
  readonly coats: number | undefined;
  /** Each kind with what a liter of it covers. */
  readonly kinds: readonly Kind[];
  readonly loss: number;
  readonly asksEnough: boolean;
};

/** What is left out where an answer grows too long: the usual coverage, the amount of one coat, kinds beyond so many. */
type Shortening = { readonly hasCoverage: boolean; readonly hasCoat: boolean; readonly most: number };
const SHORTENINGS: readonly Shortening[] = [
  { hasCoverage: true, hasCoat: true, most: MOST_KINDS },
  { hasCoverage: false, hasCoat: true, most: MOST_KINDS },
  { hasCoverage: false, hasCoat: false, most: MOST_KINDS },
  { hasCoverage: false, hasCoat: false, most: 2 },
];

/** The area, the amount a coat and for all coats, what it was reckoned with, and what is not in it. */
const reckoned = (
  ear: Ear,
  reader: Reader,
  { areas, faces, squareMeters, isMetric }: Told,
  { coats, kinds, loss, asksEnough }: Asking,
): string | undefined => {
  const { amount: says, sizes } = ear.lexicon.tables;
  const amounts = (ends: Ends, share: number, isBrief = false): string => {
    const all = litersAt(squareMeters, coats ?? 1, ends, share);
    if (!all) return '';
    const one: Ends = [all[0] / (coats ?? 1), all[1] / (coats ?? 1)];
    const aCoat = filled(says['a-coat'], { amount: sayLiters(one, isMetric) });
    if (coats === undefined || coats === 1) return aCoat;
    const ofAll = filled(says['all-coats'], { amount: sayLiters(all, isMetric), count: String(coats) });
    return isBrief ? ofAll : `${aCoat}, ${ofAll}`;
  };
  const percent = String(Math.round(loss * 100));
  const can: Coverage | undefined = areas?.coverage;
  const covers: readonly Ends[] = can ? [can.ends] : kinds.map((one) => one.covers);
  const needs = covers.map((ends) => litersAt(squareMeters, coats ?? 1, ends, loss));
  const needed = needs.flatMap((one) => one ?? []);
  if (!needed.length || needs.includes(undefined)) return undefined;
  const need: Ends = [Math.min(...needed), Math.max(...needed)];
  const byCan =
    can &&
    filled(says['at-can'], {
      coverage: sayCoverage(can),
      amounts: amounts(can.ends, 0) ?? '',
      loss: percent,
      bought: sayLiters(need, isMetric),
    });
  const [first, ...others] = kinds;
  const byKind = ({ hasCoat, hasCoverage, most }: Shortening): readonly string[] => [
    `${each(kinds.slice(0, most), says.each, ({ covers: ends }) => amounts(ends, loss, !hasCoat || others.length > 0))}.`,
    hasCoverage && first && !others.length
      ? filled(says['at-usual'], { loss: percent, coverage: sayUsual(first.covers, isMetric) })
      : filled(says['at-usual-in-short'], { loss: percent }),
  ];
  const numberOf = (said: string) => ear.numbers.get(said);
  const volume =
    asksEnough && coats !== undefined
      ? toldVolume(reader, sizes, numberOf, (at) => areas?.of.includes(at) ?? false)
      : undefined;
  const verdict =
    volume &&
    says[volume.liters >= need[1] ? 'enough' : volume.liters < need[0] ? 'not-enough' : 'just-enough'];
  const said = (shortening: Shortening): string =>
    [
      ...(volume && verdict
        ? [filled(verdict, { volume: `${volume.said.charAt(0).toUpperCase()}${volume.said.slice(1)}` })]
        : []),
      faces
        ? filled(says.area, { faces: sayFaces(says, sizes, faces), area: sayArea(squareMeters, isMetric) })
        : `${sayArea(squareMeters, isMetric)}.`,
      ...(faces?.missing.length ? [filled(says.missing, { parts: faces.missing.join(', ') })] : []),
      ...(byCan ? [byCan] : byKind(shortening)),
    ].join(' ');
  const all = SHORTENINGS.map(said);
  return all.find(({ length }) => length <= ROOM) ?? all.at(-1);
};

/**
 * How much is needed, where that is asked before the work: reckoned where the sizes are told, by what the can covers or
 * what cans of the kind do; else what a coat of the kind covers. The plan reckons it for each part of the piece.
 */
export const amountAsked = (
  ear: Ear,
  { kinds: table, losses }: Waits,
  text: string,
  words: readonly Word[],
  matches: readonly Match[],
): TableAnswer | undefined => {
  const asking = sentencesOf(text).filter(({ from, to }) => ear.says('amount', text.slice(from, to)));
  if (!asking.length || ear.says('not-amount', text)) return undefined;
  const ofCans = ear.says('from-cans', text);
  const { tops } = layersOf(ear, words, matches);
  const told = (tops.length ? tops : WITHOUT_KIND)
    .slice(0, MOST_KINDS)
    .flatMap((kind) => entryOf(table, kind as Family) ?? []);
  const { covers, rest, lead, page } = ear.lexicon.tables.amount;
  const isMetric = ear.says('metric', text);
  const coats = coatsIn(ear, words);
  const reader = readerOf(ear.lexicon.tables.sizes, text);
  const found = ofCans ? undefined : areaIn(ear, reader, isMetric);
  const tool = matches.find(({ kind, of: [fact] }) => kind === 'fact' && fact === 'applicator')?.of[1];
  const loss = entryOf(losses, (tool ?? 'brush') as keyof typeof losses) ?? losses.brush ?? 0;
  const both = found && { ...found, isMetric: found.isMetric || isMetric };
  const sums =
    both && reckoned(ear, reader, both, { coats, kinds: told, loss, asksEnough: ear.says('enough', text) });
  const carries = {
    ...(coats !== undefined && { 'can-coats': String(coats) }),
    ...(both && carriedAmount(both.faces, both.areas?.coverage, both.isMetric)),
  };
  const answerOf = (answer: string): TableAnswer => ({
    asked: { answer, lead, page, ...(Object.keys(carries).length && { carries }) },
    isWait: true,
    asking,
  });
  if (sums) return answerOf(sums);
  if (!told.length || ofCans) return undefined;
  const says = each(told, 'covers', ({ covers: ends }) => sayUsual(ends, isMetric));
  return answerOf(`${filled(covers, { kinds: says })} ${rest}`);
};
