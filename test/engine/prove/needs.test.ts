/**
 * What each hazard calls for, written down once more by hand from what agencies and the trade ask: old film and its dust
 * (HUD's guidelines on lead paint: told before work begins), isocyanates (OSHA: not without supplied air), spray cans and
 * solvent mist (NFPA 33: no flame), oily rags (NFPA: they heat by themselves), children's things (16 CFR 1303).
 */

import { describe, expect, it } from 'vitest';
import { holds } from '#engine/case/condition.ts';
import type { Weight } from '#engine/faults/issue.ts';
import type { ConditionInput } from '#engine/model/condition.ts';
import { HAZARD_NAMES, type Hazard } from '#engine/model/hazard.ts';
import { missing, NEEDS, needed, weightOf } from '#engine/prove/needs.ts';

type Facts = Readonly<Record<string, string | number>>;
const isIn =
  (facts: Facts) =>
  (condition: ConditionInput): boolean =>
    holds(condition, (fact) => facts[fact]) === 'yes';
const surely = (hazard: Hazard, facts: Facts = {}) => needed(hazard, 'yes', isIn(facts));
const maybe = (hazard: Hazard, facts: Facts = {}) => needed(hazard, 'unknown', isIn(facts));

describe('a step that surely does it', () => {
  it.each<[Hazard, Facts, readonly Weight[]]>([
    ['old-film', {}, ['stop']],
    ['old-film', { age: 'before-1993' }, ['stop']],
    ['old-film', { age: 'unknown' }, ['stop']],
    ['old-film', { age: 'since-1993' }, []],
    ['old-film', { 'first-coat-on-bare-wood': 'yes' }, []],
    ['old-film', { 'first-coat-on-bare-wood': 'yes', age: 'before-1993' }, ['stop']],
    ['old-film', { 'first-coat-on-bare-wood': 'no' }, ['stop']],
    // Her own coats on bare wood: the second stands on no older layer than the first. Common practice, no source.
    ['old-film', { base: 'bare-wood', 'coat-number': 2 }, []],
    ['old-film-in-reach', { base: 'bare-wood', 'coat-number': 1 }, []],
    ['old-film', { base: 'bare-wood', 'coat-number': 2, age: 'before-1993' }, ['stop']],
    ['old-film', { base: 'bare-wood', 'coat-number': 2, age: 'unknown' }, ['stop']],
    ['old-film', { base: 'bare-wood' }, ['stop']],
    ['old-film', { base: 'stain', 'coat-number': 2 }, ['stop']],
    ['old-film', { base: 'old-finish', 'coat-number': 2 }, ['stop']],
    ['old-film-in-reach', {}, ['stop']],
    ['old-film-in-reach', { age: 'since-1993' }, []],
    ['dust', {}, ['care']],
    ['dust', { hardener: 'isocyanate' }, ['stop', 'care', 'care']],
    ['dust', { hardener: 'acid' }, ['care']],
    ['blade', {}, ['care']],
    ['mist', {}, ['stop', 'care']],
    ['mist', { family: 'water-based' }, ['care']],
    ['mist', { family: 'water-lacquer' }, ['care']],
    ['mist', { family: 'water-based', applicator: 'aerosol' }, ['stop', 'care']],
    ['mist', { family: 'lacquer' }, ['stop', 'care']],
    ['sprayed-coat', {}, []],
    ['sprayed-coat', { applicator: 'aerosol' }, ['care']],
    ['vapor', {}, ['care']],
    ['much-vapor', {}, ['stop']],
    ['solvent-on-skin', {}, ['care']],
    ['oily-cloth', {}, ['stop']],
    ['stripper', {}, ['stop', 'care']],
    ['oxalic-acid', {}, ['care']],
    ['caustic', {}, ['stop']],
    ['heat', {}, ['care']],
    ['mold-spores', {}, ['care']],
    ['waste', {}, ['note']],
    ['mouth-contact', {}, []],
    ['mouth-contact', { piece: 'crib' }, ['stop']],
    ['mouth-contact', { piece: 'childs-item' }, ['stop']],
    ['mouth-contact', { piece: 'food-surface' }, ['care']],
    ['mouth-contact', { piece: 'tabletop' }, []],
    ['hardener', {}, []],
    ['hardener', { hardener: 'isocyanate' }, ['stop']],
    ['hardener', { hardener: 'acid' }, ['care']],
    ['tint', {}, ['limit']],
    ['thin', {}, ['limit']],
    ['extend', {}, ['limit']],
  ])('%s, %o', (hazard, facts, wanted) => {
    expect(surely(hazard, facts)).toEqual(wanted);
    expect(needed(hazard, 'no', isIn(facts))).toEqual([]);
  });

  it('no hazard is left out of the table', () => {
    expect(Object.keys(NEEDS).sort()).toEqual([...HAZARD_NAMES].sort());
  });
});

describe('a step that may do it', () => {
  it.each<[Hazard, readonly Weight[]]>([
    ['mist', ['care']],
    ['sprayed-coat', []],
    ['much-vapor', []],
    ['oily-cloth', ['care']],
    ['hardener', ['care']],
    // Where nothing less is written, as much as surely.
    ['old-film', ['stop']],
    ['dust', ['care']],
    ['stripper', ['stop', 'care']],
  ])('%s', (hazard, wanted) => {
    expect(maybe(hazard)).toEqual(wanted);
  });
});

it('names what decides, so that its cases are looked at', () => {
  const on = (hazard: Hazard) => [...new Set(NEEDS[hazard].on.flatMap((one) => Object.keys(one)))];
  const oldFilm = ['age', 'first-coat-on-bare-wood', 'base', 'coat-number'];
  expect(on('old-film')).toEqual(oldFilm);
  expect(on('old-film-in-reach')).toEqual(oldFilm);
  expect(on('dust')).toEqual(['hardener']);
  expect(on('mist')).toEqual(['family', 'applicator']);
  expect(on('sprayed-coat')).toEqual(['applicator']);
  expect(on('mouth-contact')).toEqual(['piece']);
  expect(on('hardener')).toEqual(['hardener']);
  expect(on('vapor')).toEqual([]);
});

it('asks of nothing else', () => {
  // Whatever is answered, so that every way through a need is gone.
  for (const hazard of HAZARD_NAMES)
    for (const answers of [[], [true], [false], [true, false], [false, true], [false, true, true]])
      for (const other of [true, false]) {
        let at = 0;
        expect(() => needed(hazard, 'yes', () => answers[at++] ?? other)).not.toThrow();
      }
});

it('a rule weighs by its kind and level', () => {
  expect(weightOf({ kind: 'stop', level: 'note' } as never)).toBe('stop');
  expect(weightOf({ kind: 'caution', level: 'care' } as never)).toBe('care');
  expect(weightOf({ kind: 'caution', level: 'note' } as never)).toBe('note');
  expect(weightOf({ kind: 'adjustment', level: 'care' } as never)).toBe('limit');
});

describe('what is missing', () => {
  it.each<[readonly Weight[], readonly Weight[], readonly Weight[]]>([
    [['stop', 'care'], ['stop', 'care'], []],
    [['stop', 'care'], ['care'], ['stop']],
    [['stop', 'care'], ['stop'], ['care']],
    // Each answers once.
    [['care', 'care'], ['care'], ['care']],
    [['care', 'care'], ['care', 'care'], []],
    // A caution says as much as a note, and not the other way.
    [['note'], ['care'], []],
    [['note', 'care'], ['note', 'care'], []],
    [['care'], ['note'], ['care']],
    [['limit'], [], ['limit']],
    [[], ['stop'], []],
  ])('%o of %o: %o', (wanted, there, left) => {
    expect(missing(wanted, there)).toEqual(left);
  });
});
