import { hasNoClosedTime } from '#engine/calc/drying/label.ts';
import { toSquareFeetPerGallon } from '#engine/calc/units.ts';
import type { JobCard } from '#engine/model/job-card.ts';
import { sayShort } from '#engine/plain/say-span.ts';
import { writeNumber } from '../../shared/form/number.ts';
import { sayWholeDegrees } from '../../shared/say-units.ts';

const TIMES = [
  ['touch', 'dry to the touch after'],
  ['handle', 'handle or turn after'],
  ['recoat', 'recoat after'],
  ['no-coat', 'no coat on it from'],
  ['sand-if-beyond', 'sand if later than'],
  ['light-use', 'light use after'],
  ['cure', 'full cure after'],
] as const;

/** What the card holds of its can, in one line; nothing where it holds nothing. */
export const sayCan = ({ label }: Pick<JobCard, 'label'>, us: boolean): string => {
  const {
    minutes = {},
    limits,
    squareMetersPerLiter: covers,
    volumeSolids,
    coats,
    coatsPerDay,
  } = label ?? {};
  const degrees = limits?.celsius;
  const damp = limits?.relativeHumidity;
  return [
    ...TIMES.map(([milestone, words]) => {
      const span = minutes[milestone];
      if (milestone === 'no-coat' && span && hasNoClosedTime(span)) return 'a coat at any time';
      return span && `${words} ${sayShort(span)}`;
    }),
    degrees && `from ${sayWholeDegrees(degrees.from, us)} to ${sayWholeDegrees(degrees.to, us)}`,
    damp && `up to ${Math.round(damp.to * 100)} % humidity`,
    covers &&
      (us ? `${writeNumber(toSquareFeetPerGallon(covers), 0)} ft²/gal` : `${writeNumber(covers, 1)} m²/L`),
    volumeSolids && `${Math.round(volumeSolids * 100)} % solids`,
    coats && `coats: ${coats}`,
    coatsPerDay && `coats a day: ${coatsPerDay}`,
  ]
    .filter(Boolean)
    .join('; ');
};
