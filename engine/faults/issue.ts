import type { Hazard } from '../model/hazard.ts';
import type { EntryKind } from '../model/kinds.ts';
import type { UnknownName, Unreadable } from '../model/knowledge.ts';

/** What a rule is to a step: a stop before all else, a caution on the step, a note on the sheet, a limit in numbers. */
export type Weight = 'stop' | 'care' | 'note' | 'limit';

type Named = { readonly id: string; readonly name: string };
/** What an author can begin with where a caution is lacking. */
export type NearRules = {
  /** A rule that warns of the same, and what keeps it from doing so here. */
  readonly rule: { readonly id: string; readonly only: string } | undefined;
  /** A rule of the same weight to write one after. */
  readonly like: string | undefined;
};

/** Where an author has to look. Lines count from 1. */
type Where = { readonly file: string; readonly line: number };

/** What can be wrong with content, as data; `say` turns it into a sentence. Codes are permanent. */
export type Fault =
  | Unreadable
  | { code: 'bad-id'; id: string }
  | { code: 'unknown-key'; key: string; nearest: string | undefined; allowed: readonly string[] }
  /** `write`: the line that is to be added, where that is known. */
  | { code: 'missing-key'; key: string; about: string | undefined; write?: string }
  /** `what` stands at the path `at`, and the author is to do what `wants` says. */
  | { code: 'bad-value'; at: readonly PropertyKey[]; what: string; wants: string }
  | { code: 'bad-name'; name: string; nearest: string | undefined; wants: string }
  | { code: 'bad-branch'; keys: readonly string[] }
  /** `title`: of the nearest, where its name tells nothing of it. */
  | {
      code: 'dead-link';
      kind: EntryKind;
      id: string;
      nearest: string | undefined;
      title?: string | undefined;
    }
  | UnknownName
  | { code: 'left-over'; text: string }
  | { code: 'still-there'; kind: EntryKind; id: string }
  /** `isNew`: this one is not published yet, and the other is. */
  | { code: 'near-name'; kind: EntryKind; id: string; name: string; other: Named; isNew: boolean }
  | {
      code: 'bad-choice';
      at: readonly PropertyKey[];
      value: string;
      nearest: string | undefined;
      allowed: readonly string[];
    }
  | { code: 'unused-name'; what: 'kind of repair' | 'shared step'; name: string; nearest: string | undefined }
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
  /**
   * The order becomes a step of this remedy, one of some remedy, a repair in place of leave:, or what is not to be
   * done.
   */
  | { code: 'touch-ordered'; order: string; where: string; becomes: 'steps' | 'remedy' | 'leave' | 'not' }
  /** `days`: the longer time that is said; undefined where the stage to look at again is here already. */
  | {
      code: 'times-differ';
      again: string;
      /** The words on when to look again are the act's own. */
      isOwn: boolean;
      days: string | undefined;
      isOneLine: boolean;
    }
  | { code: 'step-order'; step: string; what: string; mend: string }
  | {
      code: 'against-told';
      step: string;
      fact: string;
      told: readonly string[];
      why: string;
      mend: string;
    }
  | ({
      code: 'no-caution';
      of: 'step' | 'lesson';
      step: string;
      hazard: Hazard;
      lacks: Weight;
      in: string;
    } & NearRules)
  | {
      code: 'hazard-untold';
      /** `laid`: oil or wax that the next step rubs in with paper. */
      of: 'step' | 'act' | 'if-not' | 'laid';
      step: string;
      isOneLine: boolean;
      hazards: readonly Hazard[];
      word: string;
    }
  | { code: 'comes-off-untold'; step: string; isMix: boolean; word: string; isOneLine: boolean }
  | { code: 'look-lays'; step: string; field: string; word: string }
  | { code: 'check-cuts'; text: string; word: string }
  | { code: 'check-touches'; text: string; word: string }
  | { code: 'over-limit'; what: string; percent: number; most: number; rule: string }
  | { code: 'sign-unasked'; question: string }
  | { code: 'needless-sign'; question: string; sign: string }
  /** `say`: some words that are understood. */
  | { code: 'mark-untold'; question: string; ask: string; say: readonly string[] }
  | { code: 'too-hard'; text: string; grade: number; most: number }
  /** By the signs, or by a look-alike; `other` is the flaw that comes first. */
  | { code: 'unreachable-defect'; by: 'signs' | 'look-alike'; defect: string; other: string | undefined }
  | { code: 'unreachable-defect'; by: 'name' | 'other name'; typed: string; found: readonly string[] }
  | { code: 'no-board'; kind: 'defect' | 'question'; id: string }
  | {
      code: 'off-the-board';
      kind: string;
      at: readonly [number, number];
      wide: number;
      high: number;
    }
  | {
      code: 'not-shown';
      kind: string;
      field: string;
      mm: number;
      wide: number;
      why: 'large' | 'fine';
      /** The most, or the least, that is shown. */
      bound: number;
      /** The least, or the most, that the board can be wide to show it; undefined where none can. */
      board: number | undefined;
    }
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
  // A code is permanent, its spelling too.
  | { code: 'misspelt'; word: string; nearest: string | undefined }
  | { code: 'other-word'; word: string; write: string }
  | { code: 'past-the-reader'; word: string }
  | { code: 'one-system'; figure: string; wants: string }
  | { code: 'figures-differ'; figure: string; beside: string; is: string }
  | { code: 'figure-unclaimed'; figure: string }
  | { code: 'bare-figure'; figure: string }
  | { code: 'needless-exception'; what: string; mend: string };

export type Issue = Where & Fault;

export type Result<T> = { ok: true; value: T } | { ok: false; issues: readonly [Issue, ...Issue[]] };
