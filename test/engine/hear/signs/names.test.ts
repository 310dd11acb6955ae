/** Which flaws are called by their names, with a small invented lexicon. Worked by hand. */
import { describe, expect, it } from 'vitest';
import { heardBySmall } from '../small-ear.ts';

const names = (text: string) =>
  heardBySmall(text).names.map(({ flaws, rests, denied }) => [
    flaws.join('|'),
    rests.map(({ from, to }) => text.slice(from, to)).join('/'),
    denied,
  ]);

describe('the names of flaws', () => {
  it('are heard with their places, each with the flaws that it may mean', () => {
    expect(names('drips on the leg, and drips there')).toEqual([['runs|drips', 'drips/drips', false]]);
    expect(names('it comes off')).toEqual([['peels', 'comes off', false]]);
  });
  it('are told as denied where they are, and as told where both is said', () => {
    expect(names('no drips')).toEqual([['runs|drips', 'drips', true]]);
    expect(names('no drips on top, drips below')).toEqual([['runs|drips', 'drips', false]]);
  });
  it('stand alone where they are names only then', () => {
    expect(names('white, some big runs')).toEqual([['runs|drips', 'runs', false]]);
    expect(names('the engine runs')).toEqual([]);
    expect(names('runs the engine')).toEqual([]);
  });
  it('are none within the name of one thing, nor where they are feared or over', () => {
    expect(names('orange skin')).toEqual([]);
    expect(names('comes orange skin off')).toEqual([]);
    expect(names('afraid of drips')).toEqual([]);
    expect(names('drips went away')).toEqual([]);
  });
});
