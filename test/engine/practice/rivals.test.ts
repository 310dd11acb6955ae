/** Which flaws are offered beside the right one: as many as are asked for, and no item where there are fewer. Invented. */
import { expect, it } from 'vitest';
import { emptyCase, type Knowledge, withFact } from '#engine/index.ts';
import { chanceOf } from '#engine/practice/chance.ts';
import { OFFERED, rivalsOf } from '#engine/practice/rivals.ts';
import { defect, known, question, remedy } from '../small.ts';

const NAMES = ['right', 'like-it', 'second', 'third', 'fourth', 'fifth'];

/** So many flaws, each with a mark of its own that none of the others has. */
const flaws = (count: number): Knowledge => {
  const names = NAMES.slice(0, count);
  return known(
    remedy('mend'),
    ...names.map((name) => question(`is-${name}`)),
    ...names.map((name, at) =>
      defect(
        name,
        { remedy: 'mend' },
        {
          signs: Object.fromEntries(names.map((other) => [`is-${other}`, other === name ? 'yes' : 'no'])),
          'look-alikes': at === 0 ? ['like-it'] : ['right'],
        },
      ),
    ),
  );
};
const offered = (count: number, seed = 1) => {
  const all = flaws(count);
  const on = withFact(emptyCase(), 'family', 'water-based');
  return rivalsOf(all, { on, shows: {} }, all.get('defect', 'right'), chanceOf(seed, 1));
};

it('are three, the one that it is taken for first, each ruled out by a sign', () => {
  for (const count of [OFFERED, OFFERED + 1, NAMES.length])
    for (const seed of [1, 2, 3]) {
      const rivals = offered(count, seed) ?? [];
      expect(rivals.length, `${count} flaws`).toBe(OFFERED - 1);
      expect(rivals[0]?.flaw.id).toBe('like-it');
      expect(new Set(rivals.map(({ flaw }) => flaw.id)).size).toBe(rivals.length);
      for (const { flaw, sign } of rivals) expect([`is-${flaw.id}`, 'is-right']).toContain(sign.question);
    }
});

it('are none where there are fewer', () => {
  expect(offered(OFFERED - 1)).toBeUndefined();
});
