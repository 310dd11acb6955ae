import type { Span } from '../plain/span.ts';
import { MINUTE_MS } from '../plain/time.ts';

/** When a coat is dry to the touch and bears another, and from when till when it bears none again, epoch milliseconds. */
export type Bears = { readonly touch: Span; readonly recoat: Span; readonly 'no-coat'?: Span | undefined };

/** Less than this is no time to lay a coat in, nor enough to be late by. Our own choice. */
export const LEAST_TO_LAY = 15 * MINUTE_MS;

/**
 * From when till when a coat goes on before the hours in which none does; nothing where it is not ready before them. It
 * begins once the coat below is surely ready, or, where too little time is left then, once it may be; never before it is
 * surely dry to the touch.
 */
export const firstWindow = ({ touch, recoat, 'no-coat': closed }: Bears): Span | undefined => {
  if (!closed) return undefined;
  const sure = recoat.to + LEAST_TO_LAY <= closed.from;
  const from = sure ? recoat.to : Math.max(recoat.from, touch.to);
  return from + LEAST_TO_LAY <= closed.from ? { from, to: closed.from } : undefined;
};

/** Ready for another for good: surely, and past the hours in which none goes on. */
export const readyForGood = ({ recoat, 'no-coat': closed }: Omit<Bears, 'touch'>): Span =>
  closed ? { from: Math.max(recoat.from, closed.to), to: Math.max(recoat.to, closed.to) } : recoat;

/** Whether a coat goes on at a moment: not before `from`, or no later than `until`, where that ends. */
export type NextCoat =
  | { readonly may: true; readonly until?: number }
  /** `closed`: the time for it is over, and comes again. */
  | { readonly may: false; readonly from: Span; readonly closed: boolean };

export const nextCoatAt = (bears: Bears, at: number): NextCoat => {
  const ready = readyForGood(bears);
  if (at >= ready.to) return { may: true };
  const window = firstWindow(bears);
  if (window && at < window.to)
    return at >= window.from
      ? { may: true, until: window.to }
      : { may: false, from: { from: bears.recoat.from, to: window.from }, closed: false };
  return { may: false, from: ready, closed: bears['no-coat'] !== undefined };
};

/** When the next coat goes on: before the hours in which none does, while that lasts, else for good. */
export const nextCoatSpan = (bears: Bears, now: number): Span => {
  const window = firstWindow(bears);
  return window && now < window.to ? window : readyForGood(bears);
};
