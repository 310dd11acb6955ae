import type { Case } from '#engine/index.ts';

/** What this browser keeps between pages. Anything that does not read as this version is dropped. */
type Stored = { readonly version: 1; readonly facts: Case };

const KEY = 'halfdry.case';
const NAME = /^[a-z][a-z0-9-]{0,60}$/;
const HOWS = ['answered', 'measured', 'computed', 'told'];

const isFact = (fact: unknown): boolean => {
  if (typeof fact !== 'object' || fact === null) return false;
  const { value, how } = fact as Record<string, unknown>;
  const sound = typeof value === 'string' ? value.length <= 60 : Number.isFinite(value);
  return sound && typeof how === 'string' && HOWS.includes(how);
};

const validCase = (stored: unknown): Case => {
  if (typeof stored !== 'object' || stored === null) return {};
  const { version, facts } = stored as Record<string, unknown>;
  if (version !== 1 || typeof facts !== 'object' || facts === null) return {};
  return Object.fromEntries(Object.entries(facts).filter(([name, fact]) => NAME.test(name) && isFact(fact)));
};

/** The case kept in this browser; empty where there is none, it is damaged, or storage is denied. */
export const readCase = (): Case => {
  try {
    return validCase(JSON.parse(localStorage.getItem(KEY) ?? 'null'));
  } catch {
    return {};
  }
};

/** Keeps the case. False where the browser refuses (storage full or denied): tell her. */
export const keepCase = (facts: Case): boolean => {
  try {
    localStorage.setItem(KEY, JSON.stringify({ version: 1, facts } satisfies Stored));
    return true;
  } catch {
    return false;
  }
};

/** Forgets the case. False where the browser refuses. */
export const forgetCase = (): boolean => {
  try {
    localStorage.removeItem(KEY);
    return true;
  } catch {
    return false;
  }
};

/** Whether this browser keeps anything at all. */
export const canKeep = (): boolean => {
  try {
    localStorage.setItem(`${KEY}.test`, '');
    localStorage.removeItem(`${KEY}.test`);
    return true;
  } catch {
    return false;
  }
};
