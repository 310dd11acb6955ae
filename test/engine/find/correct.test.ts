import { expect, it } from 'vitest';
import { corrector } from '#engine/find/correct.ts';
import { stem } from '#engine/find/stem.ts';

const known = [
  'cloudy',
  'bubbles',
  'finish',
  'supposed',
  'wrinkled',
  'sticky',
  'separated',
  'holidays',
  'orange',
  'peel',
  'drips',
  'brush',
  'blush',
  'fisheyes',
  'craters',
  'yellowed',
  'tape',
];
const correct = corrector(new Map(known.map((word) => [word, stem(word)])));

it.each([
  ['cloudly', 'cloudy'],
  ['clowdy', 'cloudy'],
  ['bubling', 'bubbles'],
  ['finnish', 'finish'],
  ['suposed', 'supposed'],
  ['rinkled', 'wrinkled'],
  ['stikcy', 'sticky'],
  ['seperated', 'separated'],
  ['holday', 'holidays'],
  ['fisheys', 'fisheyes'],
  ['crators', 'craters'],
  ['yellwed', 'yellowed'],
  ['bursh', 'brush'],
])('reads %s as %s', (typed, meant) => {
  expect(correct(typed, false)[0]?.word).toBe(meant);
});

it.each(['tap', 'pizza', 'wallpaper', 'mortgage', 'xyzzy'])('knows nothing near %s', (typed) => {
  expect(correct(typed, false)).toEqual([]);
});

it('reads an unfinished word with a slip', () => {
  expect(correct('clowd', true)[0]?.word).toBe('cloudy');
  expect(correct('seper', true)[0]?.word).toBe('separated');
});

it('trusts a nearer word more', () => {
  const [near] = correct('cloudly', false);
  const [far] = correct('claudly', false);
  expect(near?.closeness).toBeGreaterThan(far?.closeness ?? 0);
});
