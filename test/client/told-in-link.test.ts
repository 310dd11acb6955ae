/** What a link carries to the clock and to the plan: what the form knows, cut to what a field holds, and no more. */
import { expect, it } from 'vitest';
import { toldInLink as toClock } from '../../site/client/clock/draft.ts';
import { toldInLink as toPlan } from '../../site/client/schedule/draft.ts';

it('fills the fields of the clock that a reply may tell of, and no others', () => {
  expect(toClock('#product=shellac&air=60&units=us&piece=Mine&label-touch=1&constructor=x')).toEqual({
    product: 'shellac',
    air: '60',
    units: 'us',
  });
  expect(toClock('#label-recoat=24&label-air=77&units=us')).toEqual({
    'label-recoat': '24',
    'label-air': '77',
    units: 'us',
  });
  expect(toClock('')).toBeUndefined();
  expect(toClock('#coats')).toBeUndefined();
  expect(toClock(`#coat=${'9'.repeat(100_000)}`)?.['coat']?.length).toBeLessThan(10_000);
});

it('fills the fields of the plan, of a link that is no whole plan, too', () => {
  expect(toPlan('#kind=tabletop&air=61&units=us&nobody=x&toString=y')).toEqual({
    kind: 'tabletop',
    air: '61',
    units: 'us',
  });
  expect(toPlan('#plan')).toBeUndefined();
});
