import type { FactName } from '../../model/facts.ts';
import type { HeardFact } from './heard.ts';
import type { Span } from './words.ts';

/** A figure of the air or the film where a text names it: least and most. */
export type Reading = Span & { readonly low: number; readonly high: number; readonly sure: number };

export const spanOf = (found: RegExpExecArray | RegExpMatchArray): Span => ({
  from: found.index ?? 0,
  to: (found.index ?? 0) + found[0].trimEnd().length,
});

/** The words around a figure, between two stops: "the air is 68" tells nothing of "the wood reads 52". */
export const clauseAround = (text: string, { from, to }: Span): { before: string; after: string } => {
  const before = text.slice(Math.max(0, from - 60), from);
  const after = text.slice(to, to + 60);
  return {
    before: before.replace(/^.*(?:[;!?,–]|\.(?=\s)|\b(?:but|though|while|whereas|and)\b)/is, ''),
    after: after.replace(/(?:[;!?,–]|\.(?=\s)|\.$|\b(?:but|though|while|whereas|and the)\b).*$/is, ''),
  };
};

/** Words beside a figure that make it that of something else than the piece as it was coated. */
const OF_ELSE =
  /\b(?:iron|oven|coffee|pan|melt\w*|flash\w*|storage|above|below|at least|minimum|dew point|floor was|moisture meter)\b|\b(?:label|can|tin|sheet|directions|instructions|they|which|it) (?:says|said|wants|calls)/i;
/** Told of another time than that of the coat. */
const OF_PAST =
  /\b(?:last (?:week|month|year|winter|summer)|normally|usually|used to be|was set|up to|from|when i was)\b[^.;,]*$/i;
const PAST_BEHIND =
  /^[^.;,!?]{0,20}\b(?:last (?:week|month|year|winter|summer)|year round|to cure|in my twenties)\b/i;
/** Told of the coat or of now: it goes before other figures. */
const OF_COAT =
  /\b(?:now|today|when (?:i|we) (?:laid|put|brushed|sprayed|rolled|coated|shot|wiped|varnished|applied|started))\b/i;
/** What comes after such a word is where it ended. */
const ENDED =
  /\b(?:down to|fell to|dropped to|climbs to|climbed to|up to|got to|got it (?:down|up)|but|maybe|never got past|to)\s*(?:about\s*|around\s*|maybe\s*)?$/i;

const AT_NIGHT = /^[^.;,!?]{0,4}\b(?:at|by) night\b/i;

/** What goes from one figure to another ended there. */
const ON_ITS_WAY =
  /\b(?:went|goes|gone|going|rose|risen|fell|fallen|dropped|climbed|came|jumped|crept|sank|swung|changed|warmed|cooled|shot)(?: (?:up|down|back|over ?night))? from (?:about |around |maybe )?$/i;

/** Whether the figure at `at` is where the way to another began: "went from 80 to 48 %". */
export const isWayTo = (text: string, at: number): boolean =>
  ON_ITS_WAY.test(text.slice(Math.max(0, at - 34), at));

/** "from 80 % to ": a figure that stands where another ended. */
const FROM_ANOTHER =
  /\bfrom\b[^.;,a-z]*[cf%]?\s*(?:percent |degrees? )?(?:up |down )?to (?:about |around |maybe )?$/i;

const isDoubted = (text: string, { from, to }: Span): boolean => {
  const before = text.slice(Math.max(0, from - 30), from).replace(/^.*[.;!?,]\s/s, '');
  return (
    OF_ELSE.test(before.slice(-25)) ||
    (OF_PAST.test(before.replace(FROM_ANOTHER, '')) && !isWayTo(text, from)) ||
    PAST_BEHIND.test(text.slice(to, to + 40))
  );
};

const isOfCoat = (text: string, span: Span): boolean => {
  const { before, after } = clauseAround(text, span);
  return OF_COAT.test(`${before} ${after}`);
};

/** The figure that the readings speak for; where they part, the one that is `meant`, else the one of the coat or of now, else the surest. */
export const settledReading = (
  text: string,
  fact: FactName,
  readings: readonly Reading[],
  round: (value: number) => number,
  most: number,
  meant?: Reading,
): HeardFact[] => {
  const weighed = readings
    .map((reading) => (isDoubted(text, reading) ? { ...reading, sure: reading.sure * 0.6 } : reading))
    .sort((a, b) => b.sure - a.sure);
  const [first] = weighed;
  if (!first) return [];
  const parts = (one: Reading, other: Reading) => one.low > other.high || one.high < other.low;
  const near = weighed.filter(({ sure }) => sure >= first.sure - 0.2 && sure >= 0.7);
  const ofCoat = near.filter((one) => isOfCoat(text, one));
  // "90 by day and down to 60 at night" goes up again
  const ended = near.findLast(
    ({ from, to }) =>
      ENDED.test(text.slice(Math.max(0, from - 24), from)) && !AT_NIGHT.test(text.slice(to, to + 16)),
  );
  const night = meant && near.find(({ from }) => from === meant.from);
  const told = night ?? (ofCoat.length === 1 ? ofCoat[0] : ended);
  const best = told && near.some((one) => parts(one, told)) ? told : first;
  // By day and by night the coat lay in either.
  const isOfBoth = best !== told && near.some(({ to }) => AT_NIGHT.test(text.slice(to, to + 16)));
  const against = weighed
    .filter((one) => one.sure >= 0.6 && parts(one, best))
    .map(({ from, to }) => ({ from, to }));
  return [
    {
      fact,
      value: round((best.low + best.high) / 2),
      range: [round(best.low), round(Math.min(best.high, most))],
      sure: !against.length
        ? best.sure
        : best === told
          ? Math.min(best.sure, 0.75)
          : best.sure * (isOfBoth ? 0.7 : 0.8),
      rests: [{ from: best.from, to: best.to }],
      against,
    },
  ];
};
