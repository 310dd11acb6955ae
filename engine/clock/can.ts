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
export const askAboutLabel = (product: ClockProduct, label: Label | undefined): readonly LabelAsk[] => {
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
        says: `${product.name}: the ${MILESTONE_WORDS[milestone]} is ${sayShort(usual)} on most cans, and you typed ${sayShort(told)}. Is it this can, and this unit?`,
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
  coat: LaidCoat,
  { moments }: Running,
  units: Units = 'metric',
): readonly LabelHere[] => {
  const climate = coat.label?.climate ?? REFERENCE_CLIMATE;
  const can = `${sayDegrees(climate.celsius, units)}, ${Math.round(climate.relativeHumidity * 100)} %`;
  const where = coat.label?.climate
    ? `at the can’s ${can}`
    : `at ${can}, since the can’s own air is not told`;
  return PRINTED.flatMap((milestone) => {
    const told = coat.label?.minutes[milestone];
    const moment = moments[milestone];
    if (!told || !moment) return [];
    const here = {
      from: (moment.from - coat.laidAt) / MINUTE_MS,
      to: (moment.to - coat.laidAt) / MINUTE_MS,
    };
    const air = sameClimate(climate, climateOf(coat)) ? 'with this film' : 'in this air';
    const says = changed(told, here)
      ? `Your can’s ${sayShort(told)} (${where}) ${told.to > told.from ? 'become' : 'becomes'} ${sayShort(here)} ${air}.`
      : `By your can: ${sayShort(told)}.`;
    return [{ milestone, told, here, says }];
  });
};
