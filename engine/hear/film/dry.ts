import type { Knowledge } from '../../knowledge/knowledge.ts';
import type { Family } from '../../model/family.ts';
import { HOUR_MIN } from '../../plain/time.ts';
import type { DryHours } from './dry-hours.ts';

/** The slow end of the times of the products of each kind, hours at 23 °C and 50 %. */
export const dryHoursOf = (known: Knowledge): DryHours => {
  const hours: Partial<Record<Family, readonly [number, number]>> = {};
  for (const { family, ...product } of known.products) {
    const [touch = 0, recoat = 0] = hours[family] ?? [];
    hours[family] = [
      Math.max(touch, product['touch-minutes'][1] / HOUR_MIN),
      Math.max(recoat, product['recoat-hours'][1]),
    ];
  }
  return hours;
};
