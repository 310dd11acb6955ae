/** What a browser keeps: read only as its schema has it, whatever lies there. */
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { forget, keep, lookUp, recall } from '../../../site/client/shared/storage.ts';
import { LOCAL_KEYS, SESSION_KEYS } from '../../../site/shared/storage-keys.ts';

const storage = (): Storage => {
  const kept = new Map<string, string>();
  return {
    getItem: (key) => kept.get(key) ?? null,
    setItem: (key, text) => void kept.set(key, text),
    removeItem: (key) => void kept.delete(key),
    clear: () => kept.clear(),
    key: (at) => [...kept.keys()][at] ?? null,
    get length() {
      return kept.size;
    },
  };
};
let local = storage();
let session = storage();
beforeEach(() => {
  local = storage();
  session = storage();
  vi.stubGlobal('localStorage', local);
  vi.stubGlobal('sessionStorage', session);
});
afterEach(() => vi.unstubAllGlobals());

it('gives back what was kept, each in its own place', () => {
  const facts = { stage: { value: 'wet', how: 'answered' } } as const;
  expect(keep('case', { version: 1, facts })).toBe(true);
  expect(keep('schedule-form', { version: 1, draft: { air: '70' } })).toBe(true);
  expect(recall('case')?.facts).toEqual(facts);
  expect(recall('schedule-form')?.draft).toEqual({ air: '70' });
  expect([local.length, session.length]).toEqual([1, 1]);
  expect(forget('case')).toBe(true);
  expect(lookUp('case')).toEqual({ kind: 'nothing' });
});

it('gives no two things one name', () => {
  const names = [...Object.values(LOCAL_KEYS), ...Object.values(SESSION_KEYS)];
  expect(new Set(names).size).toBe(names.length);
});

it.each([
  '{',
  'null',
  '[]',
  '7',
  '{"version":2,"facts":{}}',
  '{"version":1,"facts":3}',
  `{"id":${'['.repeat(3000)}`,
])('tells that %.40s is no case, and gives none', (text) => {
  local.setItem(LOCAL_KEYS.case, text);
  expect(lookUp('case')).toEqual({ kind: 'damaged', text });
  expect(recall('case')).toBeUndefined();
});

it('leaves out the one fact that cannot be read', () => {
  const sound = { value: 3, how: 'told' };
  const facts = { a: sound, b: { value: [], how: 'told' }, c: { value: 'x'.repeat(61), how: 'told' } };
  local.setItem(LOCAL_KEYS.case, JSON.stringify({ version: 1, facts: { ...facts, __proto__x: sound } }));
  expect(recall('case')?.facts).toEqual({ a: sound });
});

it('reads the form of the clock as it stood before it had a version', () => {
  local.setItem(LOCAL_KEYS['clock-form'], '{"units":"metric","air":"20"}');
  expect(recall('clock-form')).toEqual({ version: 1, draft: { units: 'metric', air: '20' } });
});

it('takes a refusal of the browser for what it is, and no bug for one', () => {
  const refuse = (error: unknown) => () => {
    throw error;
  };
  local.setItem = refuse(new DOMException('full', 'QuotaExceededError'));
  local.getItem = refuse(new DOMException('denied', 'SecurityError'));
  expect(keep('coat-runs', 1)).toBe(false);
  expect(lookUp('coat-runs')).toEqual({ kind: 'denied' });
  local.getItem = refuse(new TypeError('a slip of ours'));
  expect(() => recall('coat-runs')).toThrow('a slip of ours');
});

it('never writes what it would not read back', () => {
  expect(() => keep('coat-runs', 2 as 1)).toThrow();
  expect(local.length).toBe(0);
});
