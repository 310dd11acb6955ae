/**
 * A flaw that is called by its name goes before what the kind of finish, the base and the weather make likely. The sentences
 * are invented (named-grid.ts); the floors are what was measured on 30 November 2026, README.md.
 */
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { consider, flawWords, hear, mindOf } from '#engine/hear.ts';
import { readHearing } from '../../content/tools/hear.ts';
import { readIndex } from '../../content/tools/said.ts';
import { known } from '../content/real/knowledge.ts';
import { THOROUGH } from '../thorough.ts';
import { CELLS } from './named-grid.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));
const hearing = readHearing(known, root);
const index = readIndex(known, root);
const mind = mindOf(known);

const likelyOf = (text: string) => {
  const heard = hear(hearing, text);
  return consider(mind, { told: {}, heard, words: flawWords(index, mind, text, heard) }).likely;
};
/** `npm test` looks at every fifth sentence. */
const cells = CELLS.filter((_, at) => THOROUGH || at % 5 === 0).map((cell) => {
  const [first] = likelyOf(cell.text);
  return { ...cell, first: first?.defect ?? '', chance: first?.chance ?? 0 };
});
const isNamed = ({ is, first }: (typeof cells)[number]) => is.includes(first);

/** "Most likely that is" another flaw than the one that was named. */
const MOST_LIKELY = 0.6;

describe('a flaw that is named', () => {
  it.each([
    ['read', false, 0.985],
    ['held out', true, 0.975],
  ] as const)('goes before others in sentences that were %s', (_, heldOut, floor) => {
    const part = cells.filter((cell) => cell.heldOut === heldOut);
    const other = part.filter((cell) => !isNamed(cell));
    expect(1 - other.length / part.length, JSON.stringify(other, undefined, 1)).toBeGreaterThanOrEqual(floor);
  });
  it('is not called another', () => {
    const other = cells.filter((cell) => !isNamed(cell) && cell.chance >= MOST_LIKELY);
    expect(other.length / cells.length, JSON.stringify(other, undefined, 1)).toBeLessThanOrEqual(0.005);
  });

  it.each([
    ['no runs and no hairs, but the water based poly over navy is milky', 'cloudy-film'],
    ['fish eyes in water based poly over milk paint', 'fisheyes'],
    ['poly over oak stain, orange peel everywhere', 'orange-peel'],
    ['water based two part poly blushed in the damp', 'cloudy-film'],
    ['brushed shellac in the rain and it blushed', 'blush'],
    ['smells of cat pee since I oiled the floor', 'lingering-smell'],
    ['small wrinkles in the corner, oil paint, two thick coats the same day', 'wrinkling'],
    ['wrinkles in the danish oil', 'wrinkled-oil'],
  ])('is what is meant: %s', (text, flaw) => {
    expect(likelyOf(text)[0]?.defect).toBe(flaw);
  });
});

describe('what only sounds like the name of a flaw', () => {
  it.each([
    'my heater runs all night, poly on the table',
    'the cat runs across the shop, shellac on the desk',
    'dusty garage, can I lay water based poly there',
    'can I use a hair dryer on the poly',
    'what grit between coats of poly',
    'how to avoid brush marks with water based poly',
    'milk paint and then poly',
    'the run was 12 doors, lacquer',
  ])('names none: %s', (text) => {
    expect(hear(hearing, text).names.filter(({ denied }) => !denied)).toEqual([]);
  });
});
