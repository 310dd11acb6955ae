/** Sentences of our own, invented; what each tells is plain from its words. */
import { describe, expect, it } from 'vitest';
import { SURE } from '#engine/hear.ts';
import { STAGES, type Stage } from '#engine/model/stage.ts';
import { fact, heard, sign } from './hearing.ts';

const cases: [text: string, name: string, value: string | number | undefined][] = [
  ['oil based poly on my desk', 'family', 'oil-based'],
  ['two coats of water based polyurethane', 'family', 'water-based'],
  ['water based lacquer from a gun', 'family', 'water-lacquer'],
  ['I padded on shellac', 'family', 'shellac'],
  ['dark wax over chalk paint', 'family', 'wax'],
  ['boiled linseed oil stayed gummy', 'family', 'oil'],
  ['oil based stain, now water based poly', 'family', 'water-based'],
  ['polyurethane over shellac', 'family', undefined],
  ['should I use lacquer on it', 'family', undefined],
  ['it is not shellac', 'family', undefined],
  ['it stood on wax paper', 'family', undefined],
  ['clear over chalk paint', 'base', 'chalk-paint'],
  ['oil based stain under it', 'base', 'stain'],
  ['satin poly', 'sheen', 'satin'],
  ['poly over navy', 'base-tone', 'dark'],
  ['sprayed with an hvlp', 'applicator', 'spray-gun'],
  ['from a rattle can', 'applicator', 'aerosol'],
  ['third coat went on', 'coat-number', 3],
  ['3 coats of poly', 'coat-number', 3],
  ['I want to put on a second coat', 'coat-number', undefined],
  ['brushed it 2 hrs ago', 'hours-since-coat', 2],
  ['coat laid last night', 'hours-since-coat', 12],
  ['bubbles in my clear coat this morning, coated a table last night', 'hours-since-coat', 12],
  ['still tacky after three weeks', 'hours-since-coat', 504],
  ['the can says dry in 6 hours', 'hours-since-coat', undefined],
  ['stained it two days ago', 'hours-since-coat', undefined],
  ['two days after the stain I brushed on poly', 'hours-since-coat', undefined],
  ['it was 55F in there', 'air-celsius', 12.8],
  ['about 20 °C', 'air-celsius', 20],
  ['shop at 70 degrees', 'air-celsius', 21.1],
  ['brushed in a cold garage', 'air-celsius', 10],
  ['85% humidity', 'relative-humidity', 0.85],
  ['humidity was 40', 'relative-humidity', 0.4],
  ['a muggy day', 'relative-humidity', 0.8],
  ['baby crib', 'piece', 'crib'],
  ['a dresser from 1950', 'age', 'before-1993'],
  ['just brushed it on', 'stage', 'wet'],
  ['still sticky', 'stage', 'setting'],
  ['it is dry to the touch', 'stage', 'dry-to-touch'],
  ['brushed the coat ten minutes ago', 'stage', 'wet'],
  ['wax is still sticky after 3 weeks', 'overdue', 'yes'],
  ['First coat great. The second coat has ridges', 'coat-number', 2],
  ['two coats of oil poly, then two more on', 'coat-number', 4],
  ['nine or ten coats of lacquer', 'coat-number', 10],
  ['sanded before the second coat', 'coat-number', undefined],
  ['it went from one coat to the next', 'coat-number', undefined],
  ['foam brush and clear', 'applicator', 'sponge'],
  ['I wiped it off with a damp cloth', 'applicator', undefined],
  ['navy paint on oak, clear on top', 'base-tone', 'dark'],
  ['a dresser of the 1950s', 'age', 'before-1993'],
  ['chalk paint over the old finish, then clear', 'base', 'chalk-paint'],
  ['a white stain from the plate', 'base', undefined],
  ['shop at 70 F, 40-50 percent', 'relative-humidity', 0.45],
  ['a drip on the leg of my chair', 'part', 'leg'],
  ['white wax in the carving', 'part', 'carving'],
  ['it went white at the edge', 'part', 'edge'],
  ['a pool in the corner', 'part', 'inside-corner'],
  ['it stood in the corner of my shop', 'part', undefined],
  ['no drips on the legs', 'part', undefined],
  ['brush marks on the top', 'part', undefined],
  ['10 % retarder in it', 'relative-humidity', undefined],
  ['the poly cracked after a few months', 'hours-since-coat', 2160],
  ['recoat it every two hours', 'hours-since-coat', undefined],
  ['20 years of poly and never this', 'hours-since-coat', undefined],
  ['a hot plate left a white mark on our table', 'stage', 'cured'],
  ['the books stick to the shelf', 'stage', undefined],
  ['clear laid a week ago, dried milky', 'stage', 'recoatable'],
];

describe('the facts of a text', () => {
  it.each(cases)('%s: %s %s', (text, name, value) => expect(fact(text, name)?.value).toBe(value));

  // A film taken drier than it is gets sanded or loaded too soon.
  it.each([
    ['Dye stain, dry overnight. Next morning brushing on clear, and the brush picks up color', 'wet'],
    ['Test patch dried well, but the whole wall looks green as I go', 'wet'],
    ['Canned shellac opened half a year ago. They say use it in six months', 'wet'],
    ['A present from last year. I used clear shellac on it and it dents', 'recoatable'],
    ['A 100 year old floor, three coats of satin on it, hairs in the last', 'recoatable'],
    [
      'Recoated with two coats of gloss poly, it peels. Water based twelve years ago never did it',
      'recoatable',
    ],
    [
      'Cloudy white areas in rings the way it turned on the lathe. Sealer first, then the finish',
      'recoatable',
    ],
    ['Brushed it too cold, it dragged, sags folded over', 'wet'],
    ['Old oil on a box. 20 days later it is oily to the touch', 'dry-to-touch'],
  ] as const)('%s: no drier than %s', (text, driest) => {
    const stage = fact(text, 'stage');
    const taken = stage && stage.sure >= SURE ? STAGES.indexOf(stage.value as Stage) : 0;
    expect(taken).toBeLessThanOrEqual(STAGES.indexOf(driest));
  });

  it('leaves open what a word leaves open, and shuts out the rest', () => {
    const [open] = heard('poly over old shellac').among;
    expect(open?.values).toEqual(['oil-based', 'water-based', 'wipe-on']);
  });
  it('leaves an unknown capitalized word alone', () => {
    const { facts, signs } = heard('I used Brenwick on it');
    expect([...facts, ...signs]).toEqual([]);
  });
  it('reads a time of an earlier coat as such', () => {
    expect(fact('I finished it last year. Then I brushed poly on', 'hours-since-coat')?.sure).toBeLessThan(
      0.6,
    );
  });
  it('rests each finding on words of the text', () => {
    const text = 'Brushed oil poly 30 hours ago, 50F, still tacky.';
    for (const { rests } of heard(text).facts)
      for (const { from, to } of rests) expect(text.slice(from, to).trim().length).toBeGreaterThan(1);
    const time = fact(text, 'hours-since-coat');
    expect(time?.rests.map(({ from, to }) => text.slice(from, to))).toEqual(['30 hours ago']);
    expect(time?.range?.[0]).toBeLessThan(30);
    expect(time?.range?.[1]).toBeGreaterThan(30);
  });
});

const signs: [text: string, question: string, answer: 'yes' | 'no' | undefined][] = [
  ['milky over black', 'white-or-milky', 'yes'],
  ['no bubbles anywhere', 'small-and-separate', 'no'],
  ["it isn't sticky", 'still-tacky', 'no'],
  ['no runs, sags or drips', 'hangs-down', 'no'],
  ['not only cloudy, sticky as well', 'white-or-milky', 'yes'],
  ['how do I avoid brush marks', 'parallel-ridges', undefined],
  ["can't get rid of the bubbles", 'small-and-separate', 'yes'],
  ["I'm not sure but it looks cracked", 'cracked', 'yes'],
  ['covered in tiny specks', 'covers-most', 'yes'],
  ['only in the corners', 'only-in-grooves-and-corners', 'yes'],
  ['the verticals are fine', 'upright-faces-clean', 'yes'],
];

describe('the signs of a text', () => {
  it.each(signs)('%s: %s %s', (text, question, answer) => expect(sign(text, question)).toBe(answer));

  it('hears the past as past where the present differs', () => {
    const past = heard('It was milky at first. It cleared up.').signs.find(
      ({ question }) => question === 'white-or-milky',
    );
    const now = heard('It is milky.').signs.find(({ question }) => question === 'white-or-milky');
    expect(past?.sure ?? 0).toBeLessThan((now?.sure ?? 0) * 0.6);
  });
  it('keeps what speaks against a sign', () => {
    const found = heard('Feels smooth on the sides. Feels rough on the top.').signs.find(
      ({ question }) => question === 'feels-like-sandpaper',
    );
    expect(found?.against.length).toBeGreaterThan(0);
  });
});

describe('a hardener that is not there', () => {
  // Sentences of our own, invented.
  it.each([
    'It is a one-part waterborne with nothing mixed in',
    'I forgot the hardener in the lacquer',
    'a single component varnish',
    'no catalyst in this lacquer, sprayed straight from the can',
  ])('is told as none: %s', (text) => {
    expect(fact(text, 'hardener')?.value).toBe('none');
    expect(fact(text, 'hardener')?.sure).toBeGreaterThanOrEqual(SURE);
  });

  it('is not told by parts of a mix', () => {
    expect(fact('two cans of poly, one part to one part spirits', 'hardener')).toBeUndefined();
  });
});

it('hears the name of a coat that is nearly written', () => {
  expect(heard('polyurthane went cloudy').among).toHaveLength(1);
  expect(fact('brushed shelac on it', 'family')?.value).toBe('shellac');
  expect(fact('brushed oil enamal on it', 'base')?.value).toBe('oil-paint');
  expect(heard('vanish the marks, the vanity is fine').among).toHaveLength(0);
});
