/** What the page that listens leaves in the case, so that the page of a flaw does not ask it again. Texts invented. */
import { expect, it } from 'vitest';
import { mindOf } from '#engine/hear.ts';
import { emptyCase } from '#engine/index.ts';
import { factsOfCard } from '#engine/jobs.ts';
import { withTold } from '../../site/client/tell/keep-case.ts';
import { toldOf } from '../../site/client/tell/of-piece.ts';
import { NOTHING_TOLD } from '../../site/client/tell/state.ts';
import { heard, known } from '../engine/hear/hearing.ts';
import { card, products, START } from '../engine/jobs/cards.ts';

const mind = mindOf(known);
const keptOf = (text: string, defect: string, told: Readonly<Record<string, string>> = {}) => {
  const on = withTold(emptyCase(), mind, { ...NOTHING_TOLD, text, told }, heard(text), defect);
  return Object.fromEntries(Object.entries(on).map(([name, { value }]) => [name, value]));
};

it('holds what the words tell of the piece, and signs that the flaw shows', () => {
  const kept = keptOf('My spray can left raised blobs on a cabinet door', 'spatter');
  expect(kept).toMatchObject({ applicator: 'aerosol', piece: 'furniture', 'stands-up': 'yes' });
});

it('leaves out a sign that speaks against the flaw that she goes to', () => {
  expect(keptOf('raised blobs on a door', 'white-rings')['stands-up']).toBeUndefined();
});

it('lets no stop for old paint fall by words alone, only by a tap', () => {
  const text = 'I built it last year, the varnish peels';
  expect(keptOf(text, 'peeling')['age']).toBeUndefined();
  expect(keptOf(text, 'peeling', { age: 'since-1993' })['age']).toBe('since-1993');
  expect(keptOf('a dresser of the 1950s, it peels', 'peeling')['age']).toBe('before-1993');
});

it('keeps what was tapped, but asks again what nobody could tell', () => {
  const kept = keptOf('it looks odd', 'spatter', { 'stands-up': 'no', 'was-sprayed': 'unsure' });
  expect(kept['stands-up']).toBe('no');
  expect(kept['was-sprayed']).toBeUndefined();
});

it('keeps neither times nor weather, which are the clock’s, nor how dry it is, which the address tells', () => {
  const kept = keptOf('brushed poly 3 hours ago at 60 F, still tacky', 'tacky-film', { stage: 'setting' });
  for (const name of ['hours-since-coat', 'air-celsius', 'stage']) expect(kept[name]).toBeUndefined();
});

it('takes along what the card of the piece on the clock knows, for the page that listens and for the flaw', () => {
  const on = factsOfCard(card({ base: 'stain', age: 'none' }), products, START + 30 * 3_600_000);
  const told = toldOf(on);
  expect(told).toMatchObject({
    family: 'water-based',
    base: 'stain',
    age: 'since-1993',
    piece: 'furniture',
    applicator: 'brush',
    sheen: 'satin',
  });
  // How dry it is and the weather stay the clock's.
  for (const name of ['stage', 'air-celsius', 'hours-since-coat']) expect(told[name]).toBeUndefined();
  expect(keptOf('there are runs on the leg', 'runs-and-sags', told)).toMatchObject({
    family: 'water-based',
    base: 'stain',
    age: 'since-1993',
  });
});
