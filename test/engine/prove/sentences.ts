/** Invented steps and repairs to put a sentence into. */
export type Step = Record<string, unknown> & { kind: string; say: string };

export const step = (kind: string, say: string, more: object = {}): Step => ({ kind, say, ...more });

export const remedy = (steps: readonly Step[], more: object = {}) => ({
  id: 'mend',
  now: {},
  steps,
  prevent: [],
  'if-not': { say: 'Do it once more.' },
  ...more,
});
