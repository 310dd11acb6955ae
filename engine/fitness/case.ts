import { type Case, emptyCase, withFact } from '../case/case.ts';
import type { ValueOf } from '../model/facts.ts';
import type { Step } from '../model/step.ts';
import type { Laying, LayingProduct } from './laying.ts';

/** What the piece counts as for safety: what is done with it wins over what it is called. */
export const pieceOf = ({
  kind,
  trials,
}: {
  readonly kind: ValueOf<'piece'>;
  readonly trials?: Laying['trials'];
}): ValueOf<'piece'> => {
  if (kind === 'crib' || kind === 'valuable') return kind;
  if (trials?.includes('child')) return 'childs-item';
  return trials?.includes('food') ? 'food-surface' : kind;
};

/** The facts of a coat that is about to be laid, for the rules. Her own new paint is as good as paint since 1993. */
export const factsOfLaying = (laying: Laying, { family }: LayingProduct): Case => {
  const { kind, trials, base, tone, sheen, applicator, hardener, age, day, night } = laying;
  let on = withFact(emptyCase(), 'family', family);
  if (kind) on = withFact(on, 'piece', pieceOf({ kind, trials }));
  if (base) on = withFact(on, 'base', base);
  if (tone) on = withFact(on, 'base-tone', tone);
  if (sheen) on = withFact(on, 'sheen', sheen);
  if (applicator) on = withFact(on, 'applicator', applicator);
  if (hardener) on = withFact(on, 'hardener', hardener);
  if (age) on = withFact(on, 'age', age === 'none' ? 'since-1993' : age);
  return withFact(on, 'air-celsius', Math.min(day.celsius, (night ?? day).celsius));
};

/** The step of laying a coat of this product with this tool, as the rules know it. */
export const coatStep = ({ applicator }: Laying, { family }: LayingProduct): Step => ({
  kind: 'coat',
  say: 'Lay one coat.',
  thin: true,
  by: applicator === 'spray-gun' || applicator === 'aerosol' ? 'spray' : 'hand',
  product:
    family === 'shellac' ? 'dewaxed-shellac' : family === 'wax' ? 'wax' : family === 'oil' ? 'oil' : 'same',
});
