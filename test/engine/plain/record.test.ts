import { expect, it } from 'vitest';
import { isRecord } from '#engine/plain/record.ts';

// RFC 8259 knows six kinds of values; of them an object alone has keys.
it('is an object, and none of the other kinds of JSON', () => {
  const kinds: readonly unknown[] = ['{}', '[]', '"a"', '7', 'true', 'null'].map((text) => JSON.parse(text));
  expect(kinds.map(isRecord)).toEqual([true, false, false, false, false, false]);
  expect(isRecord(undefined)).toBe(false);
});
