/**
 * The example that each rule on times, stages and counts of coats is named by, heard by the words of the content: what is
 * taken as told. Sentences of our own; how people say it is common practice, no source.
 */
import { describe, expect, it } from 'vitest';
import { hear, SURE } from '#engine/hear.ts';
import { hearing } from './hearing.ts';

const told = (text: string, name: string): string | number | undefined =>
  hear(hearing, text).facts.find(({ fact, sure }) => fact === name && sure >= SURE)?.value;

describe('the example of a rule', () => {
  it.each<[string, number | undefined]>([
    ['lacquer brushed on two days later it is dull', 48],
    ['the varnish has been on for two days', 48],
    ['the table is six months old, the varnish is dull', 4320],
    ['brushed it on, 5 hours', 5],
    ['a two day old board', undefined],
    ['it is two weeks since the last coat of poly', 336],
    ['we bought the table ten years ago and brushed poly on it', undefined],
    ['three days ago it was hot', undefined],
    ['poly, 9 days on, is dull', 216],
    ['been a week or so', 168],
    ['we bought it years ago and it is cloudy', undefined],
    ['yesterday it rained', undefined],
    ['the varnish went on yesterday', 24],
  ])('of a time, %s: %s hours', (text, hours) => {
    expect(told(text, 'hours-since-coat')).toBe(hours);
  });

  it.each([
    ['finished the table with varnish two years ago and it has gone gummy', 'cured'],
    ['my kitchen cabinets are getting sticky', 'cured'],
    ['the poly is sticky, still wet in places', 'wet'],
    ['the poly is sticky', 'setting'],
    ['the oil based poly was laid 3 days ago, my nail leaves a mark', 'dry-to-touch'],
    ['a hot mug left a white ring', 'cured'],
    ['the lacquer dried, that was three weeks ago', 'recoatable'],
    ['the lacquer was laid yesterday, it is hard', 'recoatable'],
    ['the oil based poly is hard after three hours', 'dry-to-touch'],
    ['the coat is dry', 'dry-to-touch'],
    ['brushed the varnish on two months ago', 'cured'],
    ['laid the oil based varnish an hour ago', 'setting'],
  ])('of a stage, %s: %s', (text, stage) => {
    expect(told(text, 'stage')).toBe(stage);
  });

  it.each([
    ['the coat number four is dull', 4],
    ['coat 4 is dull', 4],
    ['two coats of poly and one of clear', 3],
    ['three coats of clear and two of satin', 5],
    ['two coats of poly, then two more on', 4],
    ['three coats of poly and then another coat', 4],
  ])('of a count, %s: %s coats', (text, coats) => {
    expect(told(text, 'coat-number')).toBe(coats);
  });
});
