/** Letters that ask for one thing, or for nothing, and what a reply says first. Letters of our own, invented. */
import { describe, expect, it } from 'vitest';
import { understand } from '#engine/hear.ts';
import { understanding } from './hearing.ts';
import { links } from './links.ts';

const short = (text: string): string => understand(understanding, { text }, links).answer.short;

describe('a reply', () => {
  it.each([
    ['mineral oil under poly', 'Mineral oil never dries'],
    ['can I seal with shellac over mineral oil?', 'Mineral oil never dries'],
    ['Can I put poly over mineral oil on my butcher block?', 'Mineral oil never dries'],
    [
      'can I keep the mixed 2k overnight',
      'First: Do not spray a two-part .* Once the parts are mixed the can sets the time',
    ],
    ['is 55 degrees too cold to brush poly in the garage', 'Most coats dry as the can says at 65 to 75'],
    ['we’re at 40 percent humidity and 65 degrees, is it fine to spray lacquer today?', 'Most coats dry'],
    ['Is it ok to sand shellac with 220 between coats?', 'Shellac: not before 1 to 2 hours; then P400'],
    ['what’s the difference between wipe on and brush on poly', 'Each kind is told there'],
    ['Is polyurethane food safe once cured?', 'Fully cured, and only where the can names food contact'],
    ['how do I know when it’s dry enough to sand', 'Once the time on the can is over'],
    ['is my 5 year old can of poly still good', 'A thin skin over clean finish'],
    [
      'is it too late to put another coat? it’s been 3 days since I put on the oil based poly',
      'Not too late',
    ],
    ['I forgot to sand between coats of poly, will it peel?', 'You ask of peeling, and tell of none'],
    ['how do I avoid brush marks with water based poly', 'You ask of brush marks, and tell of none'],
    ['how to prevent runs when spraying lacquer', '.*You ask of runs and sags, and tell of none'],
    ['can I wax over shellac', 'Only once what lies below has fully cured'],
    ['my sealer beaded up on the stain like water on wax', 'It looks as if finish crawls'],
    ['may I blend matte and gloss varnish for an eggshell look', 'Yes, where both are of one kind'],
    ['must I shake the tin of satin or stir it', 'Stir from the bottom'],
    ['how long will lacquer keep in the tin', 'About three years closed'],
    ['my deadline is friday, two coats of oil varnish to go', 'That day is no promise'],
    ['is 98 percent humidity too much for water based varnish', 'Wait\\.'],
    ['is 98 % humidity ok for water based varnish', 'Wait\\.'],
    ['how do I find out which finish is on my old desk', '.*Hidden spot, no wax on it'],
    ['how can I know if this is lacquer or shellac', '.*Hidden spot, no wax on it'],
    ['nights go down to 48, is 68 by day enough to varnish the bench', 'Most coats dry'],
    ['when can I brush on the second coat of water based poly', 'Water-based clear takes the next coat'],
  ])('answers what is asked: %s', (text, says) => expect(short(text)).toMatch(new RegExp(`^${says}`)));

  it.each([
    ['Thank you so much, your advice about leaving it alone saved my table top!', 'You are welcome.'],
    ['Thank you! The fog went away overnight just like you said.', 'You are welcome.'],
    ['everything went perfect, thank you for the advice on thin coats!', 'You are welcome.'],
    [
      'The table is finished and looks perfect, three coats of wipe-on, all smooth.',
      'From these words nothing is wrong',
    ],
  ])('to thanks and to praise finds nothing wrong: %s', (text, says) => {
    expect(short(text).startsWith(says)).toBe(true);
    expect(short(text)).not.toMatch(/leave it alone|That (?:may be|looks like)/);
  });
  it.each([
    'Thanks in advance, my poly is still sticky after a week',
    'The table looks great but there are bubbles in the coat',
    'Thank you, how do I get the drips off?',
  ])('is no mere thanks where something is wrong: %s', (text) =>
    expect(short(text)).not.toMatch(/nothing is wrong/),
  );
  it('names every flaw that was named', () => {
    const text = short('drips on the legs and dust nibs on the top, poly, three days old');
    for (const defect of ['runs-and-sags', 'hairs-and-dust']) expect(text).toContain(`/d/${defect}/`);
    expect(text).toMatch(/\nAnd (?:runs and sags|hairs, dust and bits in the coat): /);
  });
  it('and none that only a passing word would name', () =>
    expect(short('I spilled water on my new lacquer table and there’s a white ring')).not.toContain(
      '/d/spirit-damage/',
    ));
  it('says no where a hand is asked for that may not yet', () =>
    expect(short('there’s a drip, coat is two days old, oil poly. Can I just slice it off?')).toMatch(
      /^No, do not scrape it yet\./,
    ));
  it('says what is open: how dry it is, or the cause', () => {
    expect(short('there is a white ring on the lacquer of my new table')).toContain(
      'Until we know how dry it is',
    );
    expect(short('put oil on my desk, did not wipe it off, after four days it is a sticky mess')).toContain(
      'Until we know what mends it',
    );
  });
  it('takes shellac flakes for no flaking', () =>
    expect(
      short('My shellac won’t dry, still tacky after a day, the flakes were three years old'),
    ).not.toMatch(/peeling|wax-under/));
});
