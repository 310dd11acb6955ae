/**
 * Whether a word tells that a coat was laid, or what a thing is called. Sentences of our own, plain by their words.
 */
import { describe, expect, it } from 'vitest';
import { isCan, isLaying, isMerely, isOfTheCan } from '#engine/hear/words/laying.ts';
import { marked } from '../marked.ts';

const lays = (text: string): boolean => {
  const { words, from } = marked(text);
  return isLaying(words, from);
};

describe('a word of laying', () => {
  it.each([
    'I [brushed] poly on it',
    'I [sprayed] the doors',
    '[applied] it thin',
    'it was [lacquered]',
    'he [recoated] them',
    'we [varnished] the table',
    'I [waxed] it',
    '[painted] over it',
    'she [oiled] them',
    'I [poured] it last night',
    'I [poured] epoxy on the bar',
    'I [put] a coat on',
    'I [put] varnish on it',
    'he [wiped] on a thin coat',
    'I [wiped] it on',
    'I [rubbed] in some oil',
    'we had it [done] in lacquer',
    'I [finished] it',
    'I [finished] two chairs',
    'I [finished]. It was late',
    'I [painted] all of it',
    'then [polished] by hand',
    'last year [refinished] table, again',
    'we [sealed] last, sadly',
    'I [coated] 3 of them',
    'just [waxed] chairs',
  ])('%s', (text) => {
    expect(lays(text)).toBe(true);
  });

  it.each([
    'I never [brushed] it',
    'I have not [sprayed] the doors',
    'it wasnt [lacquered]',
    'he didnt have it [varnished]',
    'they havent [oiled] it',
    'it hasnt been [waxed]',
    'a hand [rubbed] oil finish',
    'I [put] the mug down',
    'I [put] it away',
    'I [wiped] the table',
    'I [wiped] the cup of oil clean',
    'I [poured] the tea out',
    'he [rubbed] his eyes',
    'he is [done] with it',
    'the [waxed] table',
    'my [oiled] bench',
    'a [finished] piece',
    'this [painted] dresser',
    'on [varnished] wood',
    'it is [lacquered] wood',
    'an old [sealed] floor',
    'the [brush] lay there',
    'I [sanded] it',
  ])('%s: none', (text) => {
    expect(lays(text)).toBe(false);
  });

  it('is denied between the same commas alone, and by a word near', () => {
    expect(lays('I have not, I [brushed] it')).toBe(true);
    expect(lays('not that I mind but I [brushed] it')).toBe(true);
    expect(lays('not one of them [brushed] it')).toBe(true);
  });
  it('of a thing that is called so ends where the part does', () => {
    expect(lays('it was [waxed], table and all')).toBe(true);
    expect(lays('the chair, [waxed] table too')).toBe(false);
    expect(lays('ever so often, my [waxed] table')).toBe(false);
  });
});

describe('no more than that', () => {
  const merely = (text: string) => {
    const { words, from } = marked(text);
    return isMerely(words, from);
  };
  it.each([
    'so I [just] put another on',
    'then we [just] wiped',
    'instead I [just] left it',
    'I would [just] wait',
    'id [just] wait',
    'could I [just] wait',
  ])('%s', (text) => {
    expect(merely(text)).toBe(true);
  });
  it.each([
    'I [just] put it on',
    'so I [put] it on',
    'so much for that and it is all I [just] did',
    'then, because I [just] did',
  ])('%s: this moment', (text) => {
    expect(merely(text)).toBe(false);
  });
});

describe('what is in a can', () => {
  const can = (text: string) => {
    const { words, from } = marked(text);
    return isCan(words, from);
  };
  it.each([
    'the [can] is old',
    'a [can] of poly',
    'my [can]',
    'in [can]',
    'two [cans]',
    'a [gallon] of it',
    'one [quart]',
    'a [tin]',
    'some [tins]',
    'a [jar]',
    'the [bucket]',
    'a spray [can]',
    'opened [can]',
  ])('%s', (text) => {
    expect(can(text)).toBe(true);
  });
  it.each([
    '[can] I wipe it',
    'how [can] it dry',
    'it [can] dry',
    'well, the, [can] I',
    'a [canopy]',
    'the [candle]',
  ])('%s: none', (text) => {
    expect(can(text)).toBe(false);
  });
  it('is told of alone, and of no coat of it', () => {
    const of = (text: string) => isOfTheCan(marked(`${text} [.x]`).words);
    expect(of('the can of poly has gelled')).toBe(true);
    expect(of('a skin in the tin')).toBe(true);
    expect(of('two cans, both lumpy')).toBe(true);
    expect(of('the can of poly is here')).toBe(false);
    expect(of('the poly has gelled')).toBe(false);
    expect(of('the can has gelled and I brushed it on')).toBe(false);
    expect(of('the can has gelled after two coats')).toBe(false);
    expect(of('the can has gelled since I coated it')).toBe(false);
  });
});
