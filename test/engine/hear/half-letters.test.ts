/** Letters that were answered by half: what is asked has its own answer, and nothing else is said first. Letters are invented. */
import { describe, expect, it } from 'vitest';
import { understand } from '#engine/hear.ts';
import { heard, understanding } from './hearing.ts';
import { links } from './links.ts';

const short = (text: string): string => understand(understanding, { text }, links).answer.short;

describe('what is answered', () => {
  it.each([
    ['client says a glass left a ring on the desk we delivered on Monday', 'Tell the buyer'],
    ['I sold a side table a week ago and the customer wrote that a vase made a white ring', 'Tell the buyer'],
    ['should I use wax first or can poly go straight over milk paint?', 'No wax under it'],
    ['lacquer over latex paint, or must I wax first?', 'No wax under it'],
    ['can i put water based poly over chalk paint or do they need a wax between', 'No wax under it'],
    ['the 180 grit scratches show in the second coat, what grit should I use?', 'P320 by hand between coats'],
    [
      'what varnish is safe for a toy my grandson will chew on',
      'First: .*The kind counts less than the cure',
    ],
    ['can I rub nitro lacquer with denatured alcohol to level the orange peel', 'No: alcohol \\(meths\\)'],
    ['should I wipe the lacquer down using methylated spirits to smooth it', 'No: alcohol \\(meths\\)'],
    ['he says lay oil varnish over shellac but never the reverse', 'Oil varnish goes over shellac'],
    ['is shellac over polyurethane ok', 'Oil varnish goes over shellac'],
    [
      'satin poly came out shiny at the top and dull below, never stirred the can',
      'What makes it dull lies on the bottom',
    ],
    [
      'the gloss is uneven, I forgot to stir the tin, three weeks old',
      'What makes it dull lies on the bottom',
    ],
    ['stacked the shelves after ten days and they stuck together', 'Pull nothing apart'],
    ['cabinet fronts stuck to each other, water based, two weeks old', 'Pull nothing apart'],
    ['what is the difference between dry and cured', 'Dry: the water or solvent has left'],
    ['how do I explain to a client that dry is not cured', 'Dry: the water or solvent has left'],
    ['may I put polyurethane over an oil stain within 8 hours', '.*(?:a day at the least|72 hours)'],
    ['stained the top today, is it too early to go over the oil stain with water based poly', '.*72 hours'],
  ])('of: %s', (text, says) => {
    expect(short(text)).toMatch(new RegExp(`^${says}`));
    expect(short(text).length).toBeLessThanOrEqual(500);
    expect(short(text)).not.toMatch(/Most likely|Hard to say|may be/);
  });
  it.each([
    [
      'my son has water based varnish on both hands',
      'Wipe it off the skin with a dry cloth now',
      '1-800-222-1222',
    ],
    [
      'our baby grabbed the tacky chair and has poly on her fingers',
      'Wipe it off the skin with a dry cloth now',
      '1-800-222-1222',
    ],
    ['how do I get oil based polyurethane off my fingers', 'Wipe it off the skin', 'Never solvent'],
    ['I have lacquer on my arms, what takes it off', 'Wipe it off the skin', 'Never solvent'],
  ])('of wet finish on skin: %s', (text, says, also) => {
    expect(short(text).startsWith(says)).toBe(true);
    expect(short(text)).toContain(also);
    expect(short(text)).not.toContain('911');
  });
});

describe('what is not taken for it', () => {
  it.each([
    'the customer has a white ring from a hot mug on a shellac table',
    'buyer says the ring is black and the table is ten years old',
  ])('a mark of another kind: %s', (text) => expect(short(text)).not.toContain('Tell the buyer'));
  it.each([
    'the dresser was waxed last year, can I put poly over the chalk paint',
    'waxed the milk paint, can I put water based over it',
  ])('wax that lies there: %s', (text) => expect(short(text)).not.toContain('No wax under it'));
  it.each([
    'my hands are sticky after touching the table, the varnish was dry',
    'I brushed varnish on by hand',
    'stripper splashed on my hands and it burns',
  ])('skin without wet finish: %s', (text) =>
    expect(heard(text).dangers.map(({ rule }) => rule)).not.toContain('skin-and-spirits'),
  );
  it.each([
    'the varnish never dried, I did not stir it and it is still tacky',
    'my drawers are stuck together since I painted them last night',
    'rags stuck together in the bin',
  ])('a film that is soft, or no film at all: %s', (text) =>
    expect(short(text)).not.toMatch(/What makes it dull|Pull nothing apart/),
  );
  it('says no to going back over a coat', () =>
    expect(short('brush marks in the wet poly, can I go back over it')).toMatch(
      /^No, do not brush it again\./,
    ));
  it.each([
    'bubbles all over, I rolled the water based poly on 20 minutes ago, do I roll it again',
    'I brushed oil based varnish on half an hour ago and it has brush marks',
  ])('asks nobody how dry a coat is that can not be dry: %s', (text) => {
    expect(short(text)).toMatch(/Hands off(?: while it sets)?: no brush/);
    expect(short(text)).not.toContain('how dry is it');
  });
  it('sanding of old paint', () =>
    expect(short('what grit should I use for the scratches in the old paint')).not.toContain(
      'P320 over them',
    ));
});
