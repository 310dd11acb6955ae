import { drying } from '../drying.ts';
import { answer, type Range, type Result } from '../quantity.ts';
import type { Coat, Widening } from './coat.ts';
import type { Label } from './label.ts';

/**
 * From when a coat may be handled, minutes since it was laid, by the time that its can prints for it; nothing where it
 * prints none. Slowed as what it comes before or behind is: a time before the next coat as that, a later one as light use.
 */
export const handling = (coat: Coat): Result<Range<Widening>> | undefined => {
  const { label, product } = coat;
  const handle = label?.minutes.handle;
  if (!label || !handle) return undefined;
  const { open, touch, recoat } = label.minutes;
  const sooner = handle.to <= (recoat ?? product.figures.recoat).to;
  const minutes: Label['minutes'] = {
    ...(open && { open }),
    ...(touch && { touch }),
    ...(sooner
      ? { recoat: handle }
      : {
          ...(recoat && { recoat }),
          'light-use': { from: Math.max(handle.from, recoat?.from ?? 0), to: handle.to },
        }),
  };
  const dried = drying({ ...coat, label: { ...label, minutes } });
  if (!dried.ok) return dried;
  const time = dried.value.times.get(sooner ? 'recoat' : 'light-use');
  if (!time) throw new Error('a moment of the chain has no time');
  return answer(time);
};
