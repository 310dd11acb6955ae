import { drying } from '../drying.ts';
import { answer, type Range, type Result } from '../quantity.ts';
import type { Coat, Widening } from './coat.ts';
import { hasNoClosedTime, type Label } from './label.ts';

/**
 * From when till when no coat goes on over this one, minutes since it was laid, by its can or its kind; nothing where one
 * goes on at any time. It begins no later than is printed, and sooner where warmth or a thin film hardens it sooner; it
 * ends no sooner than is printed, and later in air that slows it, as what comes after the next coat is slowed.
 */
export const noCoat = (coat: Coat): Result<Range<Widening>> | undefined => {
  const { label, product } = coat;
  const printed = label?.minutes['no-coat'] ?? product.figures['no-coat'];
  if (!printed || hasNoClosedTime(printed)) return undefined;
  const { from: shut, to: open } = printed;
  const told = label?.minutes ?? {};
  const { open: workable, touch, recoat } = told;
  const minutes: Label['minutes'] = {
    ...(workable && { open: workable }),
    ...(touch && { touch }),
    ...(recoat && { recoat }),
    'sand-if-beyond': { from: Math.max(shut, recoat?.from ?? 0), to: Math.max(open, recoat?.to ?? 0) },
    'light-use': { from: Math.max(open, recoat?.from ?? 0), to: Math.max(open, recoat?.to ?? 0) },
  };
  const dried = drying({ ...coat, label: { ...label, minutes } });
  if (!dried.ok) return dried;
  const [closes, opens] = [dried.value.times.get('sand-if-beyond'), dried.value.times.get('light-use')];
  if (!closes || !opens) throw new Error('a time that was given has no moment');
  return answer({
    ...opens,
    from: Math.min(shut, closes.from),
    to: Math.max(open, opens.to),
  });
};
