import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type CardFault, coatOwed, type JobFile, sayCardFault } from '#engine/jobs.ts';
import { CARD_VERSION } from '#engine/model/card-limits.ts';
import { JobCard } from '#engine/model/job-card.ts';
import { migrate } from '#engine/model/migrate.ts';
import { jobFileOf, jobFileSchema, readCard, readJobFile, salvageCard } from '#engine/model/read-card.ts';
import type { JsonRecord } from '#engine/plain/record.ts';
import { anyCard, card, coat, START } from './cards.ts';
import { CARD_1 } from './version-1.ts';
import { CARD_2 } from './version-2.ts';
import { CARD_3 } from './version-3.ts';

const PICTURE = 'data:image/jpeg;base64,AAAA';
const fileOf = (...cards: unknown[]) => ({ format: 'halfdry-jobs', version: 1, writtenAt: START, cards });
const faultsOf = (read: { ok: boolean; faults?: readonly CardFault[] }): string[] =>
  read.ok ? [] : (read.faults ?? []).map(sayCardFault);

describe('reading a card', () => {
  it('gives back every card that can be written', () => {
    fc.assert(
      fc.property(anyCard, (one) => {
        expect(readCard(one)).toEqual({ ok: true, value: one });
      }),
    );
  });

  it('says which card, which field and what to do', () => {
    const broken = {
      ...card(),
      tone: 'blue',
      coats: [
        { ...coat(), celsius: 900 },
        { ...coat({ id: 'b' }), laidAt: 'now' },
      ],
    };
    expect(faultsOf(readCard(broken))).toEqual([
      '“Navy dresser”: tone must be one of dark, light, wood; correct it.',
      '“Navy dresser”: coats, entry 1, celsius must be 50 at most; correct it.',
      '“Navy dresser”: coats, entry 2, laidAt must be a number; correct it.',
    ]);
    const { base: _gone, ...bare } = card();
    expect(faultsOf(readCard({ ...bare, color: 'navy' }))).toEqual([
      '“Navy dresser”: base must be one of chalk-paint, milk-paint, latex-paint, oil-paint, stain, bare-wood, old-finish, wax, laminate; correct it.',
      '“Navy dresser”: color is no field of a card; take it out.',
    ]);
  });

  it('reads a card of version 2 whose can promised what none prints: such times move into the notes', () => {
    const read = readCard(CARD_2);
    if (!read.ok) throw new Error(faultsOf(read).join());
    expect(read.value.label).toEqual({ minutes: { recoat: { from: 120, to: 240 } } });
    expect(read.value.coats[0]?.label).toEqual({ minutes: { recoat: { from: 1440, to: 4320 } } });
    expect(read.value.notes).toMatch(/^two shelves\n.*card, cure: .*1440000000000.*coat 1, touch: /);
    // The same card twice is one and the same, so that two tabs do not clash over it.
    expect(readCard(CARD_2)).toEqual(read);
    // As the present version it is refused: only what version 2 took is forgiven.
    expect(readCard({ ...CARD_2, version: CARD_VERSION }).ok).toBe(false);
    // Whatever else is wrong stays wrong.
    for (const label of [7, null, { minutes: 7 }, { minutes: { cure: 'long' } }])
      expect(readCard({ ...CARD_2, label }).ok).toBe(false);
  });

  it('reads of a card of version 3 which repairs laid no coat, and leaves her own words to her', () => {
    const read = readCard(CARD_3);
    if (!read.ok) throw new Error(faultsOf(read).join());
    expect(read.value.repairs).toEqual([
      { ...CARD_3.repairs[0], laidNoCoat: true, note: 'Look at it again after a week.' },
      { id: 'r2', doneAt: 1_795_400_000_000, remedy: 'full-panel-recoat', laidNoCoat: true },
      { ...CARD_3.repairs[2], laidNoCoat: true },
      CARD_3.repairs[3],
      CARD_3.repairs[4],
    ]);
    expect(read.value.notes).toBe(CARD_3.notes);
    // Of the five only the last two may owe their coats, as before.
    const owed = (one: JobCard) => coatOwed(one, { 'full-panel-recoat': 'same' })?.id;
    expect(owed(read.value)).toBe('r5');
    expect(owed({ ...read.value, repairs: read.value.repairs.slice(0, 3) })).toBeUndefined();
    // In a file of then, too; and what lies damaged is salvaged with it.
    expect(readJobFile({ ...fileOf(CARD_3), version: 3 })).toMatchObject({
      ok: true,
      value: { version: CARD_VERSION, cards: [read.value] },
    });
    expect(salvageCard({ ...CARD_3, notes: 7 }, 'old-3', START)?.card.repairs).toEqual(read.value.repairs);
  });

  it('refuses a repair of which no such thing can be said, of whatever version', () => {
    const repair = { id: 'r', doneAt: START, remedy: 'full-panel-recoat' };
    for (const version of [3, CARD_VERSION])
      for (const laidNoCoat of [false, 'yes', 1, null, {}])
        expect(readCard({ ...card(), version, repairs: [{ ...repair, laidNoCoat }] }).ok).toBe(false);
    // What is no list of repairs is no more one after the step from version 3.
    for (const repairs of [7, null, 'No coat was laid.', [null], [7], { note: 'No coat was laid.' }])
      expect(readCard({ ...card(), version: 3, repairs }).ok).toBe(false);
  });

  it('refuses a card of a newer version with what to do, and one of no version', () => {
    expect(faultsOf(readCard({ ...card(), version: CARD_VERSION + 1 }))).toEqual([
      '“Navy dresser” was written by a newer Halfdry: reload the page, then try again.',
    ]);
    for (const version of [0, -1, 1.5, '1', null, undefined])
      expect(faultsOf(readCard({ ...card(), version }))[0]).toContain('no job card of Halfdry');
  });

  it('brings an older card up step by step, and stops where there is no way', () => {
    const steps = {
      1: ({ remarks, ...old }: JsonRecord) => ({ ...old, notes: remarks }),
      2: (old: JsonRecord) => ({ ...old, photos: [] }),
    };
    const old = { version: 1, remarks: 'dust' };
    expect(migrate(old, 3, steps)).toEqual({ ok: true, value: { version: 3, notes: 'dust', photos: [] } });
    expect(migrate({ version: 3 }, 3, steps)).toEqual({ ok: true, value: { version: 3 } });
    expect(migrate(old, 4, steps)).toEqual({ ok: false, why: 'no-way' });
    expect(migrate({ version: 5 }, 4, steps)).toEqual({ ok: false, why: 'newer' });
    expect(old).toEqual({ version: 1, remarks: 'dust' });
  });

  it('refuses ids that stand twice and labels out of order', () => {
    expect(faultsOf(readCard(card({ coats: [coat(), coat()] })))).toEqual([
      '“Navy dresser”: coats has two entries with one id; give each its own.',
    ]);
    const label = { minutes: { touch: { from: 60, to: 90 }, recoat: { from: 10, to: 20 } } };
    expect(faultsOf(readCard(card({ coats: [coat({ label })] })))[0]).toContain('coats, entry 1, label');
  });

  it('stands hostile values: prototypes, huge lists, deep nests, getters that throw', () => {
    const deep = JSON.parse(`${'['.repeat(5000)}${']'.repeat(5000)}`);
    const trap = Object.defineProperty({}, 'name', {
      enumerable: true,
      get: () => {
        throw new Error('trap');
      },
    });
    const round: Record<string, unknown> = { ...card() };
    round['coats'] = [round];
    for (const hostile of [
      { ...card(), notes: deep },
      { ...card(), coats: Array.from({ length: 3_000_000 }) },
      { ...card(), name: 'x'.repeat(1_000_000) },
      JSON.parse('{"__proto__":{"version":1},"constructor":{"prototype":{}}}'),
      JSON.parse(JSON.stringify(card()).replace('{', '{"__proto__":{"polluted":true},')),
      trap,
      new Proxy({}, { get: () => trap, ownKeys: () => ['a', 'a'] }),
      round,
      Number.NaN,
      Symbol('card'),
      () => card(),
      undefined,
      null,
      [],
    ]) {
      const read = readCard(hostile);
      expect(read.ok).toBe(false);
      expect(faultsOf(read).length).toBeGreaterThan(0);
      expect(faultsOf(read).length).toBeLessThanOrEqual(20);
      for (const says of faultsOf(read)) expect(says.length).toBeLessThan(400);
    }
    expect(({} as Record<string, unknown>)['polluted']).toBeUndefined();
  });
});

describe('reading an export', () => {
  it('gives back what was written, with the pictures of its cards only', () => {
    const photo = { id: 'p1', takenAt: START, width: 800, height: 600 };
    const one = card({ photos: [photo] });
    const file = jobFileOf([one], { p1: PICTURE, stray: PICTURE }, START);
    expect(file.photos).toEqual({ p1: PICTURE });
    expect(readJobFile(JSON.stringify(file))).toEqual({ ok: true, value: file, leftOut: 0, faults: [] });
    expect(readJobFile(file)).toEqual({ ok: true, value: file, leftOut: 0, faults: [] });
  });

  it('tells which cards were taken away, and leaves out what is no such note', () => {
    const gone = { id: 'gone', name: 'Chair', at: START };
    const file = jobFileOf([card()], {}, START, [gone]);
    expect(readJobFile(JSON.stringify(file))).toEqual({ ok: true, value: file, leftOut: 0, faults: [] });
    for (const removed of [[gone, { id: 7 }], 'gone', { gone }]) {
      const read = readJobFile({ ...fileOf(card()), removed });
      expect(read).toMatchObject({ ok: true, leftOut: 0, faults: [{ field: 'removed' }] });
    }
  });

  it('reads a file of version 1 as it was written', () => {
    const old = {
      format: 'halfdry-jobs',
      version: 1,
      writtenAt: 1_795_000_000_000,
      cards: [CARD_1],
      photos: { p1: PICTURE },
    };
    const read = readJobFile(JSON.stringify(old));
    const cards = old.cards.map((one) => ({ ...one, version: CARD_VERSION }));
    expect(read).toEqual({
      ok: true,
      value: { ...old, version: CARD_VERSION, cards },
      leftOut: 0,
      faults: [],
    });
  });

  it('reads the whole cards beside a broken one, names it, and refuses a file without any', () => {
    const read = readJobFile(fileOf(card(), { ...card({ id: 'b' }), kind: 'boat' }, 7, card()));
    expect(read).toMatchObject({ ok: true, leftOut: 3, value: { cards: [card()] } });
    expect(read.faults.map(sayCardFault)).toEqual([
      '“Navy dresser”: kind must be one of furniture, tabletop, food-surface, childs-item, crib, valuable; correct it.',
      'Card 3 is no card at all; leave it out.',
      '“Navy dresser”: id stands twice in this file; the first is taken.',
    ]);
    expect(readJobFile(fileOf(7)).ok).toBe(false);
    expect(readJobFile(fileOf())).toMatchObject({ ok: true, leftOut: 0 });
  });

  it('tells a newer file, another file and damage apart', () => {
    expect(faultsOf(readJobFile({ ...fileOf(card()), version: 9 }))[0]).toContain('newer Halfdry');
    expect(faultsOf(readJobFile('{"a":1}'))[0]).toContain('no export of job cards');
    expect(faultsOf(readJobFile('{"format":"halfdry-jobs","ver'))[0]).toContain('damaged');
    expect(faultsOf(readJobFile({ ...fileOf(), cards: Array.from({ length: 5001 }) }))[0]).toContain(
      'more than',
    );
  });

  it('leaves out what is no picture, and keeps the card', () => {
    const photos = [{ id: 'p', takenAt: START, width: 1, height: 1 }];
    for (const picture of [
      'data:text/html;base64,AAAA',
      'javascript:alert(1)',
      5,
      `data:image/png;base64,<svg>`,
    ]) {
      const read = readJobFile({ ...fileOf(card({ photos })), photos: { p: picture } });
      expect(read).toMatchObject({ ok: true, leftOut: 0 });
      expect(read.ok && read.value.photos).toBeUndefined();
      expect(read.faults).toHaveLength(1);
    }
  });

  it('never throws and never yields a wrong card, over 1,500 spoiled files', () => {
    const junk = fc.oneof(
      fc.constantFrom<unknown>(null, -1, 1e308, '', 'x', [], {}, true, Number.NaN, '__proto__', {
        __proto__: null,
      }),
      fc.jsonValue(),
      fc.anything(),
    );
    const spoil = (value: unknown, path: readonly number[], by: unknown): unknown => {
      const [step, ...rest] = path;
      if (step === undefined || typeof value !== 'object' || value === null) return by;
      const keys = Object.keys(value);
      const key = keys[step % (keys.length + 1)] ?? 'surplus';
      const copy = (Array.isArray(value) ? [...value] : { ...value }) as Record<string, unknown>;
      copy[key] = spoil(copy[key], rest, by);
      return copy;
    };
    const path = fc.array(fc.nat(30), { minLength: 1, maxLength: 5 });
    let yielded = 0;
    let refusals = 0;
    const check = (input: unknown) => {
      const read = readJobFile(input);
      expect(read.faults.length).toBeLessThanOrEqual(20);
      if (!read.ok) {
        refusals += 1;
        expect(read.faults.length).toBeGreaterThan(0);
        return;
      }
      for (const one of read.value.cards) {
        yielded += 1;
        expect(JobCard.safeParse(one).success).toBe(true);
      }
      if (read.leftOut) expect(read.faults.length).toBeGreaterThan(0);
    };
    fc.assert(
      fc.property(fc.array(anyCard, { maxLength: 3 }), path, junk, (cards, where, by) =>
        check(spoil(fileOf(...cards), where, by)),
      ),
      { numRuns: 1000 },
    );
    fc.assert(
      fc.property(
        fc.array(anyCard, { maxLength: 2 }),
        fc.nat(),
        fc.nat(40),
        fc.string(),
        (cards, at, cut, by) => {
          const text = JSON.stringify(fileOf(...cards));
          const from = at % text.length;
          check(text.slice(0, from) + by + text.slice(from + cut));
        },
      ),
      { numRuns: 500 },
    );
    expect(yielded).toBeGreaterThan(100);
    expect(refusals).toBeGreaterThan(100);
  });
});

describe('the description of the export', () => {
  it('is a JSON Schema that names every field of a card', () => {
    const schema = jobFileSchema() as {
      properties: Record<keyof JobFile, { items: { properties: object } }>;
    };
    expect(schema).toMatchObject({ $schema: expect.stringContaining('json-schema'), type: 'object' });
    const named = Object.keys(schema.properties.cards.items.properties);
    expect(named).toEqual(expect.arrayContaining(Object.keys(card())));
  });
});

describe('the door', () => {
  it('brings no schema library to the page', () => {
    const seen = new Set<string>();
    const follow = (file: string) => {
      if (seen.has(file)) return;
      seen.add(file);
      const text = readFileSync(file, 'utf8');
      for (const [, typeOnly, from = ''] of text.matchAll(
        /^\s*(?:import|export)\s+(type\s+)?(?:[^'";]*?\sfrom\s+)?'([^']+)'/gm,
      )) {
        if (typeOnly) continue;
        if (from.startsWith('.')) follow(new URL(from, `file:///${file}`).pathname.slice(1));
        else expect(from, file).not.toBe('zod');
      }
    };
    follow('engine/jobs.ts');
    expect(seen.size).toBeGreaterThan(10);
  });
});
