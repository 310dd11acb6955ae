/**
 * What can only be sprayed is sprayed, whether or not a tool is said: the stop against flame comes with it, and before the
 * dust of sanding. The rule and its sources are content/rules/vapor-and-flame-when-spraying.mdx.
 */
import { expect, it } from 'vitest';
import { judgeLaying } from '#engine/fitness.ts';
import { layingOfCard } from '#engine/jobs.ts';
import { card, coat, START } from '../jobs/cards.ts';
import { known, plan, productOf } from '../schedule/sheet.ts';

const cautionsOf = (product: string) => {
  const next = coat({ product, applicator: undefined });
  const on = card({ coats: [], product });
  return judgeLaying(plan, known, layingOfCard(on, next), productOf(product), { at: START }).cautions;
};

it.each(['sprayed-lacquer', 'aerosol-lacquer'])('%s is sprayed by what it is', (product) => {
  const cautions = cautionsOf(product);
  expect(cautions.filter(({ kind }) => kind === 'stop').map(({ id }) => id)).toContain(
    'vapor-and-flame-when-spraying',
  );
  const ids = cautions.map(({ id }) => id);
  expect(ids.indexOf('mask-is-not-for-vapor')).toBeGreaterThanOrEqual(0);
  expect(ids.indexOf('mask-is-not-for-vapor')).toBeLessThan(ids.indexOf('sanding-dust'));
});

it('a lacquer for the brush is not taken to be sprayed', () => {
  expect(cautionsOf('brushing-lacquer').map(({ id }) => id)).not.toContain('vapor-and-flame-when-spraying');
});
