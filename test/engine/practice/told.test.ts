/**
 * What a practice board tells and why each answer is right or wrong, put together here once more from the words of the
 * knowledge, the walk and the clock. Boards of seeds that no other test draws.
 */
import { describe, expect, it } from 'vitest';
import { linkedKnowledge } from '../../../content/tools/knowledge.ts';
import { readPractice } from '../../../content/tools/practice.ts';
import { sayInstant, sayUntil } from '../../../engine/clock.ts';
import { answerOf, type Knowledge, possible, stageOf, walk } from '../../../engine/index.ts';
import { signOf } from '../../../engine/knowledge/sign.ts';
import { UNSANDED } from '../../../engine/model/family.ts';
import type { PracticeWords } from '../../../engine/model/practice.ts';
import { DAY_MS as DAY, HOUR_MS as HOUR, MINUTE_MS as MINUTE } from '../../../engine/plain/time.ts';
import {
  dealPractice,
  flawOfSeed,
  PRACTICE_LEVELS,
  PRACTICE_TIME,
  type PracticeItem,
  practised,
  readPracticeId,
  SOUND,
} from '../../../engine/practice.ts';
import { actOf } from '../../../engine/walk/act.ts';

const { known: linked } = linkedKnowledge(process.cwd());
const known = linked as Knowledge;
const words: PracticeWords = readPractice(known, process.cwd());

const drawn: readonly PracticeItem[] = Array.from({ length: 330 }, (_, n) =>
  dealPractice(known, words, { level: PRACTICE_LEVELS[n % 3] ?? 'look', seed: 7_000_000 + 97 * n }),
);
const flawed = drawn.filter(({ flaw }) => flaw !== SOUND);
const sound = drawn.filter(({ flaw }) => flaw === SOUND);
const ofCases = drawn.filter(({ level, coat }) => level === 'case' && coat);
const askOf = (item: PracticeItem, kind: string) => item.asks.find((one) => one.kind === kind);
const toldIn = ({ on }: PracticeItem, fact: string) => on[fact]?.value;
/** The ids of the items that are not so, with what else is told of them. */
const unless = (items: readonly PracticeItem[], holds: (item: PracticeItem) => unknown): string[] =>
  items.flatMap((item) => (holds(item) === true ? [] : [`${item.id}: ${JSON.stringify(holds(item))}`]));
/** True, or both where they differ. */
const same = (is: unknown, wanted: unknown) =>
  JSON.stringify(is) === JSON.stringify(wanted) ? true : { is, wanted };

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

describe('the story', () => {
  const parts = (item: PracticeItem) => {
    const [laid = '', ...rest] = item.story;
    return { laid, rest };
  };
  /** Whether a sentence is one of these, with whatever stands in its gaps. */
  const isOf = (line: string, of: readonly string[], gaps: Readonly<Record<string, string | number>> = {}) =>
    of.some((one) => one.replace(/\{(\w+)\}/g, (_, name: string) => String(gaps[name])) === line);

  it('begins with what was laid on what and with what', () => {
    expect(
      unless(drawn, (item) => {
        const { laid } = parts(item);
        const family = toldIn(item, 'family') as keyof PracticeWords['coat'];
        const { paint, wood } = item.board.base;
        const base = String(toldIn(item, 'base'));
        const over = wood
          ? words['over-wood'][base as 'stain'].replace('{wood}', words.wood[wood])
          : (words['over-paint'].find((one) => one.base === base)?.say ?? '').replace(
              '{color}',
              paint ? words.color[paint] : '',
            );
        const own = (words['coat-of'] as Record<string, readonly string[]>)[item.flaw];
        const applicator = String(toldIn(item, 'applicator')) as keyof PracticeWords['laid'];
        return words.laid[applicator].some((one) =>
          (own ?? words.coat[family]).some((coat) =>
            words.piece.some(
              (piece) =>
                one.replace('{coat}', coat).replace('{piece}', piece).replace('{over}', over) === laid,
            ),
          ),
        );
      }),
    ).toEqual([]);
    expect(
      unless(
        drawn.filter(({ level }) => level === 'look'),
        ({ story }) => story.length === 1,
      ),
    ).toEqual([]);
  });

  it('goes on with the sheen, the number of the coat, what lies below, and the air or the stage', () => {
    const minutes = (of: number) =>
      of < 90 ? `${of} minutes` : of < 2880 ? `${of / 60} hours` : `${of / 1440} days`;
    expect(
      unless(
        drawn.filter(({ level }) => level !== 'look'),
        (item) => {
          const { rest } = parts(item);
          const lines = [...rest];
          const sheen = toldIn(item, 'sheen') as 'satin' | undefined;
          if (sheen && lines.shift() !== words.sheen[sheen]) return 'sheen';
          const number = Number(toldIn(item, 'coat-number'));
          const { first, second, more } = words.coats;
          const wanted =
            number === 1 ? first : number === 2 ? second : more.replace('{number}', String(number));
          if (lines.shift() !== wanted) return 'number';
          const old = toldIn(item, 'age') === 'unknown';
          if (!isOf(lines.shift() ?? '', words[old ? 'not-known' : 'only-mine'])) return 'below';
          const { coat, standing } = item;
          if (!coat) {
            const family = toldIn(item, 'family') as (typeof UNSANDED)[number];
            const told = words[UNSANDED.includes(family) ? 'stage-unsanded' : 'stage'];
            return lines.length === 1 && standing !== undefined && isOf(lines[0] ?? '', told[standing]);
          }
          const { laid, now } = coat;
          const days = Math.floor(now / DAY) - Math.floor(laid.laidAt / DAY);
          return (
            lines.length === 3 &&
            isOf(lines[0] ?? '', words.weather, {
              celsius: laid.celsius,
              fahrenheit: Math.round(laid.celsius * 1.8 + 32),
              humidity: Math.round(laid.relativeHumidity * 100),
            }) &&
            isOf(lines[1] ?? '', words.can, {
              touch: minutes(coat.touchMinutes),
              recoat: minutes(coat.recoatMinutes),
            }) &&
            isOf(lines[2] ?? '', words.times, {
              laid: sayInstant(laid.laidAt, now, PRACTICE_TIME),
              now: sayInstant(now, days > 1 ? 0 : now, PRACTICE_TIME).replace(/, \d{4}/, ''),
            })
          );
        },
      ),
    ).toEqual([]);
  });

  it('tells each check as the question has it, and only what the case knows', () => {
    expect(
      unless(flawed, (item) =>
        item.found.every(
          ({ question, answer, ask, says }) =>
            answerOf(known, item.on, question) === answer &&
            ask === known.get('question', question).ask &&
            says === known.get('question', question)[answer],
        ),
      ),
    ).toEqual([]);
    // What is shown on the board is not told of a look.
    expect(
      unless(
        flawed.filter(({ level }) => level === 'look'),
        (item) =>
          item.found.every(({ question }) => {
            const { by, boards } = known.get('question', question);
            return by !== 'look' || boards === undefined;
          }),
      ),
    ).toEqual([]);
  });
});

describe('the situation', () => {
  it('has its board wet exactly while the film is fresh, and dry for a look', () => {
    expect(
      unless(drawn, (item) => {
        const stage = stageOf(item.on);
        return item.board.wet === (stage === 'wet' || stage === 'setting');
      }),
    ).toEqual([]);
  });

  it('shows a board of the flaw, one that was drawn wet while the film is fresh', () => {
    expect(
      unless(flawed, (item) => {
        const { boards } = known.get('defect', item.flaw);
        const wet = boards.filter((one) => one.wet);
        const fit = item.board.wet && wet.length ? wet : boards.filter((one) => !one.wet);
        return fit.some(
          ({ alt, features }) => alt === item.board.alt && features.length === item.board.features.length,
        );
      }),
    ).toEqual([]);
    expect(
      flawed.some(({ board, flaw }) => board.wet && known.get('defect', flaw).boards.some(({ wet }) => wet)),
    ).toBe(true);
  });

  it('answers what the picture of that board shows', () => {
    const shown = words.shows as Readonly<Record<string, readonly Record<string, string>[] | undefined>>;
    let told = 0;
    expect(
      unless(flawed, (item) => {
        const { boards } = known.get('defect', item.flaw);
        const same = boards.flatMap(({ alt }, at) =>
          alt === item.board.alt ? [shown[item.flaw]?.[at] ?? {}] : [],
        );
        return same.some((answers) =>
          Object.entries(answers).every(([question, answer]) => {
            const given = item.on[question]?.value;
            if (given !== undefined) told++;
            return given === undefined || given === answer;
          }),
        );
      }),
    ).toEqual([]);
    expect(told).toBeGreaterThan(5);
  });

  it('tells what lies below as the picture shows it, and its sheen', () => {
    const dark = ['navy', 'black', 'red'];
    const SHEEN = {
      matte: 'matte',
      eggshell: 'matte',
      satin: 'satin',
      'semi-gloss': 'gloss',
      gloss: 'gloss',
      'high-gloss': 'gloss',
    };
    expect(
      unless(drawn, (item) => {
        const { paint } = item.board.base;
        const base = String(toldIn(item, 'base'));
        const tone = paint ? (dark.includes(paint) ? 'dark' : 'light') : 'wood';
        const bases = paint ? words['over-paint'].map((one) => one.base as string) : ['stain', 'bare-wood'];
        const film = !UNSANDED.includes(toldIn(item, 'family') as (typeof UNSANDED)[number]);
        const sheen = film && item.flaw !== SOUND ? SHEEN[item.board.sheen] : undefined;
        return same(
          [toldIn(item, 'base-tone'), bases.includes(base), toldIn(item, 'sheen')],
          [tone, true, sheen],
        );
      }),
    ).toEqual([]);
  });

  it('of a whole case is in one of ten rooms, of a morning in May, asked about by day', () => {
    const rooms = new Set<string>();
    expect(ofCases.length).toBeGreaterThan(60);
    expect(
      unless(ofCases, (item) => {
        const { coat } = item;
        if (!coat) return false;
        const { laid, now, reading, touchMinutes, recoatMinutes } = coat;
        rooms.add(`${laid.celsius} ${laid.relativeHumidity}`);
        const hour = (now % DAY) / HOUR;
        const step = stageOf(item.on) === 'wet' || stageOf(item.on) === 'setting' ? 1 : 5;
        const quarter = (laid.laidAt - Date.UTC(2026, 4, 2, 9)) / (15 * MINUTE);
        return (
          hour >= 6 &&
          hour < 23 &&
          now % (step * MINUTE) === 0 &&
          Number.isInteger(quarter) &&
          quarter >= 0 &&
          quarter < 32 &&
          reading.sureness === 'surely' &&
          reading.stage === stageOf(item.on) &&
          recoatMinutes >= 2 * touchMinutes &&
          same(
            [
              toldIn(item, 'air-celsius'),
              toldIn(item, 'relative-humidity'),
              toldIn(item, 'hours-since-coat'),
            ],
            [laid.celsius, laid.relativeHumidity, (now - laid.laidAt) / HOUR],
          ) === true &&
          laid.label?.minutes.touch?.from === touchMinutes &&
          laid.label?.minutes.recoat?.to === recoatMinutes
        );
      }),
    ).toEqual([]);
    expect(rooms.size).toBe(10);
  });

  it('tells the age of the film where no clock does', () => {
    const hours = { wet: 0.02, recoatable: 30, cured: 1000 } as const;
    expect(
      unless(
        flawed.filter(({ level, coat }) => level !== 'look' && !coat),
        (item) => {
          const overdue = toldIn(item, 'overdue') === 'yes';
          const stage = stageOf(item.on);
          const wanted = overdue ? 200 : stage && hours[stage as 'wet'];
          return same(toldIn(item, 'hours-since-coat'), wanted);
        },
      ),
    ).toEqual([]);
    expect(
      unless(flawed, (item) => (item.standing === 'overdue') === (toldIn(item, 'overdue') === 'yes')),
    ).toEqual([]);
  });

  it('tells old paint only of a whole case over paint, now and then', () => {
    const old = drawn.filter((item) => toldIn(item, 'age') === 'unknown');
    expect(old.length).toBeGreaterThan(0);
    expect(old.length).toBeLessThan(ofCases.length / 4);
    expect(unless(old, ({ level, board }) => level === 'case' && board.base.paint !== undefined)).toEqual([]);
  });
});

describe('what can be practised', () => {
  it('has a board of a dry film; for a look alone one with something on it, and sound boards besides', () => {
    const flaw = (id: string, ...boards: { wet: boolean; features: unknown[] }[]) => ({ id, boards });
    const some = {
      defects: [
        flaw('wet-alone', { wet: true, features: [1] }),
        flaw('seen', { wet: true, features: [1] }, { wet: false, features: [1] }),
        flaw('smelled', { wet: false, features: [] }),
        flaw('none'),
      ],
    } as never;
    expect(practised(some, 'look')).toEqual(['seen', SOUND]);
    for (const level of ['stage', 'case'] as const)
      expect(practised(some, level)).toEqual(['seen', 'smelled']);
  });
});

describe('a flaw of a seed', () => {
  it('is as often as it is met: what is common oftener than what is rare', () => {
    const drawn = Array.from({ length: 1500 }, (_, seed) => flawOfSeed(known, 'stage', seed));
    const often = (of: string) => {
      const ids = practised(known, 'stage').filter((id) => known.get('defect', id).often === of);
      return drawn.filter((id) => ids.includes(id)).length / Math.max(1, ids.length);
    };
    const kinds = ['rare', 'now-and-then', 'common'].filter((of) =>
      known.defects.some(({ often: is }) => is === of),
    );
    const shares = kinds.map(often);
    expect(shares.length).toBeGreaterThan(1);
    expect(shares).toEqual(shares.toSorted((one, two) => one - two));
    expect(drawn).not.toContain(SOUND);
  });
  it('is read back from its id up to the largest seed', () => {
    expect(readPracticeId('look.bubbles.2147483647')).toEqual({
      level: 'look',
      flaw: 'bubbles',
      seed: 2_147_483_647,
    });
    expect(readPracticeId('look.bubbles.2147483648')).toBeUndefined();
    for (const bad of ['xlook.bubbles.1', 'look.bubbles.1x', 'look.Bubbles.1', 'look.1bubbles.1', 'look..1'])
      expect(readPracticeId(bad)).toBeUndefined();
    expect(() => dealPractice(known, words, { level: 'look', seed: 1, flaw: 'no-such-flaw' })).toThrow();
  });
});

it('is of the flaw itself where nothing more can be checked on a film that is dry', () => {
  expect(
    unless(flawed, (item) => {
      const stage = stageOf(item.on);
      if (stage !== undefined && stage !== 'recoatable' && stage !== 'cured') return true;
      const { leaves, met } = possible(known, item.on, item.flaw);
      return leaves.every(({ of }) => of === item.flaw) && met.every(({ open }) => !open);
    }),
  ).toEqual([]);
  // On a soft film it may still be another, but never surely.
  expect(
    unless(flawed, (item) => possible(known, item.on, item.flaw).leaves.some(({ of }) => of === item.flaw)),
  ).toEqual([]);
});
