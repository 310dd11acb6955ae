import { LEAST_MARGIN_CELSIUS } from '../../calc/dew-point-margin.ts';
import { dryFilmMicrometers, wetFilmMicrometers } from '../../calc/film.ts';
import { toCelsius, toMicrometers, toMils } from '../../calc/units.ts';
import { filled } from '../../plain/filled.ts';
import type { Lexicon } from '../words/lexicon.ts';
import type { Span } from '../words/words.ts';
import type { TableAnswer } from './layers-asked.ts';

type Tables = Lexicon['tables'];
/** A figure as it is told, and in the unit of the engine. */
type Figure = Span & { readonly value: number; readonly isMetric: boolean };

const DEGREES = String.raw`(-?\d{1,3}(?:\.\d+)?)\s*(?:°|º|degrees?|deg\.?)?\s*(f|c|fahrenheit|celsius)?\b`;
const DEW = new RegExp(String.raw`\bdew ?point\b[^.;?!\d]{0,30}?${DEGREES}`, 'i');
/** What stands where the coat will lie: a part of the piece, or what reads one. */
const SURFACE = new RegExp(
  String.raw`\b(?:surface|wood|panel|board|slab|top|door|table|bench|desk|chair|piece|steel|metal|glass)s?\b(?:\s+\w+){0,2}?\s+(?:reads?|reading|measures?|measured|is|was|at|shows?)\s+(?:about |around |only )?${DEGREES}`,
  'i',
);

const figureOf = (found: RegExpExecArray | null, isMetricElse: boolean): Figure | undefined => {
  if (!found) return undefined;
  const [said, number, unit] = found;
  const isMetric = unit === undefined ? isMetricElse : /^c/i.test(unit);
  const value = isMetric ? Number(number) : toCelsius(Number(number));
  return { from: found.index, to: found.index + said.length, value, isMetric };
};

const degreesApart = (celsius: number, isMetric: boolean): string => {
  const [metric, us] = [Math.round(celsius), Math.round(celsius * 1.8)];
  return isMetric ? `${metric} °C (${us} °F)` : `${us} °F (${metric} °C)`;
};

/** Kinds whose solvent leaves so fast that it chills the film. */
const FAST = ['shellac', 'lacquer'];

/** Whether a surface that was measured may be coated beside the dew point that is told. */
export const dewPointAsked = (
  { dew: says }: Tables,
  text: string,
  families: readonly string[],
): TableAnswer | undefined => {
  const dew = figureOf(DEW.exec(text), /\d\s*(?:°|º)?\s*c(?:elsius)?\b/i.test(text));
  const surface = dew && figureOf(SURFACE.exec(text), dew.isMetric);
  if (!dew || !surface) return undefined;
  const gap = surface.value - dew.value;
  const said = gap < 0 ? 'no degrees at all' : degreesApart(gap, dew.isMetric);
  const verdict = filled(gap < LEAST_MARGIN_CELSIUS ? says.no : says.yes, { gap: said });
  const answer = families.some((family) => FAST.includes(family)) ? `${verdict} ${says.fast}` : verdict;
  return { asked: { answer, lead: says.lead, page: says.page }, isWait: true, asking: [dew, surface] };
};

const FILM = String.raw`(\d{1,4}(?:\.\d+)?)[\s-]*(mils?|microns?|micrometers?|micrometres?|µm|um)\b`;
const WET = new RegExp(
  String.raw`\bwet(?: film| coat)?(?: thickness)?(?: (?:of|is|was|at|measures?|reads?))?[^.;?!\d]{0,12}${FILM}|${FILM}[\s-]*(?:of )?wet\b`,
  'i',
);
const DRY = new RegExp(
  String.raw`\bdry(?: film| coat)?(?: thickness)?(?: (?:of|is|at))?[^.;?!\d]{0,12}${FILM}|${FILM}[\s-]*(?:of )?dry\b`,
  'i',
);
const SOLIDS =
  /(\d{1,2}(?:\.\d+)?)\s*(?:%|percent|per cent)\s*(?:volume )?solids\b|\bsolids(?: by volume)?(?: (?:of|is|are|at|content))*\s*(\d{1,2}(?:\.\d+)?)\s*(?:%|percent|per cent)/i;

const filmIn = (pattern: RegExp, text: string): Figure | undefined => {
  const found = pattern.exec(text);
  const [number, unit] = [found?.[1] ?? found?.[3], found?.[2] ?? found?.[4]];
  if (!found || number === undefined || unit === undefined) return undefined;
  const isMetric = !/^mil/i.test(unit);
  const value = isMetric ? Number(number) : toMicrometers(Number(number));
  return { from: found.index, to: found.index + found[0].length, value, isMetric };
};

const sayFilm = (micrometers: number, isMetric: boolean): string => {
  const mils = `${Number(toMils(micrometers).toFixed(1))} mil`;
  const metric = `${Math.round(micrometers)} µm`;
  return isMetric ? `${metric} (${mils})` : `${mils} (${metric})`;
};

/** As near as that, as a share, no gauge tells one wet film from another. */
const NEAR = 0.15;

/** What a wet film that was measured leaves, and whether that is what the can asks for; or how thick a dry one is laid wet. */
export const filmAsked = ({ film: says }: Tables, text: string): TableAnswer | undefined => {
  // Hardly any text names solids: the others cost no search.
  const solids = SOLIDS.exec(text);
  if (!solids) return undefined;
  const share = Number(solids[1] ?? solids[2]) / 100;
  const percent = String(Number((share * 100).toFixed(1)));
  const [wet, dry] = [filmIn(WET, text), filmIn(DRY, text)];
  const figures = [wet, dry, { from: solids.index, to: solids.index + solids[0].length }];
  const asked = (answer: string): TableAnswer => ({
    asked: { answer, lead: says.lead, page: says.page },
    isWait: true,
    asking: figures.flatMap((one) => one ?? []),
  });
  const aim = dry && wetFilmMicrometers(dry.value, share);
  if (!wet)
    return dry && aim?.ok
      ? asked(
          filled(says.asks, {
            dry: sayFilm(dry.value, dry.isMetric),
            solids: percent,
            wet: sayFilm(aim.value, dry.isMetric),
          }),
        )
      : undefined;
  const left = dryFilmMicrometers(wet.value, share);
  if (!left.ok) return undefined;
  const say = (micrometers: number): string => sayFilm(micrometers, wet.isMetric);
  const leaves = filled(says.leaves, { wet: say(wet.value), solids: percent, dry: say(left.value) });
  if (!dry || !aim?.ok) return asked(leaves);
  const off = wet.value / aim.value - 1;
  const verdict = Math.abs(off) <= NEAR ? says.fits : off > 0 ? says.heavy : says.thin;
  return asked(
    `${leaves} ${filled(verdict, { target: say(dry.value), aim: say(aim.value), share: String(Math.round(Math.abs(off) * 100)) })}`,
  );
};
