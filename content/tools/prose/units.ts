/** Figures with their units in a text: that each stands in both systems, and that the two agree within their rounding. */

type System = 'US' | 'metric';
/** A unit as it is written, what it measures, and how many of the base unit it is. */
type Unit = { readonly name: string; readonly of: string; readonly system: System; readonly is: number };

const unit = (of: string, system: System, is: number, ...names: string[]): Unit[] =>
  names.map((name) => ({ name, of, system, is }));

/**
 * Exact by definition: the inch 25.4 mm, the pound 0.45359237 kg (international yard and pound agreement, 1959), the US
 * gallon 231 cubic inches (NIST Handbook 44, appendix C, from memory). A film's mil is a thousandth of an inch.
 */
const UNITS: readonly Unit[] = [
  ...unit('warmth', 'US', 1, '°F'),
  ...unit('warmth', 'metric', 1, '°C', 'K'),
  ...unit('length', 'US', 25.4, 'inches', 'inch', 'in'),
  ...unit('length', 'US', 304.8, 'feet', 'foot', 'ft'),
  ...unit('length', 'US', 914.4, 'yards', 'yard'),
  ...unit('length', 'metric', 1000, 'meters', 'meter', 'm'),
  ...unit('length', 'metric', 10, 'cm'),
  ...unit('length', 'metric', 1, 'mm'),
  ...unit('length', 'US', 0.0254, 'mils', 'mil'),
  ...unit('length', 'metric', 0.001, 'µm'),
  ...unit('area', 'US', 0.092_903_04, 'square feet', 'sq ft', 'ft²'),
  ...unit('area', 'metric', 1, 'm²'),
  ...unit('spread', 'US', 0.092_903_04 / 3.785_411_784, 'ft² to the gallon', 'sq ft to the gallon'),
  ...unit('spread', 'metric', 1, 'm² to the liter'),
  ...unit('volume', 'US', 3785.411_784, 'gallons', 'gallon'),
  ...unit('volume', 'US', 946.352_946, 'quarts', 'quart'),
  ...unit('volume', 'US', 29.573_529_562_5, 'fl oz'),
  ...unit('volume', 'metric', 1000, 'liters', 'liter'),
  ...unit('volume', 'metric', 1, 'ml', 'mL'),
  ...unit('weight', 'US', 28.349_523_125, 'ounces', 'ounce', 'oz'),
  ...unit('weight', 'US', 453.592_37, 'pounds', 'pound', 'lb'),
  ...unit('weight', 'metric', 1000, 'kg'),
  ...unit('weight', 'metric', 1, 'g'),
  ...unit('pressure', 'US', 6.894_757, 'psi'),
  ...unit('pressure', 'metric', 100, 'bar'),
];
const BY_NAME = new Map(UNITS.map((one) => [one.name, one]));

const NUMBER = String.raw`\d+(?:,\d{3})+|\d+(?: \d+)?\/\d+|\d+(?:\.\d+)?`;
const NAMES = UNITS.map(({ name }) => name).sort((one, two) => two.length - one.length);
const FIGURE = new RegExp(
  String.raw`(?<![\w.,/§])(?<!\bP)(−|-|minus )?(${NUMBER})(?: ?(?:°F|°C|mm|cm|in|µm|mil))?` +
    String.raw`(?:\s*(to|–|-|or|and|by|×)\s*(${NUMBER}))?[\s-]*(${NAMES.join('|')})(?![\p{L}\d²³/])`,
  'gu',
);

type Figure = {
  readonly text: string;
  readonly at: number;
  readonly end: number;
  readonly unit: Unit;
  readonly values: readonly number[];
  /** Half of the last place that is written, for each value. */
  readonly slack: readonly number[];
};

/** `1/16`, `1 1/2`, `1,000`, `0.5`. */
const numberOf = (written: string): number => {
  const [whole = '', part] = written.includes('/')
    ? (/^(?:(\d+) )?(\d+\/\d+)$/.exec(written)?.slice(1) ?? [])
    : [written];
  const [over = 0, under = 1] = part?.split('/').map(Number) ?? [];
  return Number(whole.replaceAll(',', '') || 0) + over / under;
};

/** Half of the last place: 0.05 of 1.5, 5 of 120, for whoever writes 120 rounds to tens; a fraction to half its part. */
const slackOf = (written: string): number => {
  if (written.includes('/')) return 0.5 / Number(written.split('/')[1]);
  const decimals = written.split('.')[1]?.length ?? 0;
  if (decimals) return 0.5 * 10 ** -decimals;
  const zeros = /0*$/.exec(written.replaceAll(',', ''))?.[0].length ?? 0;
  return 0.5 * 10 ** Math.min(zeros, Math.max(0, written.replaceAll(',', '').length - 1));
};

/** What follows "in" where it is an inch: "6 in (15 cm)", "6 in away"; not "2 in three" and not "7 in a cold room". */
const INCH = /^(?: ?\(|[.,;:)]|$| (?:away|off|apart|wide|thick|long|high|deep|across|above|square)\b)/;
/** A strength of shellac, by weight in a volume: "a 2-lb cut (240 g of flakes to the liter)". */
const STRENGTH = /^(?:[ -]cuts?\b|\/L| (?:of )?flakes| to (?:the|a) (?:liter|quart))/;

const figuresIn = (text: string): Figure[] =>
  [...text.matchAll(FIGURE)].flatMap((found) => {
    const [whole, minus, first = '', , second, name = ''] = found;
    const of = BY_NAME.get(name);
    const end = found.index + whole.length;
    const after = text.slice(end, end + 16);
    if (
      !of ||
      (name === 'in' && !INCH.test(after)) ||
      (of.of === 'weight' && (STRENGTH.test(after) || text.slice(0, found.index).endsWith('cut ')))
    )
      return [];
    const written = second === undefined ? [first] : [first, second];
    return [
      {
        text: whole.trim().replaceAll(/\s+/g, ' '),
        at: found.index,
        end,
        unit: of,
        values: written.map((one, at) => (at === 0 && minus ? -1 : 1) * numberOf(one)),
        slack: written.map(slackOf),
      },
    ];
  });

export type UnitFault =
  | { readonly at: number; readonly why: 'alone'; readonly figure: string; readonly wants: string }
  | {
      readonly at: number;
      readonly why: 'differ';
      readonly figure: string;
      readonly beside: string;
      readonly is: string;
    };

/** What may stand between a figure and the same one in the other system. */
const BETWEEN =
  /^(?: (?:wet|dry|wide|thick|of film))?(?: ?\(|, | or | is )?(?:about |or |up to |at least |−)?$/;
/** A measure in words, before the parenthesis that gives it in the other system: "an inch (25 mm)". */
const IN_WORDS =
  /\b(?:inch(?:es)?|foot|feet|hand|arm|yards?|cups?|quarts?|gallons?|ounces?|pounds?|pints?|(?:tea|table)?spoons?|mils?|thousandths?|coin|hair|pea|cut)\b[^.()]{0,28}$/;
const WORDS_AFTER =
  /^[^().\d]{0,16}\((?:about |some |under |over |less than |a |an |half )*(?:thousandth|half|quarter|an? )/;
/** Words that tell of a difference of warmth, which has no zero to shift. */
const DIFFERENCE = /\b(?:warmer|colder|cooler|hotter|apart|rise|drop|dew point|each|every)\b/;

/** Whether the figure stands in a parenthesis that puts a measure in words into figures. */
const translatesWords = (text: string, { at, end }: Figure): boolean => {
  const open = text.lastIndexOf('(', at);
  const inside = open >= 0 && at - open < 40 && !text.slice(open, at).includes(')');
  return (
    (inside && IN_WORDS.test(text.slice(Math.max(0, open - 48), open))) ||
    WORDS_AFTER.test(text.slice(end, end + 40))
  );
};

const inBase = (value: number, { of, system, is }: Unit, difference: boolean): number =>
  of !== 'warmth' ? value * is : system === 'metric' ? value : difference ? value / 1.8 : (value - 32) / 1.8;

/** Whether two figures are one within what either rounds away. */
const agree = (one: Figure, other: Figure, difference: boolean): boolean => {
  const ends = (figure: Figure, at: number): [number, number] => {
    const value = figure.values.at(at) ?? 0;
    const slack =
      figure.unit.of === 'warmth' ? Math.min(0.6, figure.slack.at(at) ?? 0) : (figure.slack.at(at) ?? 0);
    return [inBase(value - slack, figure.unit, difference), inBase(value + slack, figure.unit, difference)];
  };
  // Of a span and a single figure ("up to 1/16 in (0.3 to 2 mm)") the larger end is compared.
  const places = one.values.length === other.values.length ? one.values.map((_, at) => at) : [-1];
  return places.every((at) => {
    const [low, high] = ends(one, at);
    const [least, most] = ends(other, at);
    return low <= most * (1 + 1e-9) + 1e-9 && least <= high * (1 + 1e-9) + 1e-9;
  });
};

/** A span or value in the other unit, as one would write it. */
const converted = ({ values, unit: from }: Figure, to: Unit, difference: boolean): string => {
  const digits = (value: number) => {
    if (to.of === 'warmth') return String(Math.round(value));
    const plain = Number(value.toPrecision(1));
    return String(Math.abs(plain / value - 1) < 0.025 ? plain : Number(value.toPrecision(2)));
  };
  const turned = values.map((value) => {
    const base = inBase(value, from, difference);
    if (to.of !== 'warmth') return digits(base / to.is);
    return digits(to.system === 'metric' ? base : difference ? base * 1.8 : base * 1.8 + 32);
  });
  return `${turned.join(' to ')} ${to.name}`;
};

const OTHER: Readonly<Record<string, string>> = {
  '°F': '°C',
  '°C': '°F',
  K: '°F',
  inches: 'mm',
  inch: 'mm',
  in: 'mm',
  feet: 'm',
  foot: 'm',
  ft: 'm',
  yards: 'm',
  yard: 'm',
  meters: 'ft',
  meter: 'ft',
  m: 'ft',
  cm: 'in',
  mm: 'in',
  mils: 'µm',
  mil: 'µm',
  µm: 'mil',
  'square feet': 'm²',
  'sq ft': 'm²',
  'ft²': 'm²',
  'm²': 'sq ft',
  'ft² to the gallon': 'm² to the liter',
  'sq ft to the gallon': 'm² to the liter',
  'm² to the liter': 'ft² to the gallon',
  gallons: 'liters',
  gallon: 'liters',
  quarts: 'liters',
  quart: 'liters',
  liters: 'quarts',
  liter: 'quarts',
  ml: 'fl oz',
  mL: 'fl oz',
  'fl oz': 'ml',
  ounces: 'g',
  ounce: 'g',
  oz: 'g',
  pounds: 'kg',
  pound: 'kg',
  lb: 'kg',
  kg: 'lb',
  g: 'oz',
  psi: 'bar',
  bar: 'psi',
};

/** Every figure of a text that stands in one system alone, or that differs from the one beside it. */
export const unitFaults = (text: string): UnitFault[] => {
  const figures = figuresIn(text);
  const paired = new Set<Figure>();
  const faults: UnitFault[] = [];
  const isDifference = (figure: Figure) =>
    figure.unit.name === 'K' || DIFFERENCE.test(text.slice(Math.max(0, figure.at - 24), figure.end + 56));
  for (const [at, one] of figures.entries()) {
    const other = figures[at + 1];
    if (!other || paired.has(one) || one.unit.system === other.unit.system || one.unit.of !== other.unit.of)
      continue;
    if (!BETWEEN.test(text.slice(one.end, other.at))) continue;
    paired.add(one).add(other);
    if (
      agree(one, other, false) ||
      (one.unit.of === 'warmth' && isDifference(one) && agree(one, other, true))
    )
      continue;
    const is = converted(one, other.unit, isDifference(one));
    faults.push({ at: one.at, why: 'differ', figure: one.text, beside: other.text, is });
  }
  for (const one of figures) {
    if (paired.has(one) || translatesWords(text, one)) continue;
    const to = BY_NAME.get(OTHER[one.unit.name] ?? '');
    if (to)
      faults.push({
        at: one.at,
        why: 'alone',
        figure: one.text,
        wants: converted(one, to, isDifference(one)),
      });
  }
  return faults.sort((one, two) => one.at - two.at);
};

/** A parenthesis that ends in a figure without its unit: "an inch (2–3)", "one square foot (30 cm × 30)". No year. */
const BARE =
  /(?<![\p{L}\d] ?[A-Z]{2,}[^()]{0,24})\((?:[^()]*(?:[×x]|\bfor|\bto) )?(?!(?:1[89]|20)\d\d\))\d+(?:[.,]\d+)?(?: ?(?:–|-|to) ?\d+(?:\.\d+)?)?\)/gu;
export const bareFigures = (text: string): readonly { readonly at: number; readonly figure: string }[] =>
  [...text.matchAll(BARE)].map(({ 0: figure, index }) => ({ at: index, figure }));
