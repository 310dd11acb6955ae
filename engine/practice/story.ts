import { answerOf } from '../case/answers.ts';
import type { Case } from '../case/case.ts';
import { sayInstant, type TimeStyle } from '../clock/say-time.ts';
import type { BoardRecipe } from '../model/board.ts';
import type { ValueOf } from '../model/facts.ts';
import { type Family, UNSANDED } from '../model/family.ts';
import type { PracticeWords } from '../model/practice.ts';
import { inUnit, sayLong, unitOf } from '../plain/say-span.ts';
import { DAY_MS } from '../plain/time.ts';
import type { Chance } from './chance.ts';
import type { PracticeCoat, PracticeFinding, PracticeLevel } from './item.ts';
import type { PracticeKnowledge } from './knowledge.ts';
import type { Told } from './situation.ts';

/** Times of a made-up day stand in no time zone, so that everybody reads the same ones. */
export const PRACTICE_TIME: TimeStyle = { timeZone: 'UTC', hour12: true };

const filled = (text: string, parts: Readonly<Record<string, string | number>>): string =>
  text.replace(/\{(\w+)\}/g, (_, name: string) => String(parts[name] ?? ''));

/** Who tells a story says an hour and a half, not ninety minutes. */
const HOURS_FROM = 90;
const timeSaid = (minutes: number): string => {
  const unit = unitOf(minutes, HOURS_FROM);
  return sayLong(inUnit(minutes, unit), unit);
};

const toldOf = (on: Case, fact: string): string => String(on[fact]?.value ?? '');

const overOf = (words: PracticeWords, on: Case, { base }: BoardRecipe): string => {
  const told = toldOf(on, 'base');
  if (base.wood)
    return filled(words['over-wood'][told === 'bare-wood' ? 'bare-wood' : 'stain'], {
      wood: words.wood[base.wood],
    });
  const paint = words['over-paint'].find((one) => one.base === told) ?? words['over-paint'][0];
  return filled(paint?.say ?? '', { color: base.paint ? words.color[base.paint] : '' });
};

const daysApart = (early: number, late: number): number =>
  Math.floor(late / DAY_MS) - Math.floor(early / DAY_MS);

const ofTheCoat = (words: PracticeWords, coat: PracticeCoat, chance: Chance): string[] => {
  const { laid, now, touchMinutes, recoatMinutes } = coat;
  return [
    filled(chance.one(words.weather), {
      celsius: laid.celsius,
      fahrenheit: Math.round((laid.celsius * 9) / 5 + 32),
      humidity: Math.round(laid.relativeHumidity * 100),
    }),
    filled(chance.one(words.can), { touch: timeSaid(touchMinutes), recoat: timeSaid(recoatMinutes) }),
    filled(chance.one(words.times), {
      laid: sayInstant(laid.laidAt, now, PRACTICE_TIME),
      // A coat of yesterday or today tells which day it is; of an older one the day of both is told.
      now: sayInstant(now, daysApart(laid.laidAt, now) > 1 ? now - 30 * DAY_MS : now, PRACTICE_TIME),
    }),
  ];
};

/** What somebody would write who asks: what was laid on what and with what, how long ago, in what air. */
export const storyOf = (
  words: PracticeWords,
  { on, board, applicator, standing, coat }: Told,
  level: PracticeLevel,
  flaw: string,
  chance: Chance,
): readonly string[] => {
  const family = toldOf(on, 'family') as Family;
  const sheen = toldOf(on, 'sheen') as ValueOf<'sheen'> | '';
  const number = Number(toldOf(on, 'coat-number'));
  const laid = filled(chance.one(words.laid[applicator]), {
    coat: chance.one(
      (words['coat-of'] as Readonly<Record<string, readonly string[]>>)[flaw] ?? words.coat[family],
    ),
    piece: chance.one(words.piece),
    over: overOf(words, on, board),
  });
  if (level === 'look') return [laid];
  const { first, second, more } = words.coats;
  return [
    laid,
    ...(sheen ? [words.sheen[sheen]] : []),
    number === 1 ? first : number === 2 ? second : filled(more, { number }),
    chance.one(toldOf(on, 'age') === 'unknown' ? words['not-known'] : words['only-mine']),
    ...(coat
      ? ofTheCoat(words, coat, chance)
      : standing
        ? [chance.one(words[UNSANDED.includes(family) ? 'stage-unsanded' : 'stage'][standing])]
        : []),
  ];
};

/** A question with its answer, as a check on the piece found it. */
export const findingOf = (
  known: PracticeKnowledge,
  on: Case,
  question: string,
  answer = answerOf(known, on, question),
): PracticeFinding | undefined => {
  if (answer !== 'yes' && answer !== 'no') return undefined;
  const { ask, [answer]: says } = known.get('question', question);
  return { question, answer, ask, says };
};
