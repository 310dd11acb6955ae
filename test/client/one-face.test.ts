import { expect, it } from 'vitest';
import { faceOf } from '../../site/client/page/one-face.ts';

// CSS Fonts 4, font-display: optional: a face that is not here as the text is first painted is not taken later.
it.each([
  [[40, 60, 80, 90], 90, 'own'],
  [[40, 60, 80, 91], 90, 'near'],
  [[40, 60, 80], 90, 'near'],
  [[], 90, 'near'],
] as const)('of faces that came at %j, a page painted at %i keeps %s', (came, painted, face) => {
  expect(faceOf(came, painted)).toBe(face);
});
