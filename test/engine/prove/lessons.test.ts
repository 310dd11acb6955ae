/**
 * What the practice of a lesson can do to someone, by what it needs: paper makes dust, oil heats in a cloth, spirits give
 * vapor and go through skin, an old board has an old film on it (data sheets and agencies; cases of our own).
 */
import { describe, expect, it } from 'vitest';
import { hazardsOfLesson } from '#engine/prove/lessons-are-cautioned.ts';
import { isOnlyAPlace } from '#engine/steps/only-a-place.ts';

const does = (needs: readonly string[], practice: readonly string[] = ['Look at it.']) =>
  [...hazardsOfLesson({ needs, practice } as never)]
    .map(([hazard, truth]) => (truth === 'yes' ? hazard : `${hazard}?`))
    .sort();

describe('what a lesson needs', () => {
  it.each<[string, readonly string[]]>([
    ['a new board', []],
    ['a new board and paper P320', ['dust']],
    ['a new board and paper P1200', ['dust']],
    ['an old door and paper P320', ['dust', 'old-film']],
    ['a door you have laid yourself and P320', ['dust']],
    ['a new board and a blade', ['blade']],
    ['an old board and a blade', ['blade', 'old-film']],
    ['a new board and oil-based varnish', ['oily-cloth', 'vapor']],
    ['a new board and drying oil', ['oily-cloth', 'vapor']],
    ['a new board and oil stain', ['oily-cloth', 'vapor']],
    ['a new board and mineral spirits', ['solvent-on-skin', 'vapor', 'waste']],
    ['a new board and alcohol', ['solvent-on-skin', 'vapor', 'waste']],
    ['a new board and shellac', ['vapor']],
    ['a new board and paste wax', ['oily-cloth?', 'vapor']],
    // A cordless word within another is not meant.
    ['a new board and waxed paper', []],
    ['a new board and bladed tape', []],
    ['P32', []],
  ])('%s', (need, wanted) => {
    expect(does([need])).toEqual(wanted);
  });

  it.each(['a clear', 'your top coat', 'top coats', 'a finish', 'a stain', 'a gloss'])(
    '%s that is laid may hold oil or spirits, where its kind is not named',
    (can) => {
      for (const step of ['Lay a coat.', 'Coat it.', 'Load the brush.', 'Brush on a little.', 'Strain it.'])
        expect(does([`a new board and ${can}`], [step])).toEqual(['oily-cloth?', 'vapor?']);
      expect(does([`a new board and ${can}`])).toEqual([]);
      expect(does([`a new board and ${can}, water-based`], ['Lay a coat.'])).toEqual([]);
      expect(does([`a new board with dried ${can}`], ['Lay a coat.'])).toEqual([]);
    },
  );

  it('a word that only begins or ends alike names no can', () => {
    for (const other of ['a clearing', 'an unfinished list', 'glossy paper', 'stainless steel'])
      expect(does([`a new board and ${other}`], ['Lay a coat.'])).toEqual([]);
    expect(does(['a new board and a clear'], ['Delay it, reload the page.'])).toEqual([]);
  });

  it('what is sure of one thing is sure of all', () => {
    expect(does(['a new board', 'paste wax', 'drying oil'])).toEqual(['oily-cloth', 'vapor']);
    expect(does(['a new board', 'drying oil', 'paste wax'])).toEqual(['oily-cloth', 'vapor']);
  });
});

describe('whether a step is of a place or of a whole face', () => {
  it.each(
    'spot spots place places rim rims knot mark patch bits bubbles ridges hollow hollows pool groove grooves rope feather'.split(
      ' ',
    ),
  )('%s is a place', (word) => {
    expect(isOnlyAPlace(`Sand the ${word} down.`)).toBe(true);
    expect(isOnlyAPlace(`Sand the ${word}, then the whole of it.`)).toBe(false);
  });

  it.each(['knots', 'marks', 'pools', 'edges thin', 'edge thin', 'round the sharp edge'])(
    '%s, too',
    (words) => {
      expect(isOnlyAPlace(`Sand the ${words} down.`)).toBe(true);
    },
  );

  it.each(['whole', 'panel', 'face', 'top', 'rest', 'edge to edge', 'evenly', 'all over', 'all of it'])(
    'with %s it is all of a face',
    (words) => {
      expect(isOnlyAPlace(`Sand the spots, ${words}.`)).toBe(false);
    },
  );

  it.each(['Sand it.', 'Remarkable.', 'Carpool it.', 'Spotless.', 'Displace it.'])('%s names none', (say) => {
    expect(isOnlyAPlace(say)).toBe(false);
  });
});
