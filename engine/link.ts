import { factsIn } from './case/condition.ts';
import type { Fault, Issue, Result } from './faults/issue.ts';
import { faultOfGround, faultOfReference, type There, thereIn } from './faults/references.ts';
import { schemaFaults } from './faults/schema-faults.ts';
import { type Knowledge, knowledgeOf } from './knowledge/knowledge.ts';
import { isAsk, visits } from './knowledge/tree.ts';
import { wetClaim } from './knowledge/wet-claim.ts';
import type { ConditionInput } from './model/condition.ts';
import { FACTS } from './model/facts.ts';
import { ID_PATTERN, SCHEMAS } from './model/index.ts';
import type { EntryKind } from './model/kinds.ts';
import type { AnyEntry, Entry, RawEntry } from './model/knowledge.ts';
import type { Retired } from './model/retired.ts';
import type { Claim } from './model/source.ts';
import { entryOf } from './plain/entry-of.ts';
import { nearest } from './plain/nearest.ts';

export type { Retired } from './model/retired.ts';

type Report = (entry: AnyEntry, path: readonly PropertyKey[], fault: Fault) => void;
type Reference = { kind: EntryKind; id: string; path: readonly PropertyKey[] };

/**
 * Raw entries → linked knowledge, or every fault of shape, id, link, fact and source at once.
 * Faults are those of authors; nothing throws.
 */
export const link = (raw: readonly RawEntry[], retired: Retired = {}): Result<Knowledge> => {
  const issues: Issue[] = [];
  const entries = raw.flatMap((entry) => shape(entry, issues));
  const there = thereIn(raw, retired);
  const report: Report = (entry, path, fault) =>
    issues.push({ file: entry.file, line: entry.lineOf(path), ...fault } as Issue);
  for (const entry of entries) {
    for (const { kind, id, path } of references(entry)) {
      const fault = faultOfReference(there, kind, id);
      if (fault) report(entry, path, fault);
    }
    for (const { condition, path } of conditions(entry)) checkFacts(entry, condition, path, there, report);
    for (const { claim, path } of claims(entry)) {
      const fault = faultOfGround(claim.says, claim);
      if (fault) report(entry, path, fault);
    }
  }
  for (const cycle of handoverCycles(entries)) issues.push(cycle);

  issues.sort((a, b) => (a.file === b.file ? a.line - b.line : a.file < b.file ? -1 : 1));
  const [first, ...rest] = issues;
  return first ? { ok: false, issues: [first, ...rest] } : { ok: true, value: knowledgeOf(entries, retired) };
};

const shape = (raw: RawEntry, issues: Issue[]): AnyEntry[] => {
  const tell = (line: number, fault: Fault) => issues.push({ file: raw.file, line, ...fault } as Issue);
  if (!ID_PATTERN.test(raw.id)) tell(1, { code: 'bad-id', id: raw.id });
  if (raw.broken) {
    tell(raw.broken.line, raw.broken.fault);
    return [];
  }
  for (const { line, fault } of raw.told ?? []) tell(line, fault);
  if (typeof raw.data !== 'object' || raw.data === null) {
    tell(1, { code: 'no-front-matter', why: 'empty' });
    return [];
  }
  const schema = SCHEMAS[raw.kind];
  const parsed = schema.safeParse(raw.data);
  if (!parsed.success) {
    for (const { path, atKey, fault } of schemaFaults(parsed.error, raw.data, schema))
      tell(
        raw.lineOf(path, atKey),
        fault.code === 'bad-value' || fault.code === 'bad-choice'
          ? { ...fault, at: raw.inFile?.(fault.at) ?? fault.at }
          : fault,
      );
    return [];
  }
  return [{ ...parsed.data, kindOf: raw.kind, id: raw.id, file: raw.file, lineOf: raw.lineOf } as AnyEntry];
};

const isKind = <K extends EntryKind>(entry: AnyEntry, kind: K): entry is Extract<AnyEntry, Entry<K>> =>
  entry.kindOf === kind;

function* references(entry: AnyEntry): Generator<Reference> {
  if (isKind(entry, 'defect')) {
    for (const question of Object.keys(entry.signs))
      yield { kind: 'question', id: question, path: ['signs', question] };
    for (const [index, id] of entry['look-alikes'].entries())
      yield { kind: 'defect', id, path: ['look-alikes', index] };
    for (const { branch, path } of visits(entry.tree)) {
      if (isAsk(branch)) yield { kind: 'question', id: branch.ask, path: ['tree', ...path, 'ask'] };
      else if ('remedy' in branch)
        yield { kind: 'remedy', id: branch.remedy, path: ['tree', ...path, 'remedy'] };
      else if ('defect' in branch)
        yield { kind: 'defect', id: branch.defect, path: ['tree', ...path, 'defect'] };
    }
  }
  if (isKind(entry, 'remedy') && entry['if-not'].remedy)
    yield { kind: 'remedy', id: entry['if-not'].remedy, path: ['if-not', 'remedy'] };
  if (isKind(entry, 'lesson')) {
    for (const [index, id] of entry.defects.entries()) yield { kind: 'defect', id, path: ['defects', index] };
    for (const [index, id] of entry.remedies.entries())
      yield { kind: 'remedy', id, path: ['remedies', index] };
    for (const [index, id] of entry.terms.entries()) yield { kind: 'term', id, path: ['terms', index] };
    for (const [index, id] of entry.rules.entries()) yield { kind: 'rule', id, path: ['rules', index] };
    for (const [index, { defect }] of entry.boards.entries())
      yield { kind: 'defect', id: defect, path: ['boards', index, 'defect'] };
    for (const [index, { flaw }] of entry.items.entries())
      yield { kind: 'defect', id: flaw, path: ['items', index, 'flaw'] };
  }
  for (const { claim, path } of claims(entry))
    if (claim.source) yield { kind: 'source', id: claim.source, path: [...path, 'source'] };
}

function* conditions(entry: AnyEntry): Generator<{ condition: ConditionInput; path: PropertyKey[] }> {
  if (isKind(entry, 'question'))
    for (const [index, rule] of entry.known.entries())
      yield { condition: rule.when, path: ['known', index, 'when'] };
  if (isKind(entry, 'rule') && entry.when) yield { condition: entry.when, path: ['when'] };
  if (isKind(entry, 'remedy'))
    for (const [index, step] of entry.steps.entries())
      for (const key of ['when', 'except'] as const)
        if (step[key]) yield { condition: step[key], path: ['steps', index, key] };
}

function* claims(entry: AnyEntry): Generator<{ claim: Claim; path: PropertyKey[] }> {
  const list: readonly Claim[] = 'claims' in entry ? entry.claims : [];
  for (const [index, claim] of list.entries()) yield { claim, path: ['claims', index] };
  if (isKind(entry, 'defect')) yield { claim: wetClaim(entry), path: ['while-wet-rests-on'] };
}

const checkFacts = (
  entry: AnyEntry,
  condition: ConditionInput,
  prefix: PropertyKey[],
  there: There,
  report: Report,
) => {
  const questions = there.idsOf('question');
  for (const { fact, values, path } of factsIn(condition)) {
    const shape = entryOf<{ readonly kind: string; readonly values?: readonly string[] }>(FACTS, fact);
    const allowed = shape ? shape.values : questions.has(fact) ? ['yes', 'no'] : undefined;
    if (!shape && !questions.has(fact))
      report(entry, [...prefix, ...path], {
        code: 'unknown-fact',
        fact,
        nearest: nearest(fact, [...Object.keys(FACTS), ...questions]),
      });
    else
      for (const value of values)
        if (!allowed?.includes(value))
          report(entry, [...prefix, ...path], {
            code: 'bad-fact-value',
            fact,
            value,
            nearest: nearest(value, allowed ?? []),
            allowed: allowed ?? ['a number'],
          });
  }
};

/** Trees that hand over to each other in a circle would walk for ever. One issue per circle found. */
const handoverCycles = (entries: readonly AnyEntry[]): Issue[] => {
  const defects = new Map(
    entries.filter((entry) => isKind(entry, 'defect')).map((entry) => [entry.id, entry]),
  );
  const issues: Issue[] = [];
  const done = new Set<string>();
  const follow = (id: string, trail: readonly string[]) => {
    const entry = defects.get(id);
    if (!entry || done.has(id)) return;
    for (const { branch, path } of visits(entry.tree)) {
      if (!('defect' in branch)) continue;
      const next: string = branch.defect;
      const start = [...trail, id].indexOf(next);
      if (start >= 0)
        issues.push({
          file: entry.file,
          line: entry.lineOf(['tree', ...path, 'defect']),
          code: 'see-cycle',
          path: [...[...trail, id].slice(start), next],
        });
      else follow(next, [...trail, id]);
    }
    done.add(id);
  };
  for (const id of defects.keys()) follow(id, []);
  return issues;
};
