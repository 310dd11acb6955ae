import { REFERENCE_CLIMATE, sameClimate } from '../calc/drying/climate.ts';
import { dryingOf } from '../calc/drying/figures.ts';
import type { Label } from '../calc/drying/label.ts';
import {
  MILESTONE_WORDS,
  MILESTONES,
  type Milestone,
  PRINTED,
  type Printed,
} from '../calc/drying/milestone.ts';
import { sayDegrees } from '../calc/say-problem.ts';
import type { Units } from '../calc/units.ts';
import type { ClockWords } from '../model/clock-words.ts';
import { filled } from '../plain/filled.ts';
import { sayShort } from '../plain/say-span.ts';
import type { Span } from '../plain/span.ts';
import { MINUTE_MS } from '../plain/time.ts';
import { type ClockProduct, climateOf, type LaidCoat } from './coat.ts';
import type { Running } from './reading.ts';

/** Cans of one kind differ, but not by so many times from what their kind does. Our own choice. */
const FAR = 2;

/** A time that was typed from the can and lies far from all cans of this kind: to be asked about, not refused. */
export type LabelAsk = {
  readonly milestone: Milestone;
  /** Minutes. */
  readonly told: Span;
  readonly usual: Span;
  readonly says: string;
};

/** The times of a label to ask about: less than half of the soonest or more than twice the latest of their kind. */
export const askAboutLabel = (
  { can }: Pick<ClockWords, 'can'>,
  product: ClockProduct,
  label: Label | undefined,
): readonly LabelAsk[] => {
  const { figures } = dryingOf(product);
  return MILESTONES.flatMap((milestone) => {
    const told = label?.minutes[milestone];
    const usual = figures[milestone];
    if (!told || !usual) return [];
    const sooner = told.to * FAR < usual.from;
    if (!sooner && told.from <= usual.to * FAR) return [];
    return [
      {
        milestone,
        told,
        usual,
        says: filled(can.far, {
          product: product.name,
          moment: MILESTONE_WORDS[milestone],
          usual: sayShort(usual),
          typed: sayShort(told),
        }),
      },
    ];
  });
};

/** What a time on the can becomes in this air and film. */
export type LabelHere = {
  readonly milestone: Printed;
  /** Minutes since the coat was laid, on the can and here. */
  readonly told: Span;
  readonly here: Span;
  readonly says: string;
};

const changed = (told: Span, here: Span): boolean =>
  Math.abs(here.from - told.from) > 0.01 * told.from || Math.abs(here.to - told.to) > 0.01 * told.to;

/** Each time of the can with what becomes of it here; unchanged where the can's own air and film are at hand. */
export const labelHere = (
  { can }: Pick<ClockWords, 'can'>,
  coat: LaidCoat,
  { moments }: Running,
  units: Units = 'metric',
): readonly LabelHere[] => {
  const climate = coat.label?.climate ?? REFERENCE_CLIMATE;
  const air = `${sayDegrees(climate.celsius, units)}, ${Math.round(climate.relativeHumidity * 100)} %`;
  const where = filled(can[coat.label?.climate ? 'in-its-air' : 'in-usual-air'], { air });
  return PRINTED.flatMap((milestone) => {
    const told = coat.label?.minutes[milestone];
    const moment = moments[milestone];
    if (!told || !moment) return [];
    const here = {
      from: (moment.from - coat.laidAt) / MINUTE_MS,
      to: (moment.to - coat.laidAt) / MINUTE_MS,
    };
    const by = can[sameClimate(climate, climateOf(coat)) ? 'by-film' : 'by-air'];
    const parts = { can: sayShort(told), where, here: sayShort(here), by };
    const says = changed(told, here)
      ? filled(can[told.to > told.from ? 'become' : 'becomes'], parts)
      : filled(can.same, { can: parts.can });
    return [{ milestone, told, here, says }];
  });
};
