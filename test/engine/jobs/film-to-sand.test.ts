/** What a walk says of the film before it is sanded. The limits: one varnish coat dries to about 25–50 µm (film-s89). */
import { expect, it } from 'vitest';
import { type Case, emptyCase, withFact } from '#engine/index.ts';
import { filmToSand } from '#engine/jobs/advice.ts';
import { WORDS } from '../clock/words.ts';
import { plan } from './cards.ts';

const film = (micrometers: number, coats: number): Case =>
  withFact(withFact(emptyCase(), 'film-micrometers', micrometers), 'coat-number', coats);

it('says nothing where film or coats are not known', () => {
  expect(filmToSand(plan.sanding, WORDS, emptyCase())).toBeUndefined();
  expect(filmToSand(plan.sanding, WORDS, withFact(emptyCase(), 'coat-number', 2))).toBeUndefined();
});

it.each([
  [60, 1, /^About 60 µm dry, 1 coat\. Sand-through risk/],
  [24, 2, /Sand-through risk: the clear film is thin/],
  [40, 2, /^About 40 µm dry, 2 coats\. Some sand-through risk/],
  [50, 3, /bears a light rub/],
])('judges %i µm in %i coats', (micrometers, coats, says) => {
  expect(filmToSand(plan.sanding, WORDS, film(micrometers, coats))?.says).toMatch(says);
});

it('says nothing of oil and wax, which make no film to go through', () => {
  expect(filmToSand(plan.sanding, WORDS, withFact(film(60, 3), 'family', 'oil'))).toBeUndefined();
});
