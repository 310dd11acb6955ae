/** Claims that must be earned: whose time it is, and whether now. All sentences are invented for this test. */
import { describe, expect, it } from 'vitest';
import { SURE } from '#engine/hear.ts';
import { heard } from '../hearing.ts';

const taken = (text: string, fact: string) =>
  heard(text).facts.find((one) => one.fact === fact && one.sure >= SURE)?.value;

describe('no time of the coat is taken', () => {
  it.each([
    [
      'a coat was laid since',
      'The first coat bubbled. Two days later I scuffed it and began the second coat.',
    ],
    ['a coat was laid since', 'Poly on a shelf. An hour later I slapped on another coat, and it ran.'],
    ['it was worked on since', 'Shellac, five coats, 24 hours, rubbed with wool. It looks dull.'],
    ['something befell it', 'About four weeks ago the varnish on the rail cracked.'],
    ['something befell it', 'Three months ago our cat scratched the lacquer.'],
    ['it was used so long', 'I have used it on new boards for about three months.'],
    ['the work took so long', 'Sanded my dresser for hours and then waxed it.'],
    ['so long in all', 'Over the last three months sixty splinters came up.'],
    ['it is the age of a thing', 'A ring on my 4 year old cherry coffee table.'],
    ['it is to come', 'I figured I would scuff the varnish in a few days.'],
    ['it ended something', 'The haze bothered me until yesterday.'],
    ['nobody knows what day it is', 'I laid the last coat of varnish on Sunday.'],
    ['they stayed there', 'The floor is varnished. We have been staying here for two weeks now.'],
    ['it was left so long', 'Wiped on the wax, let it haze for 20 minutes and buffed it with a cloth.'],
    ['a body feels it', 'I sprayed the clear coat indoors. An hour later my chest felt tight.'],
    ['it is planned', 'My idea is to sand it and then put on one thin film of oil before bed.'],
    [
      'somebody else has laid it',
      'One of them scraped the soft part off and put shellac on it two months ago.',
    ],
  ])('%s: %s', (_, text) => expect(taken(text, 'hours-since-coat')).toBeUndefined());
});

describe('a time of the coat is taken', () => {
  it.each([
    ['Brushed two coats of varnish on it four days ago, still soft.', 96],
    ['Refinished two weeks ago and it scrapes off.', 336],
    ['I put the last coat on Thursday and it is Saturday.', 48],
    ['Put on one part of a varnish. After three hours it is as wet as when I painted it on.', 3],
    ['Two years ago I painted the chairs white, then put on two coats of clear.', 9000],
  ])('%s: %i', (text, hours) => expect(taken(text, 'hours-since-coat')).toBe(hours));
});

describe('no state of the film is taken from', () => {
  it.each([
    ['how it is sanded', 'I was afraid to wet it, so I started to dry sand the run.'],
    ['how fast it dries', 'The poly dried so quickly that the strokes stayed.'],
    ['how it was then', 'Dust got into the varnish while it was still tacky.'],
    ['another thing', 'Varnished table. When a cloth is wet the heat goes right through.'],
    ['what fills a hole', 'Varnished oak with wood putty in a hole.'],
  ])('%s: %s', (_, text) => expect(taken(text, 'stage')).toBeUndefined());
});

describe('no number of coats is taken from', () => {
  it.each([
    ['a vague word', 'Several coats of varnish on it and it is dull.'],
    ['what lies below', 'Two coats of shellac, then nitro lacquer with a gun.'],
    ['a name of a thing', 'Sprayed a 2K clear coat in my garage.'],
    ['the last of them', 'Today I put one last coat of oil on it.'],
  ])('%s: %s', (_, text) => expect(taken(text, 'coat-number')).toBeUndefined());
});

describe('no kind of finish is taken from', () => {
  it.each([
    ['a guess', 'The old hutch is cracking, it could be shellac.'],
    ['a habit', 'I usually finish with tung oil.'],
    ['what is done with it', 'I have bleach here. Wipe it on and wash it off?'],
    ['a plan', 'The plan was a light buff and then wax.'],
  ])('%s: %s', (_, text) => expect(taken(text, 'family')).toBeUndefined());
});
