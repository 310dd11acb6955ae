/**
 * Times that are not those of the coat: of the can, between coats, of another layer, of a life, of what was waited for.
 * Sentences of our own; beside each kind one that is of the coat.
 */
import { describe, expect, it } from 'vitest';
import { SURE } from '#engine/hear.ts';
import { fact } from '../hearing.ts';

const hours = (text: string): number | undefined => {
  const found = fact(text, 'hours-since-coat');
  return found && found.sure >= SURE ? Number(found.value) : undefined;
};

describe('a time of something else', () => {
  it.each([
    // Between coats, or as a rule.
    'I brushed on poly every 4 hours',
    'I brushed on poly, 4 hours between coats',
    'brushed poly, 4 hours apart',
    'I brushed on poly, 4 hours per coat',
    'I brush poly twice a day',
    'laid three coats of poly over 2 days',
    // What was put on after that time.
    'after 12 hours I put on the second coat of poly',
    'the first coat dried in 4 hours',
    'wait 24 hours till the next coat of poly',
    'I waited 24 hours before the next coat of poly',
    // The can and what is in it.
    'a ten year old can of poly',
    'the poly can is 3 years old',
    'the spirits and shellac flakes have been in a jar for a week',
    'the poly sat in the can for 3 days',
    'I opened the can of poly 6 months ago',
    'bought the quart of poly 2 years ago',
    'I used shellac flakes that are 3 years old',
    'mixed the shellac in a jar 3 weeks ago',
    // What is wanted.
    'is 24 hours enough for poly',
    'the poly needs 24 hours',
    'the poly takes a week',
    'I will wait another 2 days for the poly',
    'poly requires 24 hours',
    // A life, a trade, a person.
    'I have been a finisher for 20 years and use poly',
    'in business for 20 years, brushing poly',
    '20 years of experience with poly',
    'I have used poly for years',
    'retired 5 years ago, I brush poly',
    'married 10 years, brushing poly',
    'never had this in 20 years of varnish',
    'my 3 year old got into the poly',
    'my daughter is 5 years old and touched the poly',
    // Wood that seasoned.
    'the boards had been drying for three years before I put poly on',
    'lumber stacked for 2 years, now with poly',
    // Things that stood, tape that was on.
    'the tape was on for 2 days',
    // Another layer.
    'the stain dried for 3 days, then poly',
    'poly 3 days after the stain',
    '4 hours after the first I put poly on',
  ])('%s', (text) => {
    expect(hours(text)).toBeUndefined();
  });
});

describe('a time of the coat', () => {
  it.each<[string, number]>([
    ['I brushed on poly 4 hours ago', 4],
    ['brushed the last coat of poly two days ago', 48],
    ['varnished it a week ago', 168],
    ['it has been 3 days since I brushed on poly', 72],
    ['3 days after the last coat of poly it is tacky', 72],
    ['the poly is 3 weeks old', 504],
    ['the poly has been drying for 9 days', 216],
    ['I let the poly cure a month, still soft', 720],
    ['two days after the wax it got rough', 48],
    ['brushed on poly. Five days now.', 120],
    ['48 hours later the poly is still soft', 48],
    ['the poly went on 6 hours ago and is tacky', 6],
    ['I sprayed lacquer an hour ago', 1],
    ['sprayed lacquer 30 minutes ago', 0.5],
    ['varnished the doors 2 years ago', 9000],
    ['waited 72 hours, the poly is still tacky', 72],
    ['the poly still smells after a week', 168],
  ])('%s: %d h', (text, wanted) => {
    expect(hours(text)).toBeCloseTo(wanted, 1);
  });

  it('is told to a fifth less and a third more', () => {
    const range = fact('I brushed on poly 10 hours ago', 'hours-since-coat')?.range?.map(Number);
    expect(range?.[0]).toBeCloseTo(8, 1);
    expect(range?.[1]).toBeCloseTo(13, 1);
  });

  it('of two layings the last counts, and the other speaks against it', () => {
    const text = 'first coat of poly two weeks ago, last coat of poly 3 hours ago';
    const found = fact(text, 'hours-since-coat');
    expect(found?.value).toBe(3);
    expect(found?.against.length).toBeGreaterThan(0);
  });
});
