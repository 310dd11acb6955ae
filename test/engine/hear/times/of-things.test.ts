/** Times of things, cans and tools, and such as may be that of the coat: pairs of sentences of our own, the time in brackets. */
import { describe, expect, it } from 'vitest';
import { isElseIn } from '../else-times.ts';

describe.each<[what: string, other: readonly string[], coat: readonly string[]]>([
  [
    'tape, and what stood there',
    [
      'the tape was on [two days]',
      'masked it [two days]',
      'a mug stood there [two hours]',
      'a pan sat there [a minute]',
      'laid a pan on it for [a minute]',
      'soaked it [an hour]',
      'clamped it [a day]',
      'it sat with a mug on it [a day]',
    ],
    [
      'it sat [six days]',
      'they stood [a month]',
      'sat [six days] after the last coat',
      'laid it on [last night]',
      'the poly sat [two days]',
      'it stood [a month] since the final one',
    ],
  ],
  [
    'what was set down',
    [
      'left a wet glass on it [overnight]',
      'set a mug down [this morning]',
      'forgot a pizza on it [last night]',
      'parked a plant there [a week]',
    ],
    ['left the poly on it [overnight]', 'the glass coat dried [overnight]', 'a glass, left it [overnight]'],
  ],
  [
    'a spill',
    ['spilled vodka on it [two minutes] ago', 'it splashed [a minute] ago'],
    ['spilled it, and brushed it [two minutes] ago', 'spilled some and brushed poly on [two minutes] ago'],
  ],
  [
    'what was put down',
    ['put down a book for [ten minutes]', 'I pressed down [a minute]'],
    ['put poly down for [ten minutes]', 'put it on for [ten minutes]'],
  ],
  [
    'the can and its age',
    [
      'the can I opened [two years] ago',
      'mixed in a jar [three weeks] ago',
      'flakes kept [a year]',
      'a [ten year] old can',
      'used [two year] old poly',
      'using [two year] old poly',
    ],
    [
      'the can, opened it [two years] ago',
      'coat it, [three weeks] ago',
      '[two year] old poly',
      'the can here [two years] ago',
    ],
  ],
  [
    'raw wood',
    ['the boards were drying [three years]', 'a slab stored [a year]', 'lumber dried [a year]'],
    ['the boards [three years] ago', 'the coat was drying [three years]', 'the boards, drying [three years]'],
  ],
  [
    'a tool',
    [
      'held the heat gun on it [five minutes]',
      '[twenty minutes] in a pressure pot',
      'under a lamp [ten min]',
      'a hair dryer [thirty seconds]',
    ],
    [
      'held the heat gun on it [five days]',
      'my spray gun [five minutes] ago',
      'sprayed it with a gun [five minutes] ago',
      'it is [ten minutes]',
    ],
  ],
])('a time of %s', (_, other, coat) => {
  it.each(other)('is none of the coat: %s', (text) => {
    expect(isElseIn(text)).toBe(true);
  });
  it.each(coat)('and here it may be: %s', (text) => {
    expect(isElseIn(text)).toBe(false);
  });
});
