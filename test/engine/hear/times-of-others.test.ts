/**
 * Whose time it is: of the coat, or of a label, a thing, a person, a layer below. Pairs of sentences of our own; the time is
 * in brackets, and plain from the words around it.
 */
import { describe, expect, it } from 'vitest';
import type { Match } from '#engine/hear/match.ts';
import { isOfOthers } from '#engine/hear/of-others.ts';
import { isElse } from '#engine/hear/other-times.ts';
import { marked } from './marked.ts';

/** What names a layer below, a label or a kind of top coat, as the ear would find it. */
const SENSES: readonly (readonly [RegExp, sense: string])[] = [
  [/^(stain|stained|primer|primed|paint|painted|glaze|sealer)$/, 'cue other-layer'],
  [/^(says|said|label)$/, 'cue other-time'],
  [/^(poly|varnish|lacquer|shellac)$/, 'fact family oil-based'],
  [/^(sticky|tacky|soft)$/, 'fact stage setting'],
];
const isElseIn = (text: string): boolean => {
  const { words, from, to } = marked(text);
  const matches = words.flatMap(({ word }, at): Match[] =>
    SENSES.flatMap(([is, sense]) => {
      const [kind = '', ...of] = sense.split(' ');
      return is.test(word) ? [{ sense, kind, of, from: at, to: at + 1, size: 1 }] : [];
    }),
  );
  return isElse(words, matches, from, to);
};

describe.each<[what: string, other: readonly string[], coat: readonly string[]]>([
  [
    'the label',
    ['the can says [four hours]', 'label time [four hours]'],
    ['it has been [four hours]. The can says so', '[two weeks] of waiting as the maker said'],
  ],
  [
    'what comes between coats',
    [
      'every [four hours] a coat',
      'a coat each [day]',
      'coats [four hours] apart',
      '[four hours] between',
      'between [four hours]',
      'per [day]',
      '[four hours] till the next',
      '[four hours] until then',
      '[a week] before I leave',
    ],
    [
      '[four hours] of drying',
      '[a week] before we used it',
      '[a week] before it was moved',
      'the lot, each, [four hours] now',
    ],
  ],
  [
    'all the coats',
    [
      'three coats over [two days]',
      'three coats within [two days]',
      'two coats in [a day]',
      'coats across [two days], coats and all',
    ],
    ['three days over [two days]', 'three coats, [two days] ago'],
  ],
  [
    'the first coat',
    [
      '[four hours] after the first',
      '[a day] after the stain',
      '[a day] after priming',
      '[a day] after my previous one',
    ],
    ['[four hours] after the last', '[a day] after it', '[a day] later the first'],
  ],
  [
    'so many a day',
    ['one [a day]', 'two coats [a day]', 'twice [a day]', '3 [a day]'],
    ['then [a day]', 'one, [a day] later', 'it sat [a day] then'],
  ],
  [
    'the next coat',
    [
      'after [12 hours] I put on a coat',
      'after [12 hours] we brushed it',
      'after [12 hours] then he sprayed it',
    ],
    ['after [12 hours] I saw it', 'after [12 hours] it was dull', '[12 hours] later I brushed it'],
  ],
  [
    'the wiping',
    ['wiped off after [fifteen minutes]', 'buffed after [an hour]', 'rubbed it after [ten min]'],
    [
      'wiped off after [two days]',
      'dry after [fifteen minutes]',
      'wiped, dull after [an hour]',
      'wiped off for [fifteen minutes]',
    ],
  ],
  [
    'how fast it dried',
    ['it dried in [four hours]', 'hard in [a day]', 'it sets in [an hour]', 'dry in [a day]'],
    [
      'never dried in [a week]',
      'it has not dried in [a week]',
      'it wont dry in [a week]',
      'dried for [a day]',
      'nothing in [a week]',
    ],
  ],
  [
    'what is asked or wanted',
    [
      'is [24 hours] enough',
      'it needs [a week]',
      'takes [a day]',
      'another [two days]',
      'give it, give [a day]',
      'wait [a day]',
      'requires [a day]',
      'next [week]',
    ],
    [
      '[24 hours], enough',
      'let it cure [a month]',
      'left it to cure [a month]',
      'gave it another [day]',
      'cured [a month]',
    ],
  ],
  [
    'how it was then',
    [
      'it was dry [last week]',
      'it was fine [a month]',
      'looked great [last week]',
      'has been smooth [a year]',
    ],
    [
      'it was dry [a week] ago',
      'it was fine for [a month]',
      'was fine [a day] later',
      'it is dry [last week]',
      'fine, it was, [last week]',
    ],
  ],
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
  [
    'a body',
    ['[an hour] later my chest felt tight', '[an hour] later I had a headache', 'my eyes hurt [an hour]'],
    ['[an hour] later my poly had no eyes', '[an hour] later the chest was dull', '[an hour] later the eyes'],
  ],
  [
    'myself',
    [
      '[three months] ive been at it',
      '[a week] I have been sanding',
      'I was gone [six weeks]',
      'we were away [a week]',
    ],
    [
      '[three months] it has been on',
      'it sat [six weeks]',
      'gone, it is [a week]',
      '[a week] I have seen it',
    ],
  ],
  [
    'a person',
    [
      'my son is [two years] old',
      'a [three year] old',
      'for my nephew, [18 months] old',
      'a dog [two years] old',
      'my [two week] old',
    ],
    [
      'a [one year] old table',
      'a [three year] old table',
      'a [three year] old poly',
      'the poly is [two years] old',
      'my table, [18 months] old',
      'my nephew. The poly is [18 months] old',
    ],
  ],
  [
    'what somebody knows and does',
    [
      '[20 years] of poly',
      'ive used it for [years]',
      'we have sprayed for [years]',
      'in business [20 years]',
      'married [ten years]',
      'never had this in [20 years]',
      'never saw it in [a year]',
      'usually [a day]',
      'a painter [ten years]',
    ],
    [
      '[20 years] of use',
      '[two weeks] of drying',
      'I used it [two years] ago',
      'it held for [years]',
      'never dried in [a year]',
      'had this [a year]',
    ],
  ],
  [
    'somebody else',
    [
      'my buddy did his bar and [two days] later it was gummy',
      'one of them did it [two days] ago',
      'someone did it [two days] ago',
    ],
    [
      'my buddy did my bar and [two days] later it was gummy',
      'he did it, and I saw it [two days] ago',
      'one of them did mine [two days] ago',
      'my bar was done [two days] ago',
    ],
  ],
  [
    'the old film',
    [
      'a fresh coat over it. I laid that old finish [15 years] ago',
      'another coat. My old varnish [15 years] ago',
    ],
    [
      'a fresh coat over it. I laid that finish [15 years] ago',
      'I laid that old finish [15 years] ago',
      'a fresh start. I laid that old finish [15 years] ago',
    ],
  ],
  [
    'another house',
    ['at our old house was one [two years] ago', 'in the last apartment had it [a year]'],
    [
      'at our house was one [two years] ago',
      'the old house [two years] ago',
      'at our old house was one. It is [two years] old',
    ],
  ],
  [
    'the layer below',
    [
      'the stain dried for [three days], then poly',
      'poly [three days] after the stain',
      'over the glaze, which had dried [a day]',
      'the primer sat [a week], poly on top',
      'lacquer over stain after [three hours]',
      'shellac over stain [three hours] old',
      'shellac over [two hour] old stain',
    ],
    [
      'the poly dried for [three days]',
      'poly over stain, [three days] ago',
      'stain, then poly [three days] ago',
      'poly went milky [an hour] ago over the paint',
      'shellac [three hours] old over stain',
      'shellac and poly beside stain [three hours] old, lacquer',
      'the paint is sticky [two days] later',
      'the poly itself [two days] later',
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

describe('what others did to things of their own', () => {
  const of = (text: string): boolean => {
    const { words, from, to } = marked(text);
    return isOfOthers(words, from, to);
  };
  it.each([
    'my buddy put [six coats] on his',
    'the old guy used [shellac] on his table',
    'my uncle swears by [oil]',
    'most folks do [two coats]',
    'he put [six coats] on his own',
    'they use [wax] on theirs',
    'everyone uses [oil]',
    'a friend always likes [oil]',
    'my neighbor did hers in [lacquer]',
    'he [sprayed] the fence',
    'we [painted] walls',
    'I [rolled] the ceiling',
    'one of them put [shellac] on it',
    'someone put [shellac] on it',
    'another had [wax] there',
  ])('%s', (text) => {
    expect(of(text)).toBe(true);
  });
  it.each([
    'my buddy put [six coats] on my table',
    'my buddy, and I put [six coats] on his',
    'the guy said it was [oil]',
    'my uncle gave me [oil]',
    'I put [six coats] on his',
    'he [sprayed] my fence',
    'he [sprayed] the dresser',
    'he [saw] the fence',
    'one of them put [shellac] on mine',
    'one of my own had [shellac]',
    'someone of us put [shellac] on ours',
    'my friend brushed [shellac]',
    'the man put [six coats] on his',
    'but his is fine because I used [oil]',
  ])('%s: ours, or nobody’s', (text) => {
    expect(of(text)).toBe(false);
  });
});
