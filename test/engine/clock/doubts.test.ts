/** Someone who can't tell: over all flaws and stages every walk ends, asks nothing twice, and asks on where it helps. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Answer,
  answersOverdue,
  type Case,
  emptyCase,
  nextQuestion,
  STAGES,
  STANDINGS,
  type Standing,
  walk,
  withAnswer,
  withStanding,
} from '#engine/index.ts';
import { known } from '../../content/real/knowledge.ts';
import { dice } from '../../dice.ts';
import { WHOLE } from '../../thorough.ts';
import '../../seed.ts';

const ids = known.defects.map(({ id }) => id);
const standingsOf = (defect: string): readonly Standing[] =>
  answersOverdue(known, defect) ? STANDINGS : STAGES;

/** One walk to its end: the questions in their order, and how many came before the first doubt was told. */
const walked = (defect: string, start: Case, forCause: boolean, answer: (question: string) => Answer) => {
  let on = start;
  const asked: string[] = [];
  let doubtAt: number | undefined;
  for (;;) {
    const next = nextQuestion(known, on, defect, { forCause });
    if (!next) return { asked, stand: walk(known, on, defect, { forCause }), doubtAt };
    if (asked.length > known.questions.length) throw new Error(`${defect} asks for ever`);
    asked.push(next.question);
    const given = answer(next.question);
    if (given === 'unsure') doubtAt ??= asked.length;
    on = withAnswer(on, next.question, given);
  }
};

const DOUBT = 0.15;
const WALKS = WHOLE ? 20 : 10;

describe('someone who cannot tell', () => {
  it('comes to an end whatever she answers, is asked nothing twice, and never touches a setting film', () => {
    const standing = fc.constantFrom(undefined, ...STANDINGS);
    const answers = fc.array(fc.constantFrom<Answer>('yes', 'no', 'unsure'), {
      minLength: known.questions.length,
      maxLength: known.questions.length,
    });
    fc.assert(
      fc.property(fc.constantFrom(...ids), standing, answers, (defect, of, given) => {
        const start = of ? withStanding(emptyCase(), of) : emptyCase();
        const { asked, stand } = walked(
          defect,
          start,
          !of,
          (question) => given[known.questions.findIndex(({ id }) => id === question)] ?? 'unsure',
        );
        expect(new Set(asked).size).toBe(asked.length);
        expect(stand.kind).toBe(of ? 'outcome' : 'cause');
        if (of === 'setting' && stand.kind === 'outcome')
          expect(['leave', 'stop']).toContain(stand.action.do);
        // What no answer settled is decided by a check that is named.
        if (stand.kind === 'outcome' && !stand.alike && !stand.goOn) expect(stand.check).toBeDefined();
      }),
      { numRuns: WHOLE ? 3000 : 800 },
    );
  });

  it('is asked at most a sixth more where 15 of 100 cannot be told, and oftener told what to do', () => {
    const roll = dice(20261129);
    const doubtful = { walks: 0, settled: 0 };
    const questions = { all: 0, untilDoubt: 0 };
    for (const defect of ids)
      for (const standing of standingsOf(defect))
        for (let run = 0; run < WALKS; run++) {
          const { asked, stand, doubtAt } = walked(defect, withStanding(emptyCase(), standing), false, () =>
            roll() < DOUBT ? 'unsure' : roll() < 0.5 ? 'yes' : 'no',
          );
          questions.all += asked.length;
          questions.untilDoubt += doubtAt ?? asked.length;
          if (!doubtAt) continue;
          doubtful.walks++;
          if (stand.kind === 'outcome' && stand.alike) doubtful.settled++;
        }
    const more = questions.all / questions.untilDoubt - 1;
    const settled = doubtful.settled / doubtful.walks;
    console.log(
      `${doubtful.walks} walks with a doubt, ${(100 * settled).toFixed(1)} % settled all the same, ` +
        `for ${(100 * more).toFixed(1)} % more questions in all`,
    );
    expect(more).toBeLessThanOrEqual(1 / 6);
    expect(settled).toBeGreaterThan(0.07);
  });
});
