import type { RuleEntry } from '#engine/index.ts';
import { ended } from '#engine/plain/text.ts';

type Props = { readonly rule: Pick<RuleEntry, 'kind' | 'title' | 'say'>; readonly lead?: string };

/** A rule in one line: a stop is told from a caution by its word and its color. */
export const Caution = ({ rule: { kind, title, say }, lead = '' }: Props) => (
  <p class={kind === 'stop' ? 'caution stop' : 'caution'}>
    <b>{`${kind === 'stop' ? 'Stop: ' : lead}${ended(title)} `}</b>
    {say}
  </p>
);
