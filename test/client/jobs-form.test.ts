/**
 * Whatever is typed, pasted, turned or cleared in the form of a piece, and read at any moment: the card is one that its
 * reader takes, and a field that can not be read leaves on the card what was there.
 */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { changed, newCard } from '#engine/jobs/card.ts';
import type { JobCard } from '#engine/model/job-card.ts';
import { readCard } from '#engine/model/read-card.ts';
import { pieceDraft, readPiece } from '../../site/client/jobs/parts/piece-form.ts';
import type { Units } from '../../site/client/shared/form/units.ts';
import { THOROUGH } from '../thorough.ts';

const NOW = Date.UTC(2026, 10, 23, 17);
const START: JobCard = newCard(
  { name: 'Navy dresser', kind: 'furniture', base: 'chalk-paint', tone: 'dark', age: 'none' },
  'one',
  NOW,
);

type Typed = { readonly field: string; readonly texts: readonly string[] };

/** A year typed into a field for day and time, as browsers tell it: after each digit the field holds another year. */
const digitByDigit = (year: string): string[] =>
  [...year].map((_digit, index) => `${year.slice(0, index + 1).padStart(4, '0')}-11-01T09:30`);

const year = fc.integer({ min: 0, max: 9999 }).map(String);
const dates: fc.Arbitrary<Typed> = fc.oneof(
  fc.record({ field: fc.constant('base-laid'), texts: year.map(digitByDigit) }),
  // An arrow key or a wheel over a part of the field.
  fc.record({
    field: fc.constant('base-laid'),
    texts: fc
      .tuple(fc.integer({ min: 1900, max: 2300 }), fc.integer({ min: 1, max: 12 }), fc.nat({ max: 9 }))
      .map(([first, month, steps]) =>
        Array.from(
          { length: steps + 1 },
          (_unused, step) => `${first + step}-${String(month).padStart(2, '0')}-31T02:30`,
        ),
      ),
  }),
);
const number = fc.oneof(
  fc.double({ noNaN: true, min: -200, max: 300 }).map((value) => value.toFixed(2)),
  fc.integer({ min: -60, max: 160 }).map((value) => String(value).replace('.', ',')),
  fc.constantFrom('1e9', '0x1f', '-', '50,5', '122', '122.04', '-22', '−22,04', 'warm', '100.02', ' '),
);
const typedKeyByKey = (text: string): string[] => [...text].map((_sign, index) => text.slice(0, index + 1));
const paste = fc.oneof(
  fc.string({ maxLength: 120 }),
  fc.constant('x'.repeat(5000)),
  fc.constant('<b>\u0000'),
);
const anyEdit: fc.Arbitrary<Typed> = fc.oneof(
  dates,
  fc.record({ field: fc.constantFrom('night', 'night-humidity'), texts: number.map(typedKeyByKey) }),
  fc.record({
    field: fc.constantFrom(
      'name',
      'night',
      'night-humidity',
      'base-laid',
      'product',
      'kind',
      'sheen',
      'trials',
    ),
    texts: paste.map((text) => [text]),
  }),
  fc.record({
    field: fc.constantFrom('name', 'night', 'night-humidity', 'base-laid', 'product', 'sheen', 'trials'),
    texts: fc.constant(['']),
  }),
  fc.record({
    field: fc.constant('trials'),
    texts: fc.constantFrom(['water'], ['water,heat'], ['child,food']),
  }),
);

const SEQUENCES = THOROUGH ? 20_000 : 200;

it(`leaves a card that its reader takes, over ${SEQUENCES} sequences of edits`, { timeout: 300_000 }, () => {
  let [edits, refused] = [0, 0];
  fc.assert(
    fc.property(
      fc.array(anyEdit, { minLength: 1, maxLength: 8 }),
      fc.constantFrom<Units>('us', 'metric'),
      (sequence, units) => {
        let card = START;
        let draft = pieceDraft(card, units);
        for (const { field, texts } of sequence)
          for (const text of texts) {
            draft = { ...draft, [field]: text };
            const read = readPiece(draft, units);
            const change = read.changeOf(field);
            edits += 1;
            if (change) card = changed(card, change, NOW);
            else refused += 1;
            // Beside a field that is not read stands why.
            if (!change) expect(read.faults.map((fault) => fault.field).join()).toMatch(/\S/);
            const taken = readCard(card);
            if (!taken.ok) throw new Error(`${field} “${text}”: ${JSON.stringify(taken.faults)}`);
          }
        // What stands on the card comes back into the form and out of it as it was.
        const again = readPiece(pieceDraft(card, units), units);
        expect(again.faults).toEqual([]);
      },
    ),
    { numRuns: SEQUENCES, seed: 20_261_128 },
  );
  console.log('edits', JSON.stringify({ sequences: SEQUENCES, edits, refused }));
  expect(refused).toBeGreaterThan(edits / 20);
});
