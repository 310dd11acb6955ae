import type { Hazard } from './model/hazard.ts';
import type { EntryKind } from './model/kinds.ts';
import type { UnknownName, Unreadable } from './model/knowledge.ts';
import type { Weight } from './prove/needs.ts';

/** Where an author has to look. Lines count from 1. */
type Where = { readonly file: string; readonly line: number };

/** What can be wrong with content, as data; `say` turns it into a sentence. Codes are permanent. */
export type Fault =
  | Unreadable
  | { code: 'bad-id'; id: string }
  | { code: 'unknown-key'; key: string; nearest: string | undefined; allowed: readonly string[] }
  | { code: 'missing-key'; key: string; about: string | undefined }
  /** `what` stands at the path `at`, and the author is to do what `wants` says. */
  | { code: 'bad-value'; at: readonly PropertyKey[]; what: string; wants: string }
  | { code: 'bad-name'; name: string; nearest: string | undefined; wants: string }
  | { code: 'bad-branch'; keys: readonly string[] }
  | { code: 'dead-link'; kind: EntryKind; id: string; nearest: string | undefined }
  | UnknownName
  | { code: 'left-over'; text: string }
  | { code: 'still-there'; kind: EntryKind; id: string }
  | { code: 'near-name'; kind: EntryKind; id: string; other: string }
  | {
      code: 'bad-choice';
      at: readonly PropertyKey[];
      value: string;
      nearest: string | undefined;
      allowed: readonly string[];
    }
  | { code: 'unused-name'; what: string; name: string; nearest: string | undefined }
  | { code: 'retired-link'; kind: EntryKind; id: string; now: string }
  | { code: 'no-source'; says: string; grade: string }
  | { code: 'unknown-fact'; fact: string; nearest: string | undefined }
  | {
      code: 'bad-fact-value';
      fact: string;
      value: string;
      nearest: string | undefined;
      allowed: readonly string[];
    }
  | { code: 'see-cycle'; path: readonly string[] }
  | { code: 'asked-twice'; question: string; answer: string }
  | { code: 'known-already'; question: string; answer: string }
  | { code: 'same-both-ways'; question: string }
  | { code: 'orphan'; kind: EntryKind; id: string }
  | { code: 'look-alike-same'; defect: string; other: string }
  | { code: 'touches-setting'; stage: string; doing: string; allowed: readonly string[] }
  | { code: 'touch-ordered'; order: string; where: string }
  /** `days`: the longer time that is said; undefined where the stage to look at again is here already. */
  | { code: 'times-differ'; stage: string; again: string; days: string | undefined }
  | { code: 'step-order'; step: string; what: string; mend: string }
  | {
      code: 'against-told';
      step: string;
      fact: string;
      told: readonly string[];
      why: string;
      mend: string;
    }
  | { code: 'no-caution'; of: 'step' | 'lesson'; step: string; hazard: Hazard; lacks: Weight; in: string }
  | {
      code: 'hazard-untold';
      of: 'step' | 'act' | 'if-not';
      step: string;
      hazards: readonly Hazard[];
      word: string;
    }
  | { code: 'comes-off-untold'; step: string; word: string }
  | { code: 'look-lays'; step: string; field: string; word: string }
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
  | {
      code: 'size-differs';
      said: string;
      in: 'looks' | 'alt';
      field: string;
      drawn: readonly [number, number];
    }
  | { code: 'against-the-trade'; what: string; mend: string }
  | { code: 'sign-differs'; by: 'families'; question: string; sign: string; tell: string }
  | { code: 'sign-differs'; by: 'handover'; question: string; sign: string; to: string; answer: string }
  | {
      code: 'sign-differs';
      by: 'others';
      question: string;
      sign: string;
      why: 'alone' | 'asked' | 'words';
      ask: string;
    }
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
