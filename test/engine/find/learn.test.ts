/**
 * What a model of logits must do whatever its figures (C. M. Bishop, Pattern Recognition and Machine Learning, 2006,
 * § 4.3.4): tell apart what can be told apart, name classes as they are named, add a prior, learn nothing of what it never
 * met. Invented texts.
 */
import { describe, expect, it } from 'vitest';
import {
  BIAS_UNIT,
  type Example,
  featuresOf,
  type LinearModel,
  learn,
  valuesOf,
  WEIGHT_UNIT,
} from '#engine/find/learn.ts';

const none = new Map<string, readonly number[]>();
const one = (text: string, right: readonly number[], more: Partial<Example> = {}): Example => ({
  features: featuresOf(text.split(' '), none),
  right,
  weight: 1,
  own: false,
  ...more,
});
const many = (times: number, ...all: readonly Example[]) => Array.from({ length: times }, () => all).flat();

/** The score of each class for a text, by the table alone. */
const scores = (model: LinearModel, text: string): number[] => {
  const features = featuresOf(text.split(' '), none).filter((feature) => model.features.includes(feature));
  const values = valuesOf(features);
  const sums = model.bias.map((value) => value / BIAS_UNIT);
  features.forEach((feature, at) => {
    const row = model.weights[model.features.indexOf(feature)] ?? [];
    for (let cell = 0; cell < row.length; cell += 2)
      sums[row[cell] as number] =
        (sums[row[cell] as number] as number) +
        ((row[cell + 1] as number) / WEIGHT_UNIT) * (values[at] as number);
  });
  return sums;
};
const best = (model: LinearModel, text: string) => {
  const found = scores(model, text);
  return found.indexOf(Math.max(...found));
};

const TEXTS = [
  ['white ring', 0],
  ['white haze', 1],
  ['sticky film', 2],
  ['sticky wax', 3],
] as const;
const examples = many(12, ...TEXTS.map(([text, right]) => one(text, [right])));
const model = learn(examples, 4, [0, 0, 0, 0]);

describe('a model', () => {
  it.each(TEXTS)('tells "%s" from the others', (text, right) => {
    expect(best(model, text)).toBe(right);
    const found = scores(model, text);
    for (const [other, score] of found.entries())
      if (other !== right) expect(found[right]).toBeGreaterThan(score + 0.5);
  });

  it('goes by the word that tells, not by the one that several share', () => {
    expect(best(model, 'ring')).toBe(0);
    expect(best(model, 'haze')).toBe(1);
    expect(best(model, 'wax')).toBe(3);
  });

  it('is the same from the same examples', () => {
    expect(learn(examples, 4, [0, 0, 0, 0])).toEqual(model);
  });

  it('names classes as they are named: turned round, all is turned round', () => {
    const turned = learn(
      examples.map((example) => ({ ...example, right: example.right.map((right) => 3 - right) })),
      4,
      [0, 0, 0, 0],
    );
    for (const [text, right] of TEXTS) {
      expect(best(turned, text)).toBe(3 - right);
      const [here, there] = [scores(model, text), scores(turned, text).reverse()];
      here.forEach((score, at) => {
        expect(there[at]).toBeCloseTo(score, 6);
      });
    }
  });

  it('adds the prior to what it learned, and nothing else', () => {
    const told = learn(examples, 4, [1, 0, -2, 0.5]);
    expect(told.bias.map((value, at) => value - (model.bias[at] ?? 0))).toEqual([
      BIAS_UNIT,
      0,
      -2 * BIAS_UNIT,
      BIAS_UNIT / 2,
    ]);
    expect(told.weights).toEqual(model.weights);
  });

  it('holds whole steps, an even number of cells, and classes that there are', () => {
    expect(model.features.length).toBe(model.weights.length);
    for (const row of model.weights) {
      expect(row.length % 2).toBe(0);
      row.forEach((value, at) => {
        expect(Number.isInteger(value)).toBe(true);
        if (at % 2 === 0) expect(value).toBeLessThan(4);
        else expect(Math.abs(value)).toBeGreaterThan(1);
      });
    }
    expect([...model.features]).toEqual([...model.features].sort());
  });
});

describe('what it learns from', () => {
  it('a word that was met once is left out, but for one of a page’s own text', () => {
    const once = [...examples, one('purple ring', [0])];
    expect(learn(once, 4, [0, 0, 0, 0]).features).not.toContain('purple');
    const own = [...examples, ...many(1, one('purple', [3], { own: true, weight: 20 }))];
    expect(best(learn(own, 4, [0, 0, 0, 0]), 'purple')).toBe(3);
    const pair = learn([...examples, one('purple ring', [0], { own: true })], 4, [0, 0, 0, 0]);
    expect(pair.features).not.toContain('purple ring');
  });

  it('examples of other matters, and such without a known word, change nothing', () => {
    const more = [...examples, one('unheard', [2])];
    const [a, b] = [learn(more, 4, [0, 0, 0, 0]), model];
    for (const [text, right] of TEXTS) {
      expect(best(a, text)).toBe(right);
      expect(Math.abs((scores(a, text)[right] ?? 0) - (scores(b, text)[right] ?? 0))).toBeLessThan(1);
    }
  });

  it('where two pages are right both come before the others, the likeliest first', () => {
    const both = learn(
      many(15, one('dull patch', [1, 2]), one('white ring', [0]), one('sticky wax', [3])),
      4,
      [0, 0, 0, 0],
    );
    const [, first = 0, second = 0, other = 0] = scores(both, 'dull patch');
    expect(first).toBeGreaterThanOrEqual(second);
    expect(Math.max(first, second)).toBeGreaterThan(other);
    expect(best(both, 'dull patch')).toBe(1);
  });

  it('what weighs more is followed where examples differ', () => {
    const told = (heavy: number) =>
      best(
        learn(
          [...many(10, one('odd mark', [heavy], { weight: 5 })), ...many(10, one('odd mark', [1 - heavy]))],
          2,
          [0, 0],
        ),
        'odd mark',
      );
    expect(told(0)).toBe(0);
    expect(told(1)).toBe(1);
  });
});

describe('a text as features', () => {
  it('is its words, each pair of neighbors, and each once', () => {
    expect(featuresOf(['a', 'b', 'a', 'b'], none)).toEqual(['a', 'b', 'a b', 'b a']);
    expect(featuresOf([], none)).toEqual([]);
    expect(featuresOf(['a'], none)).toEqual(['a']);
  });

  it('has length one whatever its length, a pair counting seven tenths of a word', () => {
    for (const features of [['a'], ['a', 'b'], ['a', 'b', 'a b'], ['a b']]) {
      const values = [...valuesOf(features)];
      expect(values.reduce((sum, value) => sum + value * value, 0)).toBeCloseTo(1, 12);
    }
    const [word = 0, , pair = 0] = valuesOf(['a', 'b', 'a b']);
    expect(pair / word).toBeCloseTo(0.7, 12);
  });
});

describe('groups of words that say the same', () => {
  const kin = new Map<string, readonly number[]>([
    ['ring', [0]],
    ['circle', [0]],
    ['white', [1, 2]],
    ['dry out', [3]],
  ]);
  it('stand beside the words, alone and two together, the lower first', () => {
    expect(featuresOf(['ring'], kin)).toEqual(['ring', '~0']);
    expect(featuresOf(['circle'], kin)).toEqual(['circle', '~0']);
    expect(
      featuresOf(['white', 'ring'], kin)
        .filter((one) => one.startsWith('~'))
        .sort(),
    ).toEqual(['~0', '~1', '~2', '~0 ~1', '~0 ~2', '~1 ~2'].sort());
    expect(featuresOf(['ring', 'ring'], kin).filter((one) => one.startsWith('~'))).toEqual(['~0']);
    expect(featuresOf(['dry', 'out'], kin)).toContain('~3');
    expect(featuresOf(['out', 'dry'], kin)).not.toContain('~3');
  });
  it('say nothing together where they stand far apart', () => {
    const far = (words: number) => ['white', ...Array.from({ length: words }, (_, at) => `w${at}`), 'ring'];
    expect(featuresOf(far(12), kin)).toContain('~0 ~1');
    expect(featuresOf(far(13), kin)).not.toContain('~0 ~1');
  });
});
