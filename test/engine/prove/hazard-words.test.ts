/**
 * Words of a step that tell a hazard, and sentences with the same words that tell none: what is denied, a yardstick, a
 * thing of another name. Sentences of our own.
 */
import { describe, expect, it } from 'vitest';
import { hazardsSaid, laidOrOpenedIn, orderedIn } from '#engine/prove/hazard-words.ts';

const said = (text: string) => [...hazardsSaid(text).keys()].sort();

describe('a hazard by its words', () => {
  it.each<[string, readonly string[]]>([
    ['Spray a light coat.', ['mist']],
    ['Mist one pass on.', ['mist']],
    ['It is sprayed on.', ['mist']],
    ['Brush or spray.', ['mist']],
    ['Try a card first.', ['mist']],
    ['Try it on cardboard.', ['mist']],
    ['Brush on alcohol.', ['old-film', 'vapor']],
    ['Brush alcohol on.', ['old-film']],
    ['Scrape it level.', ['old-film']],
    ['Shave off the run.', ['old-film']],
    ['Chip the drip away.', ['old-film']],
    ['Strip all of it.', ['old-film']],
    ['Cut through the skin.', ['old-film']],
    ['Cut it open.', ['blade', 'old-film']],
    ['Cut a line.', ['blade', 'old-film']],
    ['Make six cuts.', ['blade', 'old-film']],
    ['A cross cut.', ['blade', 'old-film']],
    ['Take a razor.', ['blade']],
    ['Take a scalpel.', ['blade']],
    ['Take a card scraper.', ['blade']],
    ['A single-edge one.', ['blade']],
    ['Sand it.', ['dust']],
    ['Scuff the face.', ['dust']],
    ['Sand by hand.', ['dust']],
    ['Rub the filler dry and smooth.', ['dust']],
    ['With the back of a sheet of sandpaper.', ['dust']],
    ['Wipe with mineral spirits.', ['solvent-on-skin', 'vapor']],
    ['Wipe with naphtha.', ['solvent-on-skin', 'vapor']],
    ['A drop of denatured alcohol.', ['solvent-on-skin', 'vapor']],
    ['Add retarder.', ['solvent-on-skin', 'vapor']],
    ['Lacquer thinner is strong.', ['solvent-on-skin', 'vapor']],
    ['Acetone.', ['solvent-on-skin', 'vapor']],
    ['Turpentine.', ['solvent-on-skin', 'vapor']],
    ['Let the thinner leave.', ['vapor']],
    ['Let the vapor out.', ['vapor']],
    ['Charge the pad.', ['solvent-on-skin']],
    ['Pad on a thin shellac.', ['solvent-on-skin']],
    ['Wipe on one cut of it.', ['solvent-on-skin']],
    ['Rub in linseed.', ['oily-cloth']],
    ['A drying oil.', ['oily-cloth']],
    ['A drop of oil.', ['oily-cloth']],
    ['Fresh oil.', ['oily-cloth']],
    ['The same oil.', ['oily-cloth']],
    ['An oil-based primer.', ['oily-cloth']],
    ['An oil-based stain-blocking primer.', ['oily-cloth']],
    ['Stain the spot.', ['oily-cloth']],
    ['Flood a cloth.', ['much-vapor']],
    ['A cloth soaked in it.', ['much-vapor']],
    ['In three rounds.', ['much-vapor']],
    ['Mineral spirits, a fresh cloth each time.', ['much-vapor', 'solvent-on-skin', 'vapor']],
    ['Mineral spirits, then wait and repeat.', ['much-vapor', 'solvent-on-skin', 'vapor']],
    ['Use a paint stripper.', ['much-vapor', 'stripper']],
    ['Wipe it with stripper.', ['much-vapor', 'stripper']],
    ['Oxalic acid.', ['oxalic-acid']],
    ['Wood bleach.', ['oxalic-acid']],
    ['Lye.', ['caustic']],
    ['Peroxide.', ['caustic']],
    ['Ammonia.', ['caustic']],
    ['A heat gun.', ['heat']],
    ['A hair dryer.', ['heat']],
    ['A clothes iron.', ['heat']],
    ['In a warm room.', ['heat']],
    ['In a warm, dry room.', ['heat']],
    ['Warm it.', ['heat']],
    ['Heat the spot.', ['heat']],
    ['Keep the room at 70.', ['heat']],
    ['Keep it warm.', ['heat']],
    ['Give it 65 to 70 °F.', ['heat']],
    ['A vacuum with HEPA.', ['mold-spores']],
    ['Throw it away.', ['waste']],
    ['The can goes out.', ['waste']],
    // What keeps an order safe forbids nothing of it.
    ['Wipe, with no flame near, with naphtha.', ['solvent-on-skin', 'vapor']],
    ['Let it dry, no sparks in the room, then sand it.', ['dust']],
  ])('%s', (text, wanted) => {
    expect(said(text)).toEqual(wanted);
  });

  it.each([
    'Do not sand it.',
    'Never spray it.',
    'No razor.',
    'Without mineral spirits.',
    'Keep off lye.',
    'Don’t warm it.',
    "Don't warm it.",
    'A pad instead of a razor.',
    'Away from a heat gun.',
    'Smoother than six cuts.',
    'Wait until you can sand it.',
    'Wait till a touch of paper makes powder when you sand it.',
    'Keep it out of the sun on a warm day.',
    'The sandy beach.',
    'Stainless.',
    'A misty day.',
    'Look at it.',
  ])('%s: none', (text) => {
    expect(said(text)).toEqual([]);
  });

  it('a denial ends with its sentence, a yardstick with its part', () => {
    expect(said('Do not press it. Sand it.')).toEqual(['dust']);
    expect(said('Do not press it; sand it.')).toEqual(['dust']);
    expect(said('Finer than that, sand it.')).toEqual(['dust']);
    expect(orderedIn('Wipe it, no flame near.').trim()).toBe('Wipe it, .');
  });

  it('is told with the word that tells it', () => {
    expect(hazardsSaid('Take the scalpel.').get('blade')).toBe('scalpel');
  });
});

describe('an order that lays something or opens a can', () => {
  it.each([
    'Lay a thin coat.',
    'Brush on shellac.',
    'Pad on the finish.',
    'Roll on primer.',
    'Rub on oil.',
    'Stir in a little color.',
    'Mix a stain.',
    'Coat it.',
    'Recoat them.',
    'Prime all.',
    'Stain a small patch.',
    'Spray it.',
    'Spray a test card.',
    'Try a card.',
    'One more coat.',
    'Two coats.',
    'Another light coat.',
    'A very thin coat.',
    'Gel stain.',
    'A film of paste wax.',
    'Touch it in.',
    'Touch the bare spot in.',
    'Sealed with it.',
    'Stir it.',
    'Strain the rest.',
    'Decant a little.',
    'Open a fresh can.',
    'Open the tin.',
    'Open your jar.',
    'Through a strainer.',
    'Smear it on glass.',
    'Charge the pad.',
    'Skin out the gun.',
  ])('%s', (text) => {
    expect(laidOrOpenedIn(text)).toBeDefined();
  });

  it.each([
    'Do not lay a coat.',
    'Mix polish with it.',
    'Lay paper down.',
    'Spray gun in hand, look.',
    'Before one coat.',
    'Open the window.',
    'Touch it.',
    'Look at it.',
  ])('%s: none', (text) => {
    expect(laidOrOpenedIn(text)).toBeUndefined();
  });
});
