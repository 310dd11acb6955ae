/** A coat goes into the form and comes out as it was, whatever the form rounds; what is touched is changed, no more. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { laidCoatOf } from '#engine/jobs.ts';
import { coatIn } from '../../site/client/clock/draft.ts';
import { corrected, draftOf } from '../../site/client/clock/refill.ts';
import { cardCoatOf } from '../../site/client/jobs/parts/coats.tsx';
import type { Draft } from '../../site/client/shared/form/form.ts';
import { anyCoat, card, coat, START } from '../engine/jobs/cards.ts';

/** What is read once some fields of a filled form were typed over. */
const typed = (one: ReturnType<typeof coat>, us: boolean, over: Draft) => {
  const was = { ...laidCoatOf(card({ coats: [one] }), one), label: one.label as never };
  const units = us ? 'us' : 'metric';
  const filled = { ...draftOf(was, units), units };
  const draft: Draft = { ...filled, ...over };
  const read = coatIn(draft, START).coat;
  const touched = (...names: readonly string[]) => names.some((name) => name in over);
  return cardCoatOf(corrected(was, read, touched));
};

it('loses nothing where nothing is touched, in either units', () => {
  fc.assert(
    fc.property(anyCoat, fc.boolean(), (one, us) => {
      const { note: _note, ...rest } = one;
      expect(typed(rest, us, {})).toEqual(rest);
    }),
  );
});

it('changes what is typed over, and that alone', () => {
  const label = { minutes: { open: { from: 5, to: 9 }, recoat: { from: 100, to: 100 } }, coats: 3 };
  const one = coat({ celsius: 21.37, label, amount: { milliliters: 101.3, squareMeters: 1.2345 } });
  // 50 °F is 10 °C by definition.
  expect(typed(one, true, { air: '50' })).toEqual({ ...one, celsius: 10 });
  expect(typed(one, false, { humidity: '65' })).toEqual({ ...one, relativeHumidity: 0.65 });
  expect(typed(one, false, { area: '2' }).amount).toEqual({ milliliters: 101.3, squareMeters: 2 });
  expect(typed(one, false, { 'label-recoat': '3', 'label-recoat-to': '4' }).label).toEqual({
    coats: 3,
    minutes: { open: { from: 5, to: 9 }, recoat: { from: 180, to: 240 } },
  });
  expect(typed(one, false, { 'label-handle': '2' }).label?.minutes).toEqual({
    ...label.minutes,
    handle: { from: 120, to: 120 },
  });
  expect(typed(one, false, { hardener: 'isocyanate' })).toEqual({ ...one, hardener: 'isocyanate' });
  const hardened = { ...one, hardener: 'acid' as const };
  expect(typed(hardened, false, { air: '21.37' })).toEqual({ ...hardened, celsius: 21.37 });
  expect(typed(hardened, false, { hardener: '' })).toEqual(one);
  expect(typed(one, false, { 'label-recoat': '', tool: '' })).toEqual({
    ...Object.fromEntries(Object.entries(one).filter(([key]) => key !== 'applicator')),
    label: { coats: 3, minutes: { open: { from: 5, to: 9 } } },
  });
});
