/** What a reply's link carries to a form: what was told for sure, by the names of the form. Letters are invented. */
import { describe, expect, it } from 'vitest';
import { carriedTo } from '#engine/hear.ts';
import { heard, hearing } from '../hearing.ts';

const carried = (page: string, text: string) => carriedTo(hearing.waits, page, heard(text));

describe('a link to the clock', () => {
  it('carries the can, the coat, the hours and the air', () =>
    expect(
      carried(
        'page/clock',
        'brushed the second coat of oil based polyurethane 5 hours ago, 60 °F and 70 % humidity',
      ),
    ).toEqual({
      product: 'oil-based-polyurethane',
      coat: '2',
      tool: 'brush',
      when: 'ago',
      ago: '300',
      units: 'us',
      air: '60',
      humidity: '70',
    }));
  it('leaves the air in the unit in which it was told', () =>
    expect(carried('page/clock', 'shellac at 17 °C this evening')).toMatchObject({
      product: 'shellac',
      units: 'metric',
      air: '17',
    }));
  it('takes degrees without a unit as the ear does', () =>
    expect(carried('page/clock', 'two litres of shellac, 16 degrees this evening')).toMatchObject({
      units: 'metric',
      air: '16',
    }));
  it('names no can where the words leave open of which kind it is', () =>
    expect(carried('page/clock', 'poly, laid an hour ago')).not.toHaveProperty('product'));
  it('takes the slowest can of a kind that is told, and none of another kind', () => {
    const slowest = (text: string) => carried('page/clock', text)['product'];
    expect(slowest('lacquer, laid an hour ago')).toBe('brushing-lacquer');
    expect(slowest('two chairs, oil-based, laid an hour ago')).toBe('alkyd-varnish');
    expect(slowest('water-based clear, laid an hour ago')).toBe('water-based-polyurethane');
  });
  it('carries nothing where nothing is told', () =>
    expect(carried('page/clock', 'how long does it take')).toEqual({}));
});

it('carries the piece to the choice of a top coat and to the plan, and nothing to any other page', () => {
  const text = 'what goes on a cedar tray stained dark, for food';
  expect(carried('page/which-coat', text)).toMatchObject({ base: 'stain' });
  expect(carried('page/schedule', text)).toMatchObject({ base: 'stain' });
  expect(carried('lesson/wet-edge', text)).toEqual({});
  expect(carried('constructor', text)).toEqual({});
});
