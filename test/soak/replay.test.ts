/** A fault of the soak is brought down to the acts that it needs. */
import { expect, it } from 'vitest';
import { dice } from '../dice.ts';
import { type Done, draw } from './acts/index.ts';
import { fewest } from './replay.ts';

const roll = dice(7);
const others = Array.from({ length: 300 }, () => draw(roll)).filter(([name]) => !/reload|offline/.test(name));
/** An invented fault: a reload at any time after the network went. */
const wrongIn = async (acts: readonly Done[]): Promise<readonly string[]> => {
  const gone = acts.findIndex(([name]) => name === 'offline');
  return gone >= 0 && acts.slice(gone).some(([name]) => name === 'reload') ? ['gone'] : [];
};
const faulty: readonly Done[] = [
  ...others.slice(0, 200),
  ['offline', 1],
  ...others.slice(200, 230),
  ['reload', 2],
];

it('leaves out what the fault does not need', async () => {
  expect(await fewest(faulty, 1, wrongIn)).toEqual({
    acts: [
      ['offline', 1],
      ['reload', 2],
    ],
    says: ['gone'],
  });
});

it('tells nothing where all goes well', async () => {
  expect(await fewest(others, 1, wrongIn)).toBeUndefined();
});
