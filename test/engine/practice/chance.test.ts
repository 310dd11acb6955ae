/** Choices by a seed: laws of chance. A thousand draws are off by 3 in 100 once in twenty times; wider room is left. */
import { describe, expect, it } from 'vitest';
import { chanceOf } from '#engine/practice/chance.ts';

const many = <T>(count: number, draw: (n: number) => T) => Array.from({ length: count }, (_, n) => draw(n));
const share = <T>(all: readonly T[], is: (one: T) => boolean) => all.filter(is).length / all.length;

describe('choices by a seed', () => {
  it('are the same for the same seed and stream, and others for others', () => {
    const drawn = (seed: number, stream: number) => {
      const chance = chanceOf(seed, stream);
      return many(12, () => chance.under(1000)).join();
    };
    expect(drawn(7, 1)).toBe(drawn(7, 1));
    expect(new Set([drawn(7, 1), drawn(7, 2), drawn(8, 1), drawn(8, 2)]).size).toBe(4);
  });

  it('are whole numbers from 0 on, each as often', () => {
    const chance = chanceOf(3, 1);
    const drawn = many(4000, () => chance.under(5));
    for (const value of [0, 1, 2, 3, 4]) expect(share(drawn, (one) => one === value)).toBeCloseTo(0.2, 1);
    expect(drawn.every((one) => Number.isInteger(one) && one >= 0 && one < 5)).toBe(true);
    expect(chance.under(1)).toBe(0);
  });

  it('take one of a list, each as often, and of none nothing', () => {
    const chance = chanceOf(3, 2);
    const drawn = many(3000, () => chance.one(['a', 'b', 'c']));
    for (const value of ['a', 'b', 'c']) expect(share(drawn, (one) => one === value)).toBeCloseTo(1 / 3, 1);
    expect(() => chance.one([])).toThrow('nothing to choose from');
  });

  it('take one by its weight, and none of weight 0', () => {
    const chance = chanceOf(3, 3);
    const drawn = many(4000, () =>
      chance.weighted([
        ['rare', 1],
        ['never', 0],
        ['often', 7],
        ['now and then', 2],
      ]),
    );
    expect(share(drawn, (one) => one === 'rare')).toBeCloseTo(0.1, 1);
    expect(share(drawn, (one) => one === 'often')).toBeCloseTo(0.7, 1);
    expect(share(drawn, (one) => one === 'now and then')).toBeCloseTo(0.2, 1);
    expect(drawn).not.toContain('never');
    expect(() => chance.weighted([])).toThrow('nothing to choose from');
  });

  it('mix a list: all of it, each place as likely for each, the list itself left alone', () => {
    const list = ['a', 'b', 'c', 'd'];
    const mixed = many(3000, (n) => chanceOf(n, 4).mixed(list));
    expect(list).toEqual(['a', 'b', 'c', 'd']);
    for (const one of mixed.slice(0, 50)) expect(one.toSorted()).toEqual(list);
    for (const place of [0, 1, 2, 3])
      for (const value of list) expect(share(mixed, (one) => one[place] === value)).toBeCloseTo(0.25, 1);
    expect(new Set(mixed.map((one) => one.join(''))).size).toBe(24);
    expect(chanceOf(1, 4).mixed([])).toEqual([]);
  });
});
