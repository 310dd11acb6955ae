import type { Plan } from '../model/plan.ts';
import type { Firing, SaidRule } from '../rules/rules.ts';
import { type Judgement, type JudgeTables, judgeLaying } from './judge.ts';
import type { Laying, LayingProduct } from './laying.ts';
import type { No } from './no.ts';
import { baseWait, type FitnessRow, fitnessOf, named } from './rows.ts';

type PickRow = Plan['picks'][number];
type ChooseTables = JudgeTables & Pick<Plan, 'picks'>;

/** Room air, where nothing is told of it: which kind to take does not hang on today's weather. */
const ROOM = { celsius: 21, relativeHumidity: 0.5 };
/** As many of the others are told why they are not it. */
const OTHERS = 4;

/** What is known of a piece before its top coat is bought. */
export type Wanted = Omit<Laying, 'day' | 'night' | 'label' | 'onOwnCoat' | 'baseHours' | 'sheen'>;

/** One kind of top coat with its reason, or why there is none. */
export type Choice = {
  readonly chosen:
    | {
        readonly product: LayingProduct;
        /** Why this one. */
        readonly why: string;
        /** How long the base must have dried, where it must. */
        readonly wait: string | undefined;
        /** What to mind about it for this use. */
        readonly care: readonly FitnessRow[];
      }
    | undefined;
  /** What forbids a coat whatever it is, safety first; where none is chosen also what forbids each. */
  readonly noes: readonly No[];
  /** Why others are not chosen, each reason once. */
  readonly others: readonly { readonly families: readonly string[]; readonly why: string }[];
};

/** A row that speaks against kinds of product. */
type AgainstKind = FitnessRow & { readonly families: NonNullable<FitnessRow['families']> };

const speaksOf = (row: PickRow, { wear, base, tone }: Wanted): boolean =>
  named(row.wear, wear) && named(row.bases, base) && named(row.tones, tone);

/** What is minded because of the kind of product, and not with each of them. */
const ofItsKind = ({ care }: Judgement): number =>
  care.filter(({ families, products }) => families !== undefined || products !== undefined).length;

/**
 * Which kind of top coat to take: of the rows that speak of such a piece the one with the least to mind, and of equals the
 * first; never one that the judgement of a coat forbids. Where a rule forbids any coat there is none.
 */
export const chooseCoat = (
  plan: ChooseTables,
  known: Firing<SaidRule>,
  wanted: Wanted,
  products: readonly LayingProduct[],
): Choice => {
  const laying: Laying = { ...wanted, day: ROOM };
  const judged = plan.picks.flatMap((row) => {
    const product = products.find(({ id }) => id === row.product);
    return product && speaksOf(row, wanted)
      ? [{ row, product, judgement: judgeLaying(plan, known, laying, product) }]
      : [];
  });
  const rules = judged[0]?.judgement.noes.filter(({ code }) => code === 'rule') ?? [];
  if (rules.length) return { chosen: undefined, noes: rules, others: [] };
  const fit = judged
    .filter(({ judgement }) => judgement.verdict !== 'no')
    .sort((a, b) => ofItsKind(a.judgement) - ofItsKind(b.judgement));
  const [best] = fit;
  if (!best) return { chosen: undefined, noes: judged[0]?.judgement.noes ?? [], others: [] };
  // What is taken for other pieces is what she will have thought of.
  const often = products.filter(({ id }) => plan.picks.some(({ product }) => product === id));
  const isOften = ({ families }: AgainstKind): boolean =>
    often.some(({ family }) => families.includes(family));
  const against = products
    .filter(({ family }) => family !== best.product.family)
    .flatMap((product) => fitnessOf(plan, laying, product).slice(0, 1))
    .filter((row): row is AgainstKind => row.families?.includes(best.product.family) === false)
    .sort(
      (a, b) =>
        Number(isOften(b)) - Number(isOften(a)) || Number(b.verdict === 'no') - Number(a.verdict === 'no'),
    );
  return {
    chosen: {
      product: best.product,
      why: best.row.why,
      wait: baseWait(plan, laying, best.product)?.why,
      care: best.judgement.care,
    },
    noes: [],
    others: [...new Set(against.map(({ why }) => why))].slice(0, OTHERS).map((why) => ({
      families: [...new Set(against.flatMap((row) => (row.why === why ? row.families : [])))],
      why,
    })),
  };
};
