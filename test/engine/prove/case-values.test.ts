/** The values of facts that cases are made of, worked by hand on invented conditions. */
import { describe, expect, it } from 'vitest';
import { comparedIn, countOfCases, valuesTold } from '#engine/prove/case-values.ts';
import { known, question } from '../small.ts';

const on = known(
  question('shines'),
  question('is-first', { known: [{ when: { 'coat-number': { below: 2 } }, answer: 'yes' }] }),
);
const told = (...conditions: readonly object[]) =>
  Object.fromEntries(valuesTold(on, comparedIn(on, conditions as never)));
const count = (...conditions: readonly object[]) => countOfCases(on, comparedIn(on, conditions as never));

describe('values that conditions tell apart', () => {
  it('one of each class of a choice: not told, each that is named, one of all others', () => {
    expect(told({ age: 'since-1993' })).toEqual({ age: [undefined, 'before-1993', 'since-1993'] });
    expect(told({ age: ['before-1993', 'unknown'] })).toEqual({
      age: [undefined, 'before-1993', 'since-1993'],
    });
    expect(told({ age: ['before-1993', 'unknown'] }, { age: 'unknown' })).toEqual({
      age: [undefined, 'before-1993', 'since-1993', 'unknown'],
    });
    // Every value is named: there is no other.
    expect(told({ sheen: ['gloss', 'satin', 'matte'] })).toEqual({ sheen: [undefined, 'gloss'] });
  });
  it('the bounds of a number, what lies between and beyond, within its range', () => {
    // From -20 to 50 °C, by FACTS.
    expect(told({ 'air-celsius': { below: 15 } })).toEqual({ 'air-celsius': [undefined, -20, 15] });
    expect(told({ 'air-celsius': { above: 15 } })).toEqual({ 'air-celsius': [undefined, -20, 32.5] });
    expect(told({ 'air-celsius': { above: 10, below: 20 } })).toEqual({
      'air-celsius': [undefined, -20, 15],
    });
    // There is no coat before the first, and none between two.
    expect(told({ 'coat-number': { above: 0 } })).toEqual({ 'coat-number': [undefined, 1] });
    expect(told({ 'coat-number': { above: 1 } }, { 'coat-number': { below: 2 } })).toEqual({
      'coat-number': [undefined, 1, 2],
    });
  });
  it('both answers of a question, and the facts that answer it', () => {
    expect(told({ shines: 'yes' })).toEqual({ shines: [undefined, 'yes', 'no'] });
    expect(told({ not: { any: [{ 'is-first': 'yes' }] } })).toEqual({
      'is-first': [undefined, 'yes', 'no'],
      'coat-number': [undefined, 1, 2],
    });
  });
  it('none of a name that is no fact: that is a fault of the program, not a silence', () => {
    expect(() => told({ shine: 'yes' })).toThrow('"shine" is neither a fact nor a question');
  });
});

it('counts all values, told and not told', () => {
  expect(count({ age: 'since-1993' })).toBe(4);
  expect(count({ age: 'since-1993' }, { piece: 'crib' })).toBe(4 * 7);
  expect(count({ 'is-first': 'yes' })).toBe(3 * count({ 'coat-number': { below: 2 } }));
});
