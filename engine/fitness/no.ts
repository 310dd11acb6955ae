/** Why a coat must not be laid, or not yet. */
export type No = {
  readonly code:
    | 'rule'
    | 'use'
    | 'tool'
    | 'weather'
    | 'base'
    | 'film'
    | 'coat-below'
    | 'flaw'
    | 'hours'
    | 'drying';
  readonly says: string;
  readonly instead?: string;
  /** The rule that forbids it, by its id: its page leads on. */
  readonly rule?: string;
  /** From then on it would be a yes, epoch milliseconds. */
  readonly earliest?: number;
};
