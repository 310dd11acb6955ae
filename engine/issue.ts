import type { Hazard } from './model/hazard.ts';
import type { EntryKind } from './model/kinds.ts';
import type { UnknownName } from './model/knowledge.ts';
import type { StepKind } from './model/step.ts';
import type { Weight } from './prove/needs.ts';

/** Where an author has to look. Lines count from 1. */
type Where = { readonly file: string; readonly line: number };

/** What can be wrong with content, as data; `say` turns it into a sentence. Codes are permanent. */
export type Fault =
  | { code: 'bad-yaml'; message: string; mend?: string }
  | { code: 'no-front-matter' }
  | { code: 'bad-id'; id: string }
  | { code: 'unknown-key'; key: string; nearest: string | undefined; allowed: readonly string[] }
  | { code: 'missing-key'; key: string }
  | { code: 'bad-value'; at: string; message: string }
  | { code: 'bad-branch'; keys: readonly string[] }
  | { code: 'dead-link'; kind: EntryKind; id: string; nearest: string | undefined }
  | UnknownName
  | { code: 'left-over'; text: string }
  | { code: 'still-there'; kind: EntryKind; id: string }
  | { code: 'near-name'; kind: EntryKind; id: string; other: string }
  | { code: 'needs-quotes'; why: 'colon' | 'comma'; text: string }
  | { code: 'bad-choice'; at: string; value: string; nearest: string | undefined; allowed: readonly string[] }
  | { code: 'unused-name'; what: string; name: string }
  | { code: 'retired-link'; kind: EntryKind; id: string; now: string }
  | { code: 'no-source'; says: string; grade: string }
  | { code: 'unknown-fact'; fact: string; nearest: string | undefined }
  | { code: 'bad-fact-value'; fact: string; value: string; allowed: readonly string[] }
  | { code: 'see-cycle'; path: readonly string[] }
  | { code: 'asked-twice'; question: string }
  | { code: 'known-already'; question: string; answer: string }
  | { code: 'same-both-ways'; question: string }
  | { code: 'orphan'; kind: EntryKind; id: string }
  | { code: 'look-alike-same'; defect: string; other: string }
  | { code: 'touches-setting'; stage: string; doing: string; allowed: readonly string[] }
  | { code: 'touch-ordered'; order: string; where: string }
  | { code: 'times-differ'; stage: string; again: string }
  | { code: 'step-order'; step: string; needs: string }
  | { code: 'against-told'; step: string; told: string; why: string }
  | { code: 'no-caution'; step: string; hazard: Hazard; lacks: Weight; in: string }
  | { code: 'hazard-untold'; step: string; hazard: Hazard; word: string }
  | { code: 'comes-off-untold'; step: string; word: string }
  | { code: 'look-lays'; step: string; kind: StepKind; word: string }
  | { code: 'check-cuts'; text: string; word: string }
  | { code: 'check-touches'; text: string; word: string }
  | { code: 'over-limit'; what: string; percent: number; most: number; rule: string }
  | { code: 'sign-unasked'; question: string }
  | { code: 'needless-sign'; question: string; sign: string }
  | { code: 'mark-untold'; question: string; ask: string }
  | { code: 'too-hard'; text: string; grade: number; most: number }
  | { code: 'unreachable-defect'; defect: string; by: string }
  | { code: 'no-board'; kind: 'defect' | 'question'; id: string }
  | {
      code: 'off-the-board';
      kind: string;
      at: readonly [number, number];
      wide: number;
      high: number;
    }
  | { code: 'not-shown'; kind: string; field: string; mm: number; wide: number; why: 'large' | 'fine' }
  | { code: 'size-differs'; said: string; field: string; drawn: readonly [number, number] }
  | { code: 'against-the-trade'; what: string; mend: string }
  | { code: 'sign-differs'; question: string; sign: string; says: string }
  | { code: 'stray-file'; should: string }
  | { code: 'lost-address'; address: string; kind: EntryKind; id: string; nearest: string | undefined }
  | { code: 'word-twice'; word: string }
  | { code: 'misspelt'; word: string; nearest: string | undefined }
  | { code: 'other-word'; word: string; write: string }
  | { code: 'past-the-reader'; word: string }
  | { code: 'one-system'; figure: string; wants: string }
  | { code: 'figures-differ'; figure: string; beside: string; is: string }
  | { code: 'figure-unclaimed'; figure: string }
  | { code: 'bare-figure'; figure: string }
  | { code: 'needless-exception'; of: string };

export type Issue = Where & Fault;

export type Result<T> = { ok: true; value: T } | { ok: false; issues: readonly [Issue, ...Issue[]] };
