/**
 * The next question beside a plain reading of its rule, on trees drawn at random: nothing is asked where all ends ask for
 * the same hands, or where no answer changes them; after one doubt the question that tells most of what hands do, where
 * that is likely enough (3 in 10); after a second doubt none. Here trees are followed as they are nested.
 */
import { describe, expect, it } from 'vitest';
import {
  type Case,
  emptyCase,
  nextQuestion,
  reached,
  STAGES,
  type Stage,
  walk,
  withAnswer,
  withFact,
} from '#engine/index.ts';
import type { QuestionId } from '#engine/model/ids.ts';
import { dice } from '../../dice.ts';
import { act, defect, known, question, remedy } from '../small.ts';

type Tree =
  | { readonly ask: string; readonly yes: Tree; readonly no: Tree }
  | { readonly remedy: string }
  | { readonly leave: string };
type Answer = 'yes' | 'no' | 'unsure';

const roll = dice(20261130);
const one = <T>(of: readonly T[]): T => of[Math.floor(roll() * of.length)] as T;
const QUESTIONS = ['qa', 'qb', 'qc', 'qd', 'qe'];
const REMEDIES = ['ra', 'rb', 'rc'];

const anyTree = (left: readonly string[], depth: number): Tree => {
  if (!depth || !left.length || roll() < 0.15)
    return roll() < 0.15 ? { leave: 'It is good as it is.' } : { remedy: one(REMEDIES) };
  const ask = one(left);
  const rest = left.filter((other) => other !== ask);
  return { ask, yes: anyTree(rest, depth - 1), no: anyTree(rest, depth - 1) };
};

type Drawn = {
  readonly tree: Tree;
  readonly safe: Readonly<Record<string, Stage>>;
  readonly wet: Readonly<Record<string, string>>;
};
const draw = (): Drawn => ({
  tree: anyTree(QUESTIONS, 4),
  safe: Object.fromEntries(QUESTIONS.map((id) => [id, roll() < 0.7 ? 'wet' : one(STAGES)])),
  wet: Object.fromEntries(REMEDIES.map((id) => [id, one(['leave', 'lift', 'tip-off'])])),
});
const linked = ({ tree, safe, wet }: Drawn) =>
  known(
    ...QUESTIONS.map((id) => question(id, { 'safe-from': safe[id] })),
    ...REMEDIES.map((id) => remedy(id, { wet: act(wet[id] as string) })),
    defect('flaw', tree),
  );

/** The plain reading. */
class Plain {
  readonly #drawn: Drawn;
  readonly #stage: Stage;
  readonly told: Readonly<Record<string, Answer>>;
  constructor(drawn: Drawn, stage: Stage, told: Readonly<Record<string, Answer>>) {
    this.#drawn = drawn;
    this.#stage = stage;
    this.told = told;
  }
  with(asked: string, answer: Answer): Plain {
    return new Plain(this.#drawn, this.#stage, { ...this.told, [asked]: answer });
  }
  #hands(end: Tree): string {
    if ('leave' in end)
      return {
        wet: 'leave',
        setting: 'leave',
        'dry-to-touch': 'wait',
        recoatable: 'accept',
        cured: 'accept',
      }[this.#stage];
    if (!('remedy' in end)) throw new Error('an end');
    const late = this.#stage === 'recoatable' || this.#stage === 'cured';
    if (late) return `repair of ${end.remedy}`;
    return this.#stage === 'wet'
      ? (this.#drawn.wet[end.remedy] as string)
      : this.#stage === 'setting'
        ? 'leave'
        : 'wait';
  }
  #isAsked(of: string): boolean {
    return this.told[of] === undefined && reached(this.#stage, this.#drawn.safe[of] as Stage);
  }
  /** What is met, in order, and what hands do at the ends that are open. */
  met(of: Tree = this.#drawn.tree): { readonly asked: string[]; readonly hands: string[] } {
    if (!('ask' in of)) return { asked: [], hands: [this.#hands(of)] };
    const answer = this.told[of.ask];
    const ways = (['yes', 'no'] as const).flatMap((way) =>
      answer === (way === 'yes' ? 'no' : 'yes') ? [] : [this.met(of[way])],
    );
    return {
      asked: [of.ask, ...ways.flatMap(({ asked }) => asked)],
      hands: ways.flatMap(({ hands }) => hands),
    };
  }
  get open(): string[] {
    return [...new Set(this.met().asked.filter((asked) => this.#isAsked(asked)))];
  }
  get alike(): boolean {
    return new Set(this.met().hands).size === 1;
  }
  get doubts(): number {
    return new Set(this.met().asked.filter((asked) => this.told[asked] === 'unsure')).size;
  }
  #chances(of: Tree): Map<string, number> {
    if (!('ask' in of)) return new Map([[this.#hands(of), 1]]);
    const answer = this.told[of.ask];
    if (answer === 'yes' || answer === 'no') return this.#chances(of[answer]);
    const [yes, no] = [this.#chances(of.yes), this.#chances(of.no)];
    return new Map(
      [...yes.keys(), ...no.keys()].map((hands) => {
        const [a, b] = [yes.get(hands) ?? 0, no.get(hands) ?? 0];
        return [hands, this.#isAsked(of.ask) ? (a + b) / 2 : a * b];
      }),
    );
  }
  get agreement(): number {
    return [...this.#chances(this.#drawn.tree).values()].reduce((sum, share) => sum + share, 0);
  }
  get canSettle(): boolean {
    if (this.alike) return true;
    const [next] = this.open;
    return next !== undefined && (this.with(next, 'yes').canSettle || this.with(next, 'no').canSettle);
  }
  get endings(): Set<string> {
    const [next] = this.open;
    if (next) return new Set([...this.with(next, 'yes').endings, ...this.with(next, 'no').endings]);
    return new Set([this.alike ? (this.met().hands[0] as string) : 'leave']);
  }
  get next(): string | undefined {
    if (this.alike || this.doubts > 1) return undefined;
    if (!this.doubts) return this.endings.size > 1 ? this.open[0] : undefined;
    if (this.agreement < 0.3 || !this.canSettle) return undefined;
    let best: string | undefined;
    let most = 0;
    for (const asked of this.open) {
      const parts = Math.abs(this.with(asked, 'yes').agreement - this.with(asked, 'no').agreement);
      if (parts > most) [best, most] = [asked, parts];
    }
    return best;
  }
}

const caseOf = ({ told }: Plain, stage: Stage): Case =>
  Object.entries(told).reduce(
    (on, [asked, answer]) => withAnswer(on, asked as QuestionId, answer),
    withFact(emptyCase(), 'stage', stage),
  );

describe('the next question', () => {
  it('is that of the plain reading, whatever the tree, the stage and what was told', () => {
    const seen = { asked: 0, none: 0, doubted: 0, settled: 0 };
    for (let n = 0; n < 70; n++) {
      const drawn = draw();
      const of = linked(drawn);
      for (let round = 0; round < 6; round++) {
        const stage = one([...STAGES, 'cured', 'recoatable', 'wet'] as const);
        let plain = new Plain(drawn, stage, {});
        // Answers as they are asked, and now and then one that was not.
        for (let step = 0; step < 6; step++) {
          const on = caseOf(plain, stage);
          const found = nextQuestion(of, on, 'flaw')?.question;
          const wanted = plain.next;
          expect({ ...drawn, stage, told: plain.told, next: found }).toEqual({
            ...drawn,
            stage,
            told: plain.told,
            next: wanted,
          });
          if (plain.doubts) seen[wanted ? 'settled' : 'doubted']++;
          else seen[wanted ? 'asked' : 'none']++;
          const walked = walk(of, on, 'flaw');
          if (walked.kind === 'outcome') expect(walked.alike).toBe(plain.alike);
          const asked = wanted ?? (roll() < 0.5 ? one(QUESTIONS) : undefined);
          if (!asked) break;
          plain = plain.with(asked, one(['yes', 'no', 'unsure', 'unsure']));
        }
      }
    }
    // Each of the ways is met, and not only once or twice.
    for (const [way, count] of Object.entries(seen)) expect([way, count > 10]).toEqual([way, true]);
  });
});
