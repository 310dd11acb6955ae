/**
 * Steps that can not be right where something is told, a sentence for each, and beside it one that can. Common practice:
 * a block rubs an edge through, soapy water whitens shellac, water lifts chalk paint at any age, a coat that is sprayed is
 * not brushed, steel wool rusts below a water-based finish.
 */
import { describe, expect, it } from 'vitest';
import { FACTS } from '#engine/model/facts.ts';
import type { Step } from '#engine/model/step.ts';
import { CONTRADICTIONS, contradicted, LEAVE_OUT } from '#engine/steps/contradictions.ts';
import { isOnlyAPlace } from '#engine/steps/only-a-place.ts';

const step = (kind: string, say: string, more: Record<string, unknown> = {}): Step =>
  ({ kind, say, ...more }) as unknown as Step;
/** What speaks against a step that is not simply left out. */
const against = (one: Step): string[] =>
  CONTRADICTIONS.filter(({ leftOut, step: fits }) => !leftOut && fits(one)).map(({ why }) =>
    why.split(' ').slice(0, 3).join(' '),
  );
const toldOf = (one: Step) =>
  CONTRADICTIONS.filter(({ leftOut, step: fits }) => !leftOut && fits(one)).map(({ told }) => told);

const sand = (say: string) => step('sand', say, { grit: 320 });
const wash = (say: string, by = 'soapy-water') => step('wipe', say, { with: by });
const coat = (say: string, more: Record<string, unknown> = {}) =>
  step('coat', say, { product: 'same', ...more });

describe('sanding', () => {
  it.each(['Sand it with a block.', 'Sand it on a hard block of cork.', 'Take a sander.'])('%s', (say) => {
    expect(against(sand(say))).toEqual(['sands with a']);
    expect(toldOf(sand(say))).toEqual([{ part: ['edge', 'inside-corner', 'carving', 'leg'] }]);
    expect(against(step('look', say))).toEqual([]);
  });
  it.each([
    'Sand it by hand, no block.',
    'Sand it without a block.',
    'Sand it by hand.',
    'Keep blocked paper away.',
  ])('%s: fine', (say) => {
    expect(against(sand(say))).toEqual([]);
  });
  it('wet paper with soap whitens shellac, unless the step says what is taken there', () => {
    expect(against(sand('Wet it with soapy water.'))).toEqual(['wets shellac with']);
    expect(toldOf(sand('Wet it with soapy water.'))).toEqual([{ family: 'shellac' }]);
    expect(against(sand('Wet it with soapy water, on shellac with oil.'))).toEqual([]);
    expect(against(wash('Wipe it with soapy water.'))).toEqual([]);
  });
});

describe('washing', () => {
  it.each(['Wash it and rinse.', 'Go over it with clean water.', 'Go over it with clear water.'])(
    '%s',
    (say) => {
      expect(against(wash(say))).toEqual(['washes with running']);
      expect(toldOf(wash(say))).toEqual([{ base: ['chalk-paint', 'milk-paint'] }]);
      expect(against(wash(say, 'damp-cloth'))).toEqual([]);
      expect(against(sand(say))).toEqual([]);
    },
  );
  it.each([
    'Wash it and rinse, chalk paint with a cloth that is hardly damp.',
    'Rinse it with a wrung-out cloth.',
    'Rinse it with a wrung out cloth.',
    'Rinse the bare wood.',
    'Wash it.',
  ])('%s: fine', (say) => {
    expect(against(wash(say))).toEqual([]);
  });
});

describe('laying her own coat', () => {
  it.each([
    'Lay it with a brush.',
    'Two brushes of it.',
    'With a roller.',
    'With a pad.',
    'With a foam tool.',
    'In long strokes.',
    'One stroke.',
    'With a rag.',
    'With a cloth.',
  ])('%s is no spraying', (say) => {
    expect(against(coat(say))).toEqual(['tells how to']);
    expect(toldOf(coat(say))).toEqual([{ applicator: ['spray-gun', 'aerosol'] }]);
  });
  it.each([
    'Spray it.',
    'It is sprayed on.',
    'A light mist.',
    'Hold the gun still.',
    'One pass.',
    'Two passes.',
    'Clean the nozzle.',
  ])('%s is no brushing', (say) => {
    expect(against(coat(say))).toEqual(['tells how to']);
    expect(toldOf(coat(say))).toEqual([{ applicator: ['brush', 'roller', 'pad', 'sponge', 'cloth'] }]);
  });
  it.each(['Lay a thin coat.', 'Lay it with a brush, or spray it.'])('%s is for both', (say) => {
    expect(against(coat(say))).toEqual([]);
  });
  it('what is not hers to lay as she likes, or surely by one of both, is no matter', () => {
    expect(against(coat('Lay it with a brush.', { product: 'dewaxed-shellac' }))).toEqual([]);
    expect(against(coat('Lay it with a brush.', { by: 'hand' }))).toEqual([]);
    expect(against(coat('Spray it.', { by: 'spray' }))).toEqual([]);
    for (const product of ['same', 'same-in-gloss', 'tinted-same'])
      expect(against(coat('Spray it.', { product }))).toHaveLength(1);
  });
  it('surely by hand names the tool that lays all of it', () => {
    expect(against(coat('Lay it thinly.', { by: 'hand' }))).toEqual(['has by: hand']);
    expect(against(coat('Lay it with a soft brush.', { by: 'hand' }))).toEqual([]);
    // A tool for details alone lays nothing of the rest.
    expect(against(coat('Lay it thinly, in details with a brush.', { by: 'hand' }))).toEqual([
      'has by: hand',
    ]);
    for (const place of [
      'detail',
      'details',
      'corner',
      'corners',
      'groove',
      'grooves',
      'molding',
      'moldings',
    ])
      for (const at of ['in', 'for the', 'at the']) {
        expect(against(coat(`Lay it thinly, ${at} ${place} with a brush.`, { by: 'hand' }))).toHaveLength(1);
        // A word that only begins or ends so names no place.
        expect(against(coat(`Lay it thin${at} ${place} with a brush.`, { by: 'hand' }))).toEqual([]);
        expect(against(coat(`Lay it thinly, ${at} ${place}q with a brush.`, { by: 'hand' }))).toEqual([]);
      }
    expect(against(coat('With a pad, in the corners with a brush.', { by: 'hand' }))).toEqual([]);
    expect(against(coat('Lay it thinly.', { by: 'hand', product: 'oil' }))).toEqual([]);
  });
});

describe('a spray can is not opened', () => {
  it('a tint says what to take in its place', () => {
    const tint = (say: string) => step('mix', say, { what: 'tint' });
    expect(against(tint('Stir in a drop.'))).toEqual(['tints what may']);
    expect(toldOf(tint('Stir in a drop.'))).toEqual([{ applicator: 'aerosol' }]);
    expect(against(tint('Stir in a drop; in place of a spray can take a brush.'))).toEqual([]);
    expect(against(step('mix', 'Stir it.', { what: 'stir' }))).toEqual([]);
  });
});

describe('steel wool', () => {
  it('rusts below a water-based finish', () => {
    expect(against(step('look', 'Rub it with steel wool.'))).toEqual(['names steel wool,']);
    expect(toldOf(step('look', 'Rub it with Steel wool.'))).toEqual([
      { family: ['water-based', 'water-lacquer'] },
    ]);
  });
  it.each([
    'No steel wool.',
    'Do not take steel wool.',
    'Never steel wool.',
    'A pad instead of steel wool.',
    'Rub it without any steel wool.',
    'Rub it with a pad.',
  ])('%s: fine', (say) => {
    expect(against(step('look', say))).toEqual([]);
  });
  it('a denial of something else denies nothing', () => {
    expect(against(step('look', 'Do not press. Rub it with steel wool.'))).toHaveLength(1);
  });
});

it('each that is not left out says what to do', () => {
  for (const { leftOut, mend, why } of CONTRADICTIONS) {
    expect(why.length).toBeGreaterThan(10);
    expect(Boolean(mend)).toBe(!leftOut);
  }
});

describe('a word counts as itself alone', () => {
  // The word within each sentence, with letters grown onto it on either side: then it is another word.
  it.each<[string, (say: string) => Step, string, string]>([
    ['sanding', sand, 'Sand it with a block.', 'block'],
    ['sanding', sand, 'Take a sander.', 'sander'],
    ['soap', sand, 'Wet it with soap.', '<soap'],
    ['rinsing', wash, 'Wash it and rinse.', 'rinse'],
    ['clean water', wash, 'Go over it with clean water.', 'clean water'],
    ['clear water', wash, 'Go over it with clear water.', 'clear water'],
    ...['brush', 'brushes', 'roller', 'pad', 'foam tool', 'stroke', 'strokes', 'rag', 'cloth'].map(
      (word): [string, (say: string) => Step, string, string] => [
        'by hand',
        coat,
        `Lay it with one ${word} of it.`,
        word,
      ],
    ),
    ...['spray', 'sprayed', 'mist', 'gun', 'pass', 'passes', 'nozzle'].map(
      (word): [string, (say: string) => Step, string, string] => [
        'by spray',
        coat,
        `Lay it with one ${word} of it.`,
        word,
      ],
    ),
    ['steel wool', (say) => step('look', say), 'Rub it with steel wool.', 'steel wool'],
  ])('%s: %#', (_, make, say, marked) => {
    const word = marked.replace('<', '');
    expect(against(make(say))).toHaveLength(1);
    expect(against(make(say.replace(word, `q${word}`)))).toEqual([]);
    // After `<` a longer word counts, too: soap, soapy, soaped.
    if (!marked.startsWith('<')) expect(against(make(say.replace(word, `${word}q`)))).toEqual([]);
  });

  it.each<[string, (say: string) => Step, string, string]>([
    ['no block', sand, 'Sand it by hand and no block.', 'no'],
    ['without a block', sand, 'Sand it without a block.', 'without a'],
    ['shellac', sand, 'Wet it with soapy water, on shellac with oil.', 'shellac'],
    ['chalk', wash, 'Wash it and rinse, chalk by a damp cloth.', 'chalk'],
    ['wrung-out', wash, 'Rinse it with a wrung-out cloth.', 'wrung-out'],
    ['bare wood', wash, 'Rinse the bare wood.', 'bare wood'],
    ...['No', 'Not', 'Never', 'Without', 'Instead of'].map(
      (word): [string, (say: string) => Step, string, string] => [
        'steel wool denied',
        (say) => step('look', say),
        `${word} steel wool here.`,
        word,
      ],
    ),
  ])('and so does what makes it right: %s, %s', (_, make, say, word) => {
    expect(against(make(say))).toEqual([]);
    expect(against(make(say.replace(word, `q${word}`)))).toHaveLength(1);
    expect(against(make(say.replace(word, `${word}q`)))).toHaveLength(1);
  });
});

describe('what speaks against a step', () => {
  it('is told of her tool for a coat that names another, and each says how it is mended', () => {
    expect(toldOf(coat('Lay it thinly.', { by: 'hand' }))).toEqual([
      { applicator: ['spray-gun', 'aerosol'] },
    ]);
    const [hand] = CONTRADICTIONS.filter(
      ({ leftOut, step: fits }) => !leftOut && fits(coat('Lay it with a brush.')),
    );
    const [spray] = CONTRADICTIONS.filter(({ leftOut, step: fits }) => !leftOut && fits(coat('Spray it.')));
    expect([hand?.mark, spray?.mark]).toEqual(['by: hand', 'by: spray']);
    // Every tool is of one of both.
    const tools = [hand, spray].flatMap((one) => Object.values(one?.told ?? {}).flat());
    expect([...tools].sort()).toEqual([...FACTS.applicator.values].sort());
  });

  it('leaves out what is mixed in a spray can, stained over no stain, or bleached on paint', () => {
    const stain = [
      step('coat', 'Stain it.', { product: 'stain' }),
      step('test-patch', 'Try it.', { tries: 'stain' }),
      step('wait', 'Let it dry.', { of: 'stain' }),
    ];
    const bleach = [
      step('wipe', 'Bleach it.', { with: 'wood-bleach' }),
      step('wipe', 'Rinse it.', { with: 'damp-cloth', of: 'wood-bleach' }),
      step('mix', 'Mix it.', { what: 'wood-bleach' }),
    ];
    const inCan = ['stir', 'smear', 'thin', 'extender', 'fresh-batch'].map((what) =>
      step('mix', 'Do it.', { what }),
    );
    const others = [
      step('coat', 'Lay it.', { product: 'same' }),
      step('test-patch', 'Try it.', { tries: 'oil' }),
      step('wait', 'Wait.', {}),
      step('wipe', 'Wipe it.', { with: 'damp-cloth' }),
      step('mix', 'Tint it.', { what: 'tint' }),
    ];
    const left = (one: Step, fact: string, value: string) =>
      contradicted(one, (told) => {
        const [name, wanted] = Object.entries(told)[0] ?? [];
        return name === fact && [wanted].flat().includes(value) ? 'yes' : 'unknown';
      });
    for (const applicator of FACTS.applicator.values) {
      const can = applicator === 'aerosol';
      expect(inCan.map((one) => left(one, 'applicator', applicator))).toEqual(inCan.map(() => can));
      expect(others.map((one) => left(one, 'applicator', applicator))).toEqual(others.map(() => false));
    }
    for (const base of FACTS.base.values) {
      // Below an old finish or wax there may be stain; it lies on nothing else.
      const stained = ['stain', 'old-finish', 'wax'].includes(base);
      const painted = /paint$/.test(base) || base === 'laminate';
      expect([base, ...stain.map((one) => left(one, 'base', base))]).toEqual([
        base,
        ...stain.map(() => !stained),
      ]);
      expect([base, ...bleach.map((one) => left(one, 'base', base))]).toEqual([
        base,
        ...bleach.map(() => painted),
      ]);
      expect(others.map((one) => left(one, 'base', base))).toEqual(others.map(() => false));
    }
    // What is not known leaves nothing out.
    for (const one of [...stain, ...bleach, ...inCan]) {
      expect(contradicted(one, () => 'unknown')).toBe(false);
      expect(contradicted(one, () => 'no')).toBe(false);
    }
    for (const { told } of LEAVE_OUT)
      for (const fact of Object.values(told))
        expect(fact).toEqual({ value: expect.stringMatching(/^[a-z-]+$/), how: 'told' });
  });
});

describe('a place on a face', () => {
  const PLACES = [
    'spot',
    'spots',
    'place',
    'places',
    'rim',
    'rims',
    'knot',
    'knots',
    'mark',
    'marks',
    'patch',
    'bits',
    'bubbles',
    'ridges',
    'hollow',
    'hollows',
    'pool',
    'pools',
    'groove',
    'grooves',
    'rope',
    'feather',
    'edges thin',
    'edge thin',
    'round the sharp edge',
  ];
  it.each(PLACES)('%s is one', (word) => {
    expect(isOnlyAPlace(`Rub ${word} by hand.`)).toBe(true);
    expect(isOnlyAPlace(`Rub ${word.toUpperCase()} by hand.`)).toBe(true);
    expect(isOnlyAPlace(`Rub q${word} by hand.`)).toBe(false);
    expect(isOnlyAPlace(`Rub ${word}q by hand.`)).toBe(false);
  });
  it.each(['whole', 'panel', 'face', 'top', 'rest', 'edge to edge', 'evenly', 'all over', 'all of it'])(
    '%s is all of it, whatever place is named',
    (word) => {
      expect(isOnlyAPlace(`Rub the spot, then ${word}.`)).toBe(false);
      expect(isOnlyAPlace(`Rub the spot, then q${word}.`)).toBe(true);
      expect(isOnlyAPlace(`Rub the spot, then ${word}q.`)).toBe(true);
    },
  );
  it('is not told by words that name none', () => {
    expect(isOnlyAPlace('Rub it lightly.')).toBe(false);
  });
});
