/**
 * What is said in the words of a coat and is none of it: what will be laid, what is hoped, times of glasses, of layers
 * below and of other pieces, what was dried that is no film. Sentences of our own, invented; what each tells is plain
 * from its words.
 */
import { describe, expect, it } from 'vitest';
import { SURE } from '#engine/hear.ts';
import { fact } from './hearing.ts';

const told = (text: string, name: string) => {
  const found = fact(text, name);
  return found && found.sure >= SURE ? found.value : undefined;
};
const hours = (text: string) => told(text, 'hours-since-coat');
const stage = (text: string) => told(text, 'stage');
const coats = (text: string) => told(text, 'coat-number');

it('the time of a spill is none of the coat', () => {
  expect(hours('just spilled vodka on the shellac bar top 2 minutes ago')).toBeUndefined();
  expect(hours('Ten minutes ago I spilled coffee on the waxed table')).toBeUndefined();
  expect(hours('Brushed the poly two hours ago and spilled the can')).toBe(2);
});

describe('the age of what the coat lies on', () => {
  it.each([
    'lacquer over oil stain after 3 hrs, its wrinkling now',
    'put shellac over oil stain after 2 hours and the stain dragged',
    'shellac over oil stain 3 hours old, the stain is smearing now',
    'sprayed lacquer over 2 hour old stain, it lifts',
    'brushed poly over stain that was only five hours old and it pulled color',
  ])('is none of the coat: %s', (text) => {
    expect(hours(text)).toBeUndefined();
    expect(stage(text)).toBeUndefined();
  });

  it.each([
    ['brushed poly over the stain 3 hours ago, it is cloudy', 3],
    ['poly over gel stain, after 2 days it is still tacky', 48],
    ['poly over gel stain after 2 days it is still tacky', 48],
  ])('leaves that of the coat: %s', (text, said) => expect(hours(text)).toBe(said));
});

it('a coat that does not stick to an old piece tells how old it is, and of no dry film', () => {
  const text = 'milk paint wont stick to my old dresser, flaking';
  expect(told(text, 'age')).toBe('unknown');
  expect(stage(text)).toBeUndefined();
  expect(stage('the varnish does not stick to my hand')).toBe('dry-to-touch');
  expect(told('it is not an old dresser, the poly peels', 'age')).toBeUndefined();
});

describe('what is used on furniture', () => {
  it.each([
    'i used furniture polish spray on the oiled table',
    'i used furniture wax on the table and now the poly beads up',
    'we used furniture oil on it and the varnish streaks',
  ])('tells of no bought piece: %s', (text) => expect(told(text, 'age')).toBeUndefined());

  it('leaves furniture that somebody used', () => {
    expect(told('bought used furniture, the varnish is sticky', 'age')).toBe('unknown');
    expect(told('used furniture from a dealer, poly peels', 'age')).toBe('unknown');
  });

  it('takes a coat that is wet for no old finish', () => {
    expect(told('brushed varnish over the wet shellac', 'base')).toBeUndefined();
    expect(told('cat walked over the wet shellac', 'base')).toBeUndefined();
    expect(told('brushed poly over the shellac, it wrinkles', 'base')).toBe('old-finish');
  });
});

describe('no dry film is heard', () => {
  it.each([
    'I hope it is not sticky tomorrow, the varnish went on today',
    "Hopefully the poly won't be tacky by then",
    'hoping the varnish is dry when I get home',
    'There is a gnat in the varnish. Now it has to dry',
    'The wind had dried the deck, so I brushed the varnish',
    'brushed on the poly, then I dried the brush and went home',
    'Washed with spirits, dried, red stain. Then I wiped on the poly',
  ])('%s', (text) => {
    expect(stage(text)).toBeUndefined();
  });

  it('what is told behind the comma of a hope is told', () => {
    expect(stage('I hope you can help, the varnish is still sticky')).toBe('setting');
    expect(stage('The poly dried the whole night and is hard')).toBe('recoatable');
  });
});

describe('no time of the coat is heard', () => {
  it.each([
    'the can says that poly cures in 30 days',
    'oil varnish lasts 10 years, how do I know that mine is worn',
    'I primed it 2 days ago and now brush poly',
    'a wet glass stood on the poly for 3 hours',
    'a hot pan sat on the varnish for an hour and left a ring',
    'The desk is bleeding through the paint. The one at our old house was different, and only after a few years did knots show',
    'A fresh coat, and it bubbled. I laid that old finish 15 years ago',
    'the varnish blew about, so I called it a day',
    'I mixed my own shellac, stirred for two days, and brushed it on',
  ])('%s', (text) => {
    expect(hours(text)).toBeUndefined();
  });

  it.each([
    ['the poly sat for 3 days and is still sticky', 72],
    ['The guitar sat 6 days after the last coat of lacquer and is rough', 144],
    ['Waited two weeks after the last coats of lacquer to buff. Ten weeks on, the finish is soft', 1680],
    ['Brushed on one coat of varnish. Now, at 22 hours, it is tacky', 22],
    ['two coats of hardwax oil, then two weeks of waiting as they recommend', 336],
    ['I varnished the desk in our old house two years ago and now it peels', 9000],
    ['my desk was varnished last year', 6500],
  ])('%s: %d h', (text, wanted) => {
    expect(hours(text)).toBeCloseTo(wanted, 0);
  });
});

describe('hours of the clock', () => {
  it.each([
    ['laid the varnish at seven this morning, now it is noon', 5],
    ['brushed the poly at seven, now noon', 5],
    ["put the coat on at 8 am and it's noon now", 4],
    ["put the poly on at 10, it's 2 and still wet", 4],
    ['laid the poly at noon, it is three in the afternoon', 3],
    ["brushed the varnish at 9 o'clock, it is 11 o'clock now", 2],
    ['laid it at seven yesterday evening. It is noon', 17],
    ['Laid the varnish at a quarter to six, it is now twenty past seven', 1.58],
    ['sprayed the sealer at 1, then the clear at 2:30. It is half past four now', 2],
    ['Rolled the clear on at ten last night. Up at seven thirty and it still sticks', 9.5],
    ['It is 4:15 now and I stopped brushing at three', 1.25],
  ])('%s: %d h', (text, wanted) => {
    expect(hours(text)).toBeCloseTo(wanted, 1);
  });

  it.each([
    'laid poly at 7 mil wet, it is 3 coats',
    'put the varnish on at about nine, it is one of my first',
    'laid it at seven yesterday. It is nine',
  ])('%s: none', (text) => {
    expect(fact(text, 'hours-since-coat')?.range?.[1] ?? 0).not.toBeCloseTo(5.4, 1);
    expect(fact(text, 'hours-since-coat')?.sure).not.toBe(0.85);
  });
});

describe('coats', () => {
  it.each([
    ['laid the 12th coat of lacquer yesterday', 12],
    ['the twelfth coat of lacquer has dust in it', 12],
    ['gave it twenty or so coats of poly', 20],
    ['three coats of lacquer, then sanded, and so on, eight or nine in all', 9],
    ['one coat of oil, a second coat the next day, buffed a bit on the third', 2],
    ['the walnut took up oil even after 7 coats of oil, a day between', 7],
  ])('%s: %d', (text, wanted) => {
    const range = fact(text, 'coat-number')?.range ?? [0, 0];
    expect(range[0]).toBeLessThanOrEqual(wanted);
    expect(range[1]).toBe(wanted);
  });

  it.each([
    'I will lay three coats of poly on the desk',
    "I'm going to lay three coats of varnish",
    'laid varnish on the decks, meaning two or three coats before they go in',
    'wiping oil varnish on the guitar, three coats a day',
  ])('%s: not laid', (text) => {
    expect(coats(text)).toBeUndefined();
    expect(stage(text)).toBeUndefined();
  });
});

describe('words of the piece, the layer below and the tool', () => {
  it.each([
    ['my cats are black and the first coat of clear is full of hair', 'base-tone', undefined],
    ['stains are bleeding through the chalk paint', 'base', 'chalk-paint'],
    ['brushed it on a scrap of red oak', 'base', 'bare-wood'],
    ['maple sanded to 320, one coat of hardwax oil', 'base', 'bare-wood'],
    ['primed from spray cans, then brushed on the varnish', 'applicator', 'brush'],
    ['a doll crib of 1959, painted white', 'piece', 'childs-item'],
    ['our butcher block counters have a dry place by the sink', 'piece', 'tabletop'],
    ['friction polish on small turnings', 'family', 'shellac'],
    ['tung oil on a cutting board, then melted beeswax into the oil', 'family', 'oil'],
  ])('%s: %s is %s', (text, name, wanted) => {
    expect(told(text, name)).toBe(wanted);
  });
});
