/**
 * Words beside a bare figure that make it one of the air, and words that make it something else, form by form; with letters
 * glued to them they do neither. How people tell the weather is common practice, no source. Phrases of our own.
 */
import { describe, expect, it } from 'vitest';
import { temperatures } from '#engine/hear/measures/temperatures.ts';

const air = (text: string) => temperatures(text).air.length > 0;
const surface = (text: string) => temperatures(text).surface.length > 0;

describe('a bare figure of the air', () => {
  const BEFORE = [
    ...'temp temps temperature temperatures thermometer thermostat heat heater heated cool cold chilly warm warmish hot outside out indoors inside air'.split(
      ' ',
    ),
    ...'here there'.split(' ').map((one) => `in ${one}`),
    ...'shop garage basement house room hall shed shade sun day night winter summer trailer barn attic booth'
      .split(' ')
      .map((one) => `in the ${one}`),
    ...'shop garage basement room house cellar attic shed porch barn booth trailer'
      .split(' ')
      .map((one) => `${one} was`),
    ...'is at stays stay stayed about around between got gets down up dropped fell went hit hits reached'
      .split(' ')
      .map((one) => `cellar ${one}`),
    "porch's at",
    'got down to',
    'dropped to',
    'fell to',
    'dipped to',
    'went down to',
    'climbed to',
    'at night',
    'all day',
    ...'day night bedtime noon evening morning'.split(' ').map((one) => `by ${one}`),
    'keep it at',
    'kept at',
    'keeps it around',
    'keep it about',
    'held at',
    'sits at',
    'sat at',
    'set to',
    'set at',
    'heated to',
    'weather said',
    'weather was',
    'booth at',
    ...'varnished brushed sprayed rolled coated laid shot put'.split(' ').map((one) => `when I ${one}`),
    'never got past',
    "now it's",
    'now its',
  ];
  it.each(BEFORE)('%s 68', (words) => {
    expect(air(`${words} 68.`)).toBe(true);
  });
  it.each([
    'degrees',
    'degree',
    'outside',
    'in here',
    'at night',
    'and raining',
    'and snowing',
    'and sunny',
    'and dry',
    'and humid',
    'and muggy',
    'and damp',
    'and foggy',
    'sticky out',
  ])('68 %s', (words) => {
    expect(air(`68 ${words}.`)).toBe(true);
  });
  it.each(['temp', 'chilly', 'indoors', 'held at', 'thermostat', 'heater'])('%s is a whole word', (words) => {
    expect(air(`qu${words} 68.`)).toBe(false);
    expect(air(`${words}qu 68.`)).toBe(false);
  });
  it('stands near, and in its own sentence', () => {
    expect(air('temp 68.')).toBe(true);
    expect(air('temp. 68.')).toBe(false);
    expect(air('temp! 68.')).toBe(false);
    expect(air('temp; 68.')).toBe(false);
    expect(air('temp, 68.')).toBe(true);
    expect(air('temp of this and of that and all 68.')).toBe(false);
    expect(air('68. Temp.')).toBe(false);
    expect(air('68.5 temp.')).toBe(true);
    expect(air('nothing 68.')).toBe(false);
  });
  it('is between 35 and 110, from the smaller to the greater', () => {
    for (const value of [35, 36, 109, 110]) expect(air(`temp ${value}.`), String(value)).toBe(true);
    for (const value of [34, 111, 9, 680]) expect(air(`temp ${value}.`), String(value)).toBe(false);
    for (const join of ['-', ' to ', ' or ', ' and ', '–']) expect(air(`temp 60${join}70.`), join).toBe(true);
    expect(air('temp 70-60.')).toBe(false);
  });
});

describe('a bare figure of something else', () => {
  it.each([
    ...'grit sanded sand sandpaper paper pad pads psi gloss with wool mesh no no. number model from since size age aged only im humid humidity hum rh hygrometer'.split(
      ' ',
    ),
    "my dad's",
    'dew point',
    "mic'd",
    'grit is',
    'grit was at',
    'humidity runs',
    'rh about',
    'grit between',
    'hygrometer jumped to',
    'humidity never under',
    'rh over',
  ])('cold, %s 68', (words) => {
    expect(air(`cold, ${words} 68.`)).toBe(false);
  });
  it.each(
    '% percent grit year hour hr minute min day week month second coat foot feet ft inch mile lb pound psi ml oz gal gauge paper x people pieces bucks dollar rpm mil mic mics micron doors th wet'
      .split(' ')
      .concat(['in a row', 'times', 'by 4', "'s"]),
  )('cold, 68 %s', (words) => {
    expect(air(`cold, 68 ${words}`)).toBe(false);
  });
  it.each([
    '$68',
    '#68',
    '/68',
    ':68',
    '-68',
    '168',
    '6,68',
    '68,5',
    '68 to 80 %',
    '68 or 80 percent',
    '68 and 80 grit',
    '68 to 80 psi',
  ])('cold %s', (figure) => {
    expect(air(`cold ${figure}`)).toBe(false);
  });
});

describe('a measured surface', () => {
  it.each([
    'laser',
    'infrared',
    'infra-red',
    'ir',
    'ir gun',
    'ir thermometer',
    'pyrometer',
    'surface',
    ...'wood panel board slab top steel metal iron leg legs piece glass marble stone'
      .split(' ')
      .map((one) => `${one} read`),
    'wood reads',
    'wood reading',
    'wood measured',
    'wood temp',
    'wood temperature',
    'wood itself read',
    'wood leg read',
    'touching the wood',
    'touch the wood',
  ])('%s 68 F', (words) => {
    expect(surface(`the ${words} 68 F.`)).toBe(true);
    expect(air(`the ${words} 68 F.`)).toBe(false);
  });
  it.each([
    'the wood 68 F',
    'the laserjet 68 F',
    'qulaser 68 F',
    'the floor surface 68 F',
    'the ground surface 68 F',
    'the concrete surface 68 F',
    'air surface 68 F',
    'room surface 68 F',
    'weather surface 68 F',
    'thermostat surface 68 F',
    'outside surface 68 F',
    'shop surface 68 F',
    'garage surface 68 F',
    'the cloth reads 68 F',
  ])('%s: of the air', (text) => {
    expect(surface(`${text}.`)).toBe(false);
    expect(air(`${text}.`)).toBe(true);
  });
});
