import type { JsonRecord } from '../plain/record.ts';

/** By the version that they start from: each turns a card of its version into one of the next. */
export type Migrations = Readonly<Record<number, (card: JsonRecord) => JsonRecord>>;

export type Migrated =
  | { readonly ok: true; readonly value: JsonRecord }
  | { readonly ok: false; readonly why: 'no-version' | 'newer' | 'no-way' };

/** A card of an older version brought up to the `current` one, step by step. */
export const migrate = (raw: JsonRecord, current: number, migrations: Migrations): Migrated => {
  let card = raw;
  for (;;) {
    const version = card['version'];
    if (typeof version !== 'number' || !Number.isInteger(version) || version < 1)
      return { ok: false, why: 'no-version' };
    if (version > current) return { ok: false, why: 'newer' };
    if (version === current) return { ok: true, value: card };
    const step = migrations[version];
    if (!step) return { ok: false, why: 'no-way' };
    card = { ...step(card), version: version + 1 };
  }
};
