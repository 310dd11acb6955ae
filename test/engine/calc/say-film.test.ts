/** A film in words: the unit of the reader first. 1 mil is 25.4 µm by definition. */
import { expect, it } from 'vitest';
import { sayFilm, sayFilmInBoth, withFilmIn } from '#engine/calc/say-film.ts';

it('says a film in the unit of the reader first', () => {
  expect(sayFilm(23, 28, 'us')).toBe('0.9–1.1 mil');
  expect(sayFilm(23.2, 28, 'metric')).toBe('23–28 µm');
  expect(sayFilmInBoth(23, 28, 'us')).toBe('0.9–1.1 mil (23–28 µm)');
  expect(sayFilmInBoth(25.4, 25.4, 'metric')).toBe('25 µm (1.0 mil)');
});

it('turns what the tables say, once', () => {
  const told = 'The film is thicker than 125 µm: it may crack.';
  expect(withFilmIn(told, 'us')).toBe('The film is thicker than 4.9 mil (125 µm): it may crack.');
  expect(withFilmIn(told, 'metric')).toBe(told);
  expect(withFilmIn('125 µm (4.9 mil)', 'us')).toBe('125 µm (4.9 mil)');
});
