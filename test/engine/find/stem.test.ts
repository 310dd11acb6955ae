import { expect, it } from 'vitest';
import { stem } from '#engine/find/stem.ts';

it.each([
  ['bubble', 'bubbles', 'bubbling', 'bubbled', 'bubbly'],
  ['cloud', 'cloudy', 'clouds', 'cloudiness'],
  ['haze', 'hazy'],
  ['milk', 'milky'],
  ['fog', 'foggy'],
  ['wave', 'wavy', 'waves'],
  ['dry', 'dries', 'dried', 'drying'],
  ['peel', 'peeling', 'peels', 'peeled'],
  ['gloss', 'glossy'],
  ['easy', 'easily'],
  ['scratch', 'scratches', 'scratchy'],
])('gives the forms of %s one stem', (...forms) => {
  expect(new Set(forms.map(stem)).size).toBe(1);
});

it.each([
  ['witness', 'white'],
  ['wax', 'water'],
  ['lap', 'lip'],
  ['sand', 'sag'],
])('keeps %s and %s apart', (a, b) => {
  expect(stem(a)).not.toBe(stem(b));
});
