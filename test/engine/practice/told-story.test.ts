/** What a practice board tells before it asks, put together here once more from the words of the content. */
import { describe, expect, it } from 'vitest';
import { sayInstant } from '../../../engine/clock.ts';
import { answerOf } from '../../../engine/index.ts';
import { UNSANDED } from '../../../engine/model/family.ts';
import type { PracticeWords } from '../../../engine/model/practice.ts';
import { DAY_MS as DAY } from '../../../engine/plain/time.ts';
import { PRACTICE_TIME, type PracticeItem } from '../../../engine/practice.ts';
import { drawn, flawed, known, toldIn, unless, words } from './dealt.ts';

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
