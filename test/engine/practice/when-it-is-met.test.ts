/**
 * When a flaw can be asked about, and what is told of it then: never what its signs rule out, nor a film at a stage at
 * which it is not there. Each flaw with a few seeds; the times that a can prints are round ones.
 */
import { describe, expect, it } from 'vitest';
import { readPractice } from '../../../content/tools/practice.ts';
import { answerOf, stageOf, visits } from '../../../engine/index.ts';
import { ASKED } from '../../../engine/knowledge/known-questions.ts';
import { signOf } from '../../../engine/knowledge/sign.ts';
import { dealPractice, type PracticeItem, practised } from '../../../engine/practice.ts';
import { known } from '../../content/real/knowledge.ts';

const words = readPractice(known, process.cwd());
const items: readonly PracticeItem[] = practised(known, 'stage').flatMap((flaw, at) =>
  [0, 1, 2, 3].map((n) =>
    dealPractice(known, words, { level: n % 2 ? 'case' : 'stage', flaw, seed: 5000 + 13 * at + n }),
  ),
);
const unless = (holds: (item: PracticeItem) => unknown): string[] =>
  items.flatMap((item) => (holds(item) === true ? [] : [`${item.id}: ${JSON.stringify(holds(item))}`]));
const signs = ({ flaw }: PracticeItem, question: string) => signOf(known.get('defect', flaw), question) ?? '';
const mostly = (item: PracticeItem, question: string, answer: 'yes' | 'no') =>
  [answer, `mostly-${answer}`].includes(signs(item, question));
const shown = words.shows as Readonly<Record<string, readonly Record<string, string>[] | undefined>>;
/** What any board of the flaw shows of a question that it leaves open. */
const isShown = ({ flaw }: PracticeItem, question: string) =>
  (shown[flaw] ?? []).some((one) => question in one);

describe('a flaw is asked about', () => {
  it('only at a stage at which it is there', () => {
    const LATER = [
      ASKED.cameInUse,
      ASKED.fineWhenFirstDry,
      ASKED.appearedAfterSanding,
      ASKED.comesOffInFlakes,
    ];
    const kinds = { later: 0, tacky: 0, wet: 0, setting: 0, any: 0 };
    expect(
      unless((item) => {
        const stage = stageOf(item.on);
        const dry = stage === 'recoatable' || stage === 'cured';
        if (LATER.some((question) => mostly(item, question, 'yes'))) {
          kinds.later++;
          return dry;
        }
        if (signs(item, ASKED.stillTacky) === 'yes') {
          kinds.tacky++;
          return item.standing === 'overdue' && stage === 'dry-to-touch';
        }
        if (item.standing === 'overdue') return 'overdue';
        if (stage === 'wet') {
          kinds.wet++;
          return !mostly(item, ASKED.thereWhileCoating, 'no');
        }
        if (stage === 'setting') {
          kinds.setting++;
          return !mostly(item, ASKED.filmIsWeak, 'yes');
        }
        kinds.any++;
        return stage !== undefined;
      }),
    ).toEqual([]);
    for (const [kind, count] of Object.entries(kinds)) expect([kind, count > 0]).toEqual([kind, true]);
  });

  it('at every stage, where nothing of it tells when it came', () => {
    const free = known.defects.filter((flaw) =>
      Object.values(ASKED).every(
        (question) => !['yes', 'mostly-yes', 'no', 'mostly-no'].includes(signOf(flaw, question) ?? ''),
      ),
    );
    const [one = known.defects.find(({ id }) => id === 'runs-and-sags')] = free;
    if (!one) throw new Error('a flaw');
    const stages = new Set(
      Array.from(
        { length: 60 },
        (_, seed) => dealPractice(known, words, { level: 'stage', flaw: one.id, seed }).standing,
      ),
    );
    expect(stages.size).toBeGreaterThan(2);
  });

  it('with nothing told that its signs rule out', () => {
    expect(
      unless((item) =>
        Object.entries(known.get('defect', item.flaw).signs).every(([question, sign]) => {
          if (sign !== 'yes' && sign !== 'no') return true;
          const told = answerOf(known, item.on, question);
          return told === undefined || told === sign || isShown(item, question);
        }),
      ),
    ).toEqual([]);
  });

  it('by checks of its own, each found once', () => {
    expect(
      unless((item) => {
        const { tree, signs: own } = known.get('defect', item.flaw);
        const asks = new Set<string>([
          ...Object.keys(own),
          ...[...visits(tree)].flatMap(({ branch }) => ('ask' in branch ? [branch.ask as string] : [])),
          ...(shown[item.flaw] ?? []).flatMap((one) => Object.keys(one)),
        ]);
        const questions = item.found.map(({ question }) => question);
        const signsTold = item.rivals.map(({ sign }) => sign.question);
        return (
          new Set(questions).size === questions.length &&
          questions.every((question) => asks.has(question) || signsTold.includes(question)) &&
          // What she was asked on the way is told, and no more is answered than that and the signs of the rivals.
          Object.entries(item.on).every(
            ([fact, { how }]) => how !== 'answered' || questions.includes(fact) || signsTold.includes(fact),
          )
        );
      }),
    ).toEqual([]);
  });
});

describe('the can of a whole case', () => {
  // Minutes as cans print them.
  const ROUND = [5, 10, 15, 20, 30, 45, 60, 90, 120, 180, 240, 300, 360, 480, 720, 1440, 2160, 2880];
  const nearest = (minutes: number) => Math.min(...ROUND.map((one) => Math.abs(one - minutes)));
  it('prints round times near the middle of its kind, the next coat never before twice the touch', () => {
    const cases = items.filter(({ coat }) => coat);
    expect(cases.length).toBeGreaterThan(20);
    expect(
      unless(({ coat }) => {
        if (!coat) return true;
        const { 'touch-minutes': touch, 'recoat-hours': recoat } = known.get('product', coat.laid.product);
        const [dull, next] = [(touch[0] + touch[1]) / 2, 30 * (recoat[0] + recoat[1])];
        const round =
          ROUND.includes(coat.touchMinutes) && Math.abs(coat.touchMinutes - dull) === nearest(dull);
        const after = coat.recoatMinutes === 2 * coat.touchMinutes;
        return (
          round &&
          (after ||
            (ROUND.includes(coat.recoatMinutes) && Math.abs(coat.recoatMinutes - next) === nearest(next)))
        );
      }),
    ).toEqual([]);
  });
  it('is of a coat from the first to the fourth, by a tool of its product', () => {
    const numbers = new Set(items.map(({ on }) => on['coat-number']?.value));
    expect([...numbers].sort()).toEqual([1, 2, 3, 4]);
    expect(
      unless(({ coat, on, flaw }) => {
        const { families } = known.get('defect', flaw);
        if (!families.some((one) => one === on['family']?.value)) return 'family';
        if (!coat) return true;
        const product = known.get('product', coat.laid.product);
        return (
          product.family === on['family']?.value &&
          Object.keys(product['wet-film-micrometers']).includes(String(coat.laid.applicator)) &&
          coat.laid.applicator === on['applicator']?.value &&
          coat.laid.coatNumber === on['coat-number']?.value
        );
      }),
    ).toEqual([]);
  });
});
