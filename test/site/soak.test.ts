/** A user of chance for some seconds, and a leak that is planted to see that one is found. `npm run soak` goes on longer. */
import { expect, it } from 'vitest';
import { grown, soak } from '../soak/soak.ts';

it('does whatever it likes without an error, and leaves nothing behind', async () => {
  const soaked = await soak({ about: 0.6, sitting: 0.4, seats: ['/clock/'] }, 2026);
  expect(soaked.fault?.says).toBeUndefined();
  expect(soaked.counts.done).toBeGreaterThan(60);
  expect(soaked.hours).toBeGreaterThan(20);
  expect(grown(soaked)).toEqual([]);
});

it('finds what a page keeps for good', async () => {
  const leak = () => {
    const kept: string[][] = [];
    addEventListener('click', () => {
      kept.push(Array.from({ length: 2000 }, (_, at) => `${at} of ${kept.length}`));
    });
  };
  const soaked = await soak({ about: 0, sitting: 0.7, seats: ['/clock/'] }, 2026, leak);
  expect(soaked.fault?.says).toBeUndefined();
  expect(grown(soaked)).toEqual([expect.stringMatching(/^memory grows on \/clock\/ by at least \d+ bytes/)]);
});

it.each([
  [
    'an error',
    /planted/,
    () => {
      addEventListener('click', () => {
        throw new Error('planted');
      });
    },
  ],
  [
    'a value that was not there',
    /undefined/,
    () => {
      addEventListener('click', () => {
        document.querySelector('h1')?.append(` ${undefined}`);
      });
    },
  ],
])('ends with %s, and tells what led to it', async (_what, says, plant) => {
  const { fault } = await soak({ about: 2, sitting: 0, seats: [] }, 5, plant);
  expect(fault?.says.join(' ')).toMatch(says);
  expect(fault?.acts).toHaveLength(fault?.at ?? 0);
});
