/**
 * What a practice board offers and why each answer is right or wrong, put together here once more from the words of the
 * knowledge, the walk and the clock.
 */
import { describe, expect, it } from 'vitest';
import { sayInstant, sayUntil } from '../../../engine/clock.ts';
import { possible, stageOf, walk } from '../../../engine/index.ts';
import { signOf } from '../../../engine/knowledge/sign.ts';
import { MINUTE_MS as MINUTE } from '../../../engine/plain/time.ts';
import { PRACTICE_TIME, type PracticeItem, SOUND } from '../../../engine/practice.ts';
import { actOf } from '../../../engine/walk/act.ts';
import { drawn, flawed, known, same, toldIn, unless, words } from './dealt.ts';

const sound = drawn.filter(({ flaw }) => flaw === SOUND);

const askOf = (item: PracticeItem, kind: string) => item.asks.find((one) => one.kind === kind);

describe('what it is', () => {
  const said = ({ sign, name }: PracticeItem['rivals'][number]) => {
    const yes = known.get('question', sign.question).yes === sign.here;
    const there = sign.there.charAt(0).toLowerCase() + sign.there.slice(1);
    return `${sign.here} “${sign.ask}” ${yes ? 'Yes' : 'No'}. With “${name}” it is ${yes ? 'no' : 'yes'}: ${there}`;
  };

  it('is right by the sign of the nearest rival, and each rival is wrong by its own', () => {
    expect(flawed.length).toBeGreaterThan(200);
    expect(
      unless(flawed, (item) => {
        const choices = askOf(item, 'flaw')?.choices.filter(({ id }) => id !== SOUND) ?? [];
        const right = item.asks.flatMap(({ kind, choices: all }) =>
          kind === 'hands' ? (all.find((one) => one.right)?.id ?? []) : [],
        )[0];
        const stage = stageOf(item.on);
        const wanted = [
          [item.flaw, item.name, true, said(item.rivals[0])],
          ...item.rivals.map((rival) => {
            // What hands would have done, where every way of the rival asks for the same.
            const acts = stage
              ? possible(known, item.on, rival.flaw).leaves.map((leaf) => actOf(known, item.on, leaf, stage))
              : [];
            const [first] = acts;
            const alike = first && right && acts.every((act) => act.do === first.do);
            const more = !alike
              ? ''
              : first.do === right
                ? ' For now your hands would do the same.'
                : ` Taken for it, you would have done this: ${first.say}`;
            return [rival.flaw, rival.name, false, said(rival) + more];
          }),
        ];
        const is = choices.map((one) => [one.id, one.says, one.right, one.because]);
        return same(is.sort(), wanted.sort()) && askOf(item, 'flaw')?.ask === 'What is it?';
      }),
    ).toEqual([]);
    const all = flawed.flatMap((item) => askOf(item, 'flaw')?.choices.map(({ because }) => because) ?? []);
    expect(all.some((because) => because.includes('For now your hands would do the same.'))).toBe(true);
    expect(all.some((because) => because.includes('Taken for it, you would have done this: '))).toBe(true);
  });

  it('of a look alone is also asked against a sound coat, which the looks of the flaw rule out', () => {
    expect(
      unless(
        flawed.filter(({ level }) => level === 'look'),
        (item) => {
          const last = askOf(item, 'flaw')?.choices.at(-1);
          return same(last, {
            id: SOUND,
            says: 'Nothing: a sound coat',
            right: false,
            because: `It is there: ${known.get('defect', item.flaw).looks}`,
          });
        },
      ),
    ).toEqual([]);
    expect(
      unless(
        flawed.filter(({ level }) => level !== 'look'),
        (item) => !askOf(item, 'flaw')?.choices.some(({ id }) => id === SOUND),
      ),
    ).toEqual([]);
  });

  it('of a sound coat is nothing, beside flaws of its kind that can be seen', () => {
    expect(sound.length).toBeGreaterThan(5);
    expect(
      unless(sound, (item) => {
        const { choices = [] } = askOf(item, 'flaw') ?? {};
        const even = 'The coat is even from edge to edge.';
        return (
          item.level === 'look' &&
          item.name === 'Nothing: a sound coat' &&
          item.asks.length === 1 &&
          item.verdict === undefined &&
          item.coat === undefined &&
          item.found.length === 0 &&
          choices.length === 5 &&
          choices.every(
            ({ id, right, because }) => right === (id === SOUND) && because.startsWith(`${even} “`),
          ) &&
          choices.at(-1)?.because === choices[0]?.because &&
          item.rivals.every(({ flaw, name, sign }, at) => {
            const { families, often, boards } = known.get('defect', flaw);
            const question = known.get('question', sign.question);
            return (
              choices[at]?.id === flaw &&
              choices[at]?.because ===
                `${even} “${sign.ask}” No. With “${name}” it is yes: ${sign.there.charAt(0).toLowerCase()}${sign.there.slice(1)}` &&
              sign.here === even &&
              sign.there === question.yes &&
              signOf(known.get('defect', flaw), sign.question) === 'yes' &&
              question.by === 'look' &&
              question.usually !== 'yes' &&
              often !== 'rare' &&
              families.some((one) => one === toldIn(item, 'family')) &&
              boards.some(({ wet }) => !wet)
            );
          })
        );
      }),
    ).toEqual([]);
  });
});

describe('what hands do', () => {
  const asked = flawed.filter((item) => askOf(item, 'hands'));
  it('is said in the words of hands, and why in those of the walk, or of the stop that comes first', () => {
    expect(asked.length).toBeGreaterThan(150);
    expect(
      unless(asked, (item) => {
        const walked = walk(known, item.on, item.flaw);
        if (walked.kind !== 'outcome') return false;
        const right = askOf(item, 'hands')?.choices.find((one) => one.right);
        const stop = walked.fired.stops.find(
          ({ id, say }) => right?.id === 'stop' && right.because === say && id,
        );
        const stage = stageOf(item.on);
        const dry = stage === 'recoatable' || stage === 'cured';
        const says =
          right?.id === 'wait' && dry
            ? words['wait-on-a-dry-film']
            : right?.id === 'repair' && toldIn(item, 'overdue') === 'yes'
              ? words['repair-of-a-sticky-film']
              : words.hands[right?.id as 'wait'];
        const because = stop ? stop.say : `${walked.action.say} ${walked.action.not}`;
        const verdict = stop
          ? { say: stop.title, why: stop.say, not: walked.action.not }
          : { say: walked.action.verdict, why: walked.action.say, not: walked.action.not };
        return same([right?.says, right?.because, item.verdict], [says, because, verdict]);
      }),
    ).toEqual([]);
    expect(unless(flawed, ({ level, verdict }) => (level === 'look') === (verdict === undefined))).toEqual(
      [],
    );
  });

  it('is asked against what tempts at this stage, one move of an open film, and one way to leave it', () => {
    const MOVES = ['lift', 'tip-off', 'wick', 'wash-off', 'wipe-back'];
    expect(
      unless(asked, (item) => {
        const choices = askOf(item, 'hands')?.choices ?? [];
        const stage = stageOf(item.on) ?? 'wet';
        const right = choices.find((one) => one.right)?.id ?? '';
        const fresh = stage === 'wet' || stage === 'setting';
        const wrong = choices.filter((one) => !one.right);
        const moves = wrong.filter(({ id }) => MOVES.includes(id));
        return (
          choices.length <= 4 &&
          moves.length <= (fresh ? 1 : 0) &&
          moves.every(({ id, says }) => says === words.hands[id as 'lift']) &&
          wrong.every(({ id, says, because }) => {
            const tempting = words.temptations.find((one) => one.id === id);
            if (tempting)
              return (
                tempting.at.includes(stage) &&
                says === tempting.offer &&
                because === tempting.says &&
                ![right, ...moves.map((one) => one.id)].some((one) => tempting.not.some((not) => not === one))
              );
            return because.length > 10 && says.length > 3;
          }) &&
          // Where nothing is left as it is, to leave it is offered, as it is said of such a film.
          wrong.every(({ id }) => id !== 'accept' || !fresh) &&
          wrong.every(({ id }) => id !== 'leave' || fresh) &&
          wrong.every(({ id }) => id !== 'repair' || right === 'stop' || right === 'accept')
        );
      }),
    ).toEqual([]);
  });
});

describe('until when', () => {
  const asked = flawed.filter((item) => askOf(item, 'until'));
  it('is the range of the clock, beside now, the can, half the way and full cure', () => {
    expect(asked.length).toBeGreaterThan(20);
    expect(
      unless(asked, (item) => {
        const { choices = [], ask } = askOf(item, 'until') ?? {};
        const { coat } = item;
        if (!coat) return false;
        const { now, laid, reading, touchMinutes, recoatMinutes } = coat;
        const touching = item.asks.some((one) =>
          one.choices.some(({ id, right }) => right && id === 'leave'),
        );
        const { from, to } = touching ? reading.moments.touch : reading.moments.recoat;
        const printed = laid.laidAt + (touching ? touchMinutes : recoatMinutes) * MINUTE;
        const half = now + (from - now) / 2;
        const until = (at: number) => `Until ${sayInstant(at, now, PRACTICE_TIME)}`;
        const all: Record<string, [string, string]> = {
          range: [`Until ${sayUntil(from, to, now, PRACTICE_TIME)}`, words.waits.range.says],
          now: ['No need to wait', words.waits[touching ? 'touched-now' : 'worked-now'].says],
          cure: [
            `Until ${sayUntil(reading.moments.cure.from, reading.moments.cure.to, now, PRACTICE_TIME)}`,
            words.waits.cure.says,
          ],
          ...(printed > now &&
            printed < from - 2 * MINUTE && { can: [until(printed), words.waits.can.says] }),
          ...(half - now > 5 * MINUTE &&
            from - half > 5 * MINUTE && {
              half: [until(Math.round(half / (5 * MINUTE)) * 5 * MINUTE), words.waits.half.says],
            }),
        };
        if (
          ask !==
          (touching ? 'Until when are hands off?' : 'Until when does it dry on before you work on it?')
        )
          return false;
        const wanted = Object.entries(all).map(([id, [says, because]]) => [
          id,
          says,
          id === 'range',
          because,
        ]);
        const is = choices.map(({ id, says, right, because }) => [id, says, right, because]);
        // Two that read the same are offered once.
        const twice = wanted.length - new Set(wanted.map(([, says]) => says)).size;
        return twice ? is.length === wanted.length - twice : same(is.sort(), wanted.sort());
      }),
    ).toEqual([]);
    const offered = new Set(asked.flatMap((item) => askOf(item, 'until')?.choices.map(({ id }) => id) ?? []));
    expect([...offered].sort()).toEqual(['can', 'cure', 'half', 'now', 'range']);
  });
});

describe('what mends it', () => {
  const asked = flawed.filter((item) => askOf(item, 'repair'));
  it('is the repair of this cause, beside two or three of what it is taken for', () => {
    expect(asked.length).toBeGreaterThan(8);
    expect(
      unless(asked, (item) => {
        const { choices = [], ask } = askOf(item, 'repair') ?? {};
        return (
          ask === 'What mends it?' &&
          (choices.length === 3 || choices.length === 4) &&
          choices.every(({ id, says, right, because }) => {
            const { name, summary } = known.get('remedy', id);
            if (right) return says === name && because === summary;
            const other = item.rivals.find(
              (rival) =>
                because === `That one is for another flaw, such as ${rival.name.toLowerCase()}: ${summary}`,
            );
            return says === name && other !== undefined;
          })
        );
      }),
    ).toEqual([]);
  });
  it('is asked of a whole case alone, and until when only while it is soft', () => {
    expect(
      unless(drawn, (item) => {
        const hands = askOf(item, 'hands')?.choices.find(({ right }) => right)?.id;
        if (askOf(item, 'repair')) return item.level === 'case' && hands === 'repair';
        if (askOf(item, 'until')) return item.level === 'case' && (hands === 'leave' || hands === 'wait');
        return true;
      }),
    ).toEqual([]);
  });
});
