import { type Ahead, aheadOf, type JudgeTables, judgeLaying } from '../fitness/judge.ts';
import type { Laying, LayingProduct } from '../fitness/laying.ts';
import type { Knowledge } from '../knowledge/knowledge.ts';
import { FACTS } from '../model/facts.ts';
import { factsOfStep } from '../rules/hazards.ts';
import { rulesForStep } from '../rules/rules.ts';
import type { caseBook, Hole } from './hazard-cases.ts';
import { hazardsSaid } from './hazard-words.ts';

type Book = ReturnType<typeof caseBook>;

/** A coat that can be planned or put on the clock: its product, what is below, the tool, and what is mixed in. */
type Coat = { readonly laying: Laying; readonly product: LayingProduct };

const MILD = { celsius: 20, relativeHumidity: 0.5 };

/** What can be told of a hardener in a can of this kind. */
const hardened = ({ hardeners }: LayingProduct) =>
  hardeners ? ([undefined, 'none', ...hardeners] as const) : [undefined];

const coatsOf = (products: readonly LayingProduct[]): readonly Coat[] =>
  products.flatMap((product) =>
    [undefined, ...FACTS.base.values].flatMap((base) =>
      [undefined, ...FACTS.applicator.values].flatMap((applicator) =>
        hardened(product).flatMap((hardener) => [
          { laying: { base, applicator, hardener, onOwnCoat: false, day: MILD }, product },
          ...hardened(product).map((hardenerBelow) => ({
            laying: { base, applicator, hardener, hardenerBelow, onOwnCoat: true, day: MILD },
            product,
          })),
        ]),
      ),
    ),
  );

/** The steps before and of a coat, as the plan and the clock hand them to the rules. */
const stepsOf = (plan: JudgeTables, { laying, product }: Coat): readonly Ahead[] =>
  aheadOf(plan, laying, product);

/** Rows of the plan whose words tell of a hazard that neither their kind nor a mark gives. */
const untoldRows = (plan: JudgeTables): readonly string[] =>
  [...plan.wash, ...plan.prepare, ...plan.between].flatMap((row) => {
    const { say, does } = row;
    const grit = 'grit' in row ? row.grit : undefined;
    const has = grit
      ? new Set<string>(factsOfStep({ kind: 'sand', grit, say, ...(does && { does }) }).keys())
      : new Set<string>(does);
    return [...hazardsSaid(say)].flatMap(([hazard, word]) =>
      has.has(hazard) ? [] : [`"${say}" says "${word}", but nothing tells of ${hazard}`],
    );
  });

/** What stands before the coat in the end must hold every rule of its steps, for every age of what lies below. */
const silencedIn = (plan: JudgeTables, known: Knowledge, coat: Coat): readonly string[] =>
  [undefined, ...FACTS.age.values].flatMap((age) => {
    const laying = { ...coat.laying, age };
    const said = new Set(judgeLaying(plan, known, laying, coat.product).cautions.map(({ id }) => id));
    return stepsOf(plan, { ...coat, laying })
      .flatMap(({ on, steps }) => steps.flatMap((step) => rulesForStep(known, on, step)))
      .filter(({ id, kind }) => kind !== 'adjustment' && !said.has(id))
      .map(({ id }) => `${id} is left out before ${coat.product.id}, age ${age ?? 'not told'}`);
  });

/**
 * Every coat that a plan or the clock can lay, by every product, base, tool and age: what its steps can do, and whether
 * the rule that each calls for stands before it.
 */
export const layingHazards = (known: Knowledge, plan: JudgeTables, book: Book) => {
  const coats = coatsOf(known.products);
  const holes: Hole[] = [];
  let steps = 0;
  for (const coat of coats) {
    for (const { on, steps: ahead } of stepsOf(plan, coat))
      for (const step of ahead) {
        steps++;
        holes.push(...book.holesOf(step, [], on));
      }
  }
  return {
    coats: coats.length,
    steps,
    cases: steps * book.casesOfAStep,
    holes,
    untold: untoldRows(plan),
    silenced: coats.flatMap((coat) => silencedIn(plan, known, coat)),
  };
};
