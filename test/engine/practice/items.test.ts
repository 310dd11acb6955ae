/**
 * Practice items against the walk, the clock and the tables that they are made from: every judgement is reckoned here once
 * more, from the facts that the item tells.
 */
import { describe, expect, it } from 'vitest';
import { linkedKnowledge } from '../../../content/tools/knowledge.ts';
import { readPractice } from '../../../content/tools/practice.ts';
import { clockNow, sayUntil } from '../../../engine/clock.ts';
import {
  answerOf,
  canCheck,
  type Knowledge,
  separatedBy,
  stageOf,
  visits,
  walk,
} from '../../../engine/index.ts';
import { isHandover } from '../../../engine/knowledge/tree.ts';
import { BoardRecipe } from '../../../engine/model/board/recipe.ts';
import {
  dealPractice,
  PRACTICE_LEVELS,
  PRACTICE_TIME,
  type PracticeItem,
  practised,
  readPracticeId,
  SOUND,
} from '../../../engine/practice.ts';
import { actOf } from '../../../engine/walk/act.ts';
import { known } from '../../content/real/knowledge.ts';
import { THOROUGH } from '../../thorough.ts';

const words = readPractice(known, process.cwd());

/** Seeds far apart and close together. */
const SEEDS = THOROUGH ? 10_000 : 1000;
const seedOf = (n: number): number => (n % 2 ? n : Math.imul(n + 1, 0x9e3779b1) >>> 1);
const drawn = Array.from({ length: SEEDS }, (_, n) =>
  dealPractice(known, words, { level: PRACTICE_LEVELS[n % 3] ?? 'look', seed: seedOf(n) }),
);
const everyFlaw = PRACTICE_LEVELS.flatMap((level) =>
  practised(known, level).flatMap((flaw) =>
    [7, 1007].map((seed) => dealPractice(known, words, { level, flaw, seed })),
  ),
);
const all: readonly PracticeItem[] = [...drawn, ...everyFlaw];
const flawed = all.filter(({ flaw }) => flaw !== SOUND);
const askOf = (item: PracticeItem, kind: PracticeItem['asks'][number]['kind']) =>
  item.asks.find((one) => one.kind === kind);
const rightOf = (item: PracticeItem, kind: PracticeItem['asks'][number]['kind']) =>
  askOf(item, kind)?.choices.find(({ right }) => right)?.id;
/** The ids of the items that are not as they should be. */
const unless = (items: readonly PracticeItem[], holds: (item: PracticeItem) => boolean): string[] =>
  items.filter((item) => !holds(item)).map(({ id }) => id);

const QUIET = ['leave', 'wait', 'accept'];

const repairsOf = (flaw: string): string[] =>
  [...visits(known.get('defect', flaw).tree)].flatMap(({ branch }) =>
    'remedy' in branch ? [branch.remedy as string] : isHandover(branch) ? repairsOf(branch.defect) : [],
  );

/** Rags and flames are of the work; these are of the piece and its film, and come before all hands. */
const OF_THE_PIECE = new Set([
  'lead-before-sanding',
  'is-there-old-paint-below',
  'not-a-crib',
  'childs-item',
  'valuable-piece',
  'mold',
  'hardener-isocyanate',
]);

describe('practice items', () => {
  it('reach every flaw at every level, and ask what the level asks', () => {
    for (const level of PRACTICE_LEVELS)
      expect(new Set(everyFlaw.filter((one) => one.level === level).map(({ flaw }) => flaw)).size).toBe(
        practised(known, level).length,
      );
    // What only the nose finds is asked of at the other levels.
    const unseen = known.defects.filter(({ boards }) => boards.every(({ features }) => !features.length));
    expect(unseen.map(({ id }) => id)).toEqual(['lingering-smell']);
    expect(practised(known, 'look').length).toBe(known.defects.length - unseen.length + 1);
    expect(practised(known, 'case').length).toBe(known.defects.length);
    expect(unless(all, ({ level, asks }) => (level === 'look') === (asks.length === 1))).toEqual([]);
    // A whole case asks until when or what mends it wherever there is something to be told apart.
    const whole = flawed.filter(({ level }) => level === 'case');
    expect(whole.filter((one) => askOf(one, 'until')).length).toBeGreaterThan(whole.length / 4);
    expect(whole.filter((one) => askOf(one, 'repair')).length).toBeGreaterThan(whole.length / 10);
  });

  it('have one right answer to each question, and no answer twice', () => {
    expect(
      unless(all, ({ asks }) =>
        asks.every(
          ({ choices }) =>
            choices.length >= 3 &&
            choices.filter(({ right }) => right).length === 1 &&
            new Set(choices.map(({ id }) => id)).size === choices.length &&
            new Set(choices.map(({ says }) => says)).size === choices.length,
        ),
      ),
    ).toEqual([]);
  });

  it('are judged as the full walk judges', () => {
    expect(
      unless(flawed, (item) => {
        const right = rightOf(item, 'hands');
        const walked = walk(known, item.on, item.flaw, { forCause: item.level === 'look' });
        if (rightOf(item, 'flaw') !== item.flaw) return false;
        if (!right) return walked.leaves.some(({ of }) => of === item.flaw);
        if (walked.kind !== 'outcome') return false;
        const stopped =
          walked.fired.stops.some(({ id }) => OF_THE_PIECE.has(id)) && !QUIET.includes(walked.action.do);
        return right === (stopped ? 'stop' : walked.action.do);
      }),
    ).toEqual([]);
  });

  it('never call for a stop where all that lies there is known and new', () => {
    const plain = flawed.filter(
      ({ on }) =>
        on['age']?.value === 'since-1993' &&
        on['piece']?.value === 'furniture' &&
        !on['hardener'] &&
        !on['fuzzy-or-musty'],
    );
    expect(plain.length).toBeGreaterThan(20);
    expect(unless(plain, (item) => rightOf(item, 'hands') !== 'stop')).toEqual([]);
  });

  it('never call a film hard that has stayed soft past its time', () => {
    const soft = flawed.filter(({ on }) => on['overdue']?.value === 'yes');
    expect(soft.length).toBeGreaterThan(0);
    expect(
      unless(soft, (item) =>
        item.asks.every(({ choices }) => choices.every(({ says }) => !says.includes('hard enough'))),
      ),
    ).toEqual([]);
  });

  it('have hands do what every cause still possible asks for, and nothing that one of them does', () => {
    expect(
      unless(
        flawed.filter(({ level }) => level !== 'look'),
        (item) => {
          const stage = stageOf(item.on);
          if (!stage) return false;
          const { leaves } = walk(known, item.on, item.flaw);
          const acts = new Set<string>(leaves.map((leaf) => actOf(known, item.on, leaf, stage).do));
          const right = rightOf(item, 'hands') ?? '';
          const wrong = askOf(item, 'hands')?.choices.filter((one) => !one.right) ?? [];
          const quiet = wrong.filter(({ id }) => QUIET.includes(id));
          return (
            (right === 'stop' || (acts.size === 1 && acts.has(right))) &&
            wrong.every(({ id }) => (right === 'stop' && id === 'repair') || !acts.has(id)) &&
            // To leave it in peace is offered once only, as two such answers would both be right.
            quiet.length + Number(QUIET.includes(right)) <= 1
          );
        },
      ),
    ).toEqual([]);
  });

  it('offer a true look-alike, and rule out every wrong flaw by a sign that is shown or told', () => {
    const alike = (one: string, other: string) =>
      (known.get('defect', one)['look-alikes'] as readonly string[]).includes(other);
    expect(
      unless(flawed, (item) => {
        const flaw = known.get('defect', item.flaw);
        const wrong = (askOf(item, 'flaw')?.choices ?? []).filter(({ id, right }) => !right && id !== SOUND);
        return (
          wrong.some(({ id }) => alike(item.flaw, id)) &&
          wrong.every(({ id }) =>
            separatedBy(flaw, known.get('defect', id)).some(({ question, a }) => {
              if (answerOf(known, item.on, question) !== a || !canCheck(known, item.on, question))
                return false;
              const { by, boards } = known.get('question', question);
              return (
                (by === 'look' && boards !== undefined) || item.found.some((one) => one.question === question)
              );
            }),
          )
        );
      }),
    ).toEqual([]);
  });

  it('tell nothing that the flaw never shows, and nothing that a check of this film would spoil', () => {
    expect(
      unless(flawed, (item) => {
        const { signs } = known.get('defect', item.flaw);
        const board = Object.keys(words.shows[item.flaw as never] ?? {}).length > 0;
        return item.found.every(({ question, answer }) => {
          const sign = signs[question as never] as string | undefined;
          const strict = sign === 'yes' || sign === 'no';
          return canCheck(known, item.on, question) && (!strict || board || sign === answer);
        });
      }),
    ).toEqual([]);
  });

  it('name the range of the clock, and only times before or after it beside', () => {
    const timed = flawed.filter((item) => askOf(item, 'until'));
    expect(timed.length).toBeGreaterThan(SEEDS / 20);
    expect(
      unless(timed, ({ coat, on, ...item }) => {
        if (!coat) return false;
        const { laid, now } = coat;
        const reading = clockNow(known.get('product', laid.product), laid, now);
        if (reading.kind !== 'running' || reading.stage !== on['stage']?.value) return false;
        const choices = item.asks.find(({ kind }) => kind === 'until')?.choices ?? [];
        const touching = item.asks.find(({ kind }) => kind === 'hands')?.choices.find(({ right }) => right);
        const { from, to } = touching?.id === 'leave' ? reading.moments.touch : reading.moments.recoat;
        const printed =
          laid.laidAt + (touching?.id === 'leave' ? coat.touchMinutes : coat.recoatMinutes) * 60_000;
        return (
          choices.find(({ right }) => right)?.says === `Until ${sayUntil(from, to, now, PRACTICE_TIME)}` &&
          (!choices.some(({ id }) => id === 'can') || printed < from) &&
          reading.moments.cure.to > to
        );
      }),
    ).toEqual([]);
  });

  it('offer no repair that some branch of the flaw leads to, but its own', () => {
    expect(
      unless(flawed, (item) => {
        const ask = askOf(item, 'repair');
        if (!ask) return true;
        const own = repairsOf(item.flaw);
        const walked = walk(known, item.on, item.flaw);
        const right = rightOf(item, 'repair');
        return (
          walked.leaves.every((leaf) => 'remedy' in leaf && leaf.remedy === right) &&
          ask.choices.every(({ id, right }) => right || !own.includes(id))
        );
      }),
    ).toEqual([]);
  });

  it('leave the piece alone about as often as in life, by our estimate', () => {
    const asked = drawn.filter((item) => askOf(item, 'hands'));
    const quiet = asked.filter((item) => QUIET.includes(rightOf(item, 'hands') ?? '')).length / asked.length;
    expect(quiet).toBeGreaterThan(0.5);
    expect(quiet).toBeLessThan(0.75);
    const look = drawn.filter(({ level }) => level === 'look');
    const sound = look.filter(({ flaw }) => flaw === SOUND).length / look.length;
    expect(sound).toBeGreaterThan(0.1);
    expect(sound).toBeLessThan(0.25);
  });

  it('lay two boards beside each other at one scale, wet or dry alike, and a recipe that an author could write', () => {
    expect(
      unless(
        all,
        ({ board, rivals }) =>
          BoardRecipe.safeParse(board).success &&
          rivals.every(
            ({ own, board: other }) =>
              BoardRecipe.safeParse(own).success &&
              BoardRecipe.safeParse(other).success &&
              own['width-mm'] === other['width-mm'] &&
              own.seed === board.seed &&
              own.wet === other.wet,
          ),
      ),
    ).toEqual([]);
  });

  it('fill in every word of the story, and never name the flaw in it', () => {
    expect(
      unless(all, ({ story, found, name }) =>
        [...story, ...found.map(({ says }) => says)].every(
          (line) => line.length > 5 && !/[{}]|undefined|NaN/.test(line) && !line.includes(name),
        ),
      ),
    ).toEqual([]);
  });

  it('are the same again from knowledge that was read anew', () => {
    const again = linkedKnowledge(process.cwd()).known as Knowledge;
    for (const item of drawn.slice(0, 60)) {
      const { level, seed } = item;
      expect(dealPractice(again, readPractice(again, process.cwd()), { level, seed })).toEqual(item);
      expect(readPracticeId(item.id)).toEqual({ level, seed, flaw: item.flaw });
    }
  });

  it('read no key that is none', () => {
    for (const id of [
      '',
      'look',
      'look.bubbles',
      'look.bubbles.x',
      'view.bubbles.1',
      'look.bubbles.99999999999',
      'look.__proto__.1',
    ])
      expect(readPracticeId(id), id).toBeUndefined();
  });

  it('lay no board twice', () => {
    const boards = new Set(all.map(({ board }) => JSON.stringify(board)));
    expect(boards.size).toBe(new Set(all.map(({ id }) => id)).size);
  });
});
