import type { LineOf, RawEntry, UnknownName } from '../model/knowledge.ts';
import { nearest, nearestId } from '../plain/nearest.ts';
import { isRecord, type JsonRecord } from '../plain/record.ts';

/** What stands once for many files, as read: nothing is checked yet. */
export type Shared = {
  /** Kind of repair → stage → act (content/acts.yaml). */
  readonly acts: Readonly<Record<string, unknown>>;
  /** Name → steps (content/steps.yaml). */
  readonly steps: Readonly<Record<string, unknown>>;
};

type LocatedFault = { path: PropertyKey[]; fault: UnknownName };

/** The kind of repair whose acts are taken where a remedy names none. */
const USUAL_KIND = 'film';

/** `act` with what it does not say taken from `usual`; one that says what to do is whole. */
const completed = (act: unknown, usual: unknown): unknown => {
  if (act === undefined) return usual;
  if (!isRecord(act) || act['do'] !== undefined || !isRecord(usual)) return act;
  // A mark belongs to the words that it was written for. What is written stays in its order: a text that a comma cut in
  // two is told by the field before it.
  const more = Object.entries(usual).filter(
    ([field]) => !(field in act) && (field !== 'does' || act['say'] === undefined),
  );
  return { ...act, ...Object.fromEntries(more) };
};

/**
 * An act that says what to `do` is whole. One without takes what it does not say from the usual one, and one that is left
 * out is the usual one. `cured` is like `recoatable` unless it is said.
 */
const withActs = (now: JsonRecord, acts: Shared['acts'], told: LocatedFault[]): JsonRecord => {
  const { as = USUAL_KIND, ...own } = now;
  const kind = String(as);
  const meant = kind in acts ? kind : nearest(kind, Object.keys(acts));
  if (meant !== kind && 'as' in now)
    told.push({
      path: ['now', 'as'],
      fault: {
        code: 'unknown-name',
        what: 'kind of repair',
        name: kind,
        nearest: meant,
        in: 'content/acts.yaml',
      },
    });
  // Filled in by what was most likely meant, or each stage would be told as missing too.
  const usual = acts[meant ?? kind];
  if (!isRecord(usual)) return own;
  const stages = Object.fromEntries(
    Object.entries(usual).map(([stage, act]) => [stage, completed(own[stage], act)]),
  );
  const all: JsonRecord = { ...own, ...stages };
  return { ...all, cured: completed(all['cured'], all['recoatable']) };
};

/** The steps with the shared ones in place of their names, and for each the place where it stands in the file. */
const withSteps = (
  steps: readonly unknown[],
  shared: Shared['steps'],
  told: LocatedFault[],
): { steps: unknown[]; from: number[] } => {
  const filled: unknown[] = [];
  const from: number[] = [];
  for (const [index, step] of steps.entries()) {
    const common = typeof step === 'string' ? shared[step] : [step];
    if (typeof step === 'string' && common === undefined)
      told.push({
        path: ['steps', index],
        fault: {
          code: 'unknown-name',
          what: 'shared step',
          name: step,
          nearest: nearestId(step, Object.keys(shared)),
          in: 'content/steps.yaml',
        },
      });
    for (const one of Array.isArray(common) ? common : []) {
      filled.push(one);
      from.push(index);
    }
  }
  return { steps: filled, from };
};

/** Where a path of the filled steps stands in the file. */
const placedBy =
  (from: readonly number[]) =>
  (path: readonly PropertyKey[]): readonly PropertyKey[] => {
    const [top, index, ...rest] = path;
    return typeof index === 'number' && top === 'steps' ? [top, from[index] ?? index, ...rest] : path;
  };

/** A claim that names its source and no grade is published. */
const withGrades = (claims: unknown): unknown =>
  Array.isArray(claims)
    ? claims.map((claim: unknown) => {
        if (!isRecord(claim) || claim['grade'] !== undefined || claim['source'] === undefined) return claim;
        return { ...claim, grade: 'published' };
      })
    : claims;

/** The oldest change, where it says nothing, is the first version of a new page. */
const withFirstVersion = (changes: unknown): unknown => {
  if (!Array.isArray(changes)) return changes;
  const days = changes.map((change: unknown) => (isRecord(change) ? String(change['on']) : ''));
  const first = days.indexOf([...days].sort()[0] ?? '');
  return changes.map((change: unknown, index) =>
    isRecord(change) && index === first && change['what'] === undefined && change['why'] === undefined
      ? { on: change['on'], what: 'First version.', why: 'New page.' }
      : change,
  );
};

const filledRemedy = (entry: RawEntry, data: JsonRecord, shared: Shared): RawEntry => {
  const told: LocatedFault[] = [];
  const { now, steps } = data;
  const own = Array.isArray(steps) ? withSteps(steps, shared.steps, told) : undefined;
  const inFile = own && placedBy(own.from);
  return {
    ...entry,
    data: {
      ...data,
      ...(isRecord(now) && { now: withActs(now, shared.acts, told) }),
      ...(own && { steps: own.steps }),
    },
    ...(inFile && { inFile, lineOf: ((path, atKey) => entry.lineOf(inFile(path), atKey)) satisfies LineOf }),
    ...(told.length && { told: told.map(({ path, fault }) => ({ line: entry.lineOf(path), fault })) }),
  };
};

/** Questions asked of every flaw, with what those show that say nothing of it. */
const askedOfAll = (entries: readonly RawEntry[]): [string, unknown][] =>
  entries.flatMap(({ kind, id, data }): [string, unknown][] =>
    kind === 'question' && isRecord(data) && data['every-flaw'] !== undefined
      ? [[id, data['every-flaw']]]
      : [],
  );

/** Of each flaw, those that name it as a look-alike. */
const namedBy = (entries: readonly RawEntry[]): ReadonlyMap<string, readonly string[]> => {
  const names = new Map<string, string[]>();
  for (const { kind, id, data } of entries) {
    const alike = kind === 'defect' && isRecord(data) ? data['look-alikes'] : undefined;
    for (const other of Array.isArray(alike) ? alike : [])
      names.set(other, [...(names.get(other) ?? []), id]);
  }
  return names;
};

/**
 * Entries with all that stands once for many: signs that a question settles for every flaw, look-alikes both ways, usual
 * acts, shared steps, grades and first versions. What is not there to be filled stays as it is, for `link` to tell.
 */
export const filled = (entries: readonly RawEntry[], shared: Shared): RawEntry[] => {
  const asked = askedOfAll(entries);
  const named = namedBy(entries);
  return entries.map((entry) => {
    if (!isRecord(entry.data)) return entry;
    const data: JsonRecord = {
      ...entry.data,
      ...('claims' in entry.data && { claims: withGrades(entry.data['claims']) }),
      ...('changes' in entry.data && { changes: withFirstVersion(entry.data['changes']) }),
    };
    if (entry.kind === 'remedy') return filledRemedy(entry, data, shared);
    if (entry.kind !== 'defect') return { ...entry, data };
    const { signs, 'look-alikes': alike } = data;
    const mirrored = (named.get(entry.id) ?? []).filter((id) => Array.isArray(alike) && !alike.includes(id));
    return {
      ...entry,
      data: {
        ...data,
        ...(isRecord(signs) && {
          signs: { ...signs, ...Object.fromEntries(asked.filter(([id]) => !(id in signs))) },
        }),
        ...(Array.isArray(alike) && { 'look-alikes': [...alike, ...mirrored] }),
      },
    };
  });
};
