/** What holds of every situation that is dealt: its board, its facts, its times, and that it is of the flaw itself. */
import { describe, expect, it } from 'vitest';
import { possible, stageOf } from '../../../engine/index.ts';
import { UNSANDED } from '../../../engine/model/family.ts';
import { DAY_MS as DAY, HOUR_MS as HOUR, MINUTE_MS as MINUTE } from '../../../engine/plain/time.ts';
import { SOUND } from '../../../engine/practice.ts';
import { drawn, flawed, known, same, toldIn, unless, words } from './dealt.ts';

const ofCases = drawn.filter(({ level, coat }) => level === 'case' && coat);

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
