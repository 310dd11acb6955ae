import type { ImportRow } from '#engine/jobs.ts';
import { plainId } from '../../shared/plain-id.ts';
import { sayDate } from '../../shared/say-date.ts';

const KINDS: Readonly<Record<ImportRow['kind'], string>> = {
  new: 'new here',
  same: 'the same as here',
  'theirs-newer': 'newer in the file',
  'mine-newer': 'newer here; stays as it is',
  'both-changed': 'changed on both sides; both are put together',
  'too-large': 'too much on both sides together; stays as it is',
  'gone-here': 'you took it away here',
  goes: 'taken away there',
  kept: 'taken away there',
};

const FIELDS: Readonly<Record<string, string>> = {
  kind: 'what it is',
  base: 'what lies below',
  baseLaidAt: 'when the base was laid',
  tone: 'what shows through',
  age: 'the older paint',
  product: 'the top coat',
  label: 'the can',
  parts: 'the sizes',
  trials: 'what it will meet',
  finishedAt: 'the last coat',
  handedOverAt: 'the hand-over',
  night: 'the nights',
};

type Counts = ImportRow['gains'];
const counted = (counts: Counts, say: (count: number, what: string) => string): readonly string[] =>
  Object.entries(counts).flatMap(([list, count]) =>
    count ? [say(count, count === 1 ? list.slice(0, -1) : list)] : [],
  );

const changesOf = ({ kind, gains, losses, changes, withheld, fields }: ImportRow): string =>
  kind === 'new'
    ? ''
    : [
        ...counted(gains, (count, what) => `${count} more ${what}`),
        ...counted(
          losses,
          (count, what) => `${count} ${what} taken off there ${count === 1 ? 'goes' : 'go'} here too`,
        ),
        ...counted(changes, (count, what) => `${count} ${what} corrected there`),
        ...counted(
          withheld,
          (count, what) => `${count} ${what} that you took off ${count === 1 ? 'stays' : 'stay'} off`,
        ),
        ...(fields.length
          ? [`changed: ${fields.map((field) => FIELDS[field] ?? plainId(field)).join(', ')}`]
          : []),
      ].join('; ');

/** What would become of one card, in words. */
export const sayRow = (row: ImportRow): string => {
  const on = row.goneAt === undefined ? '' : `, ${sayDate(row.goneAt)}`;
  if (row.kind === 'gone-here')
    return `${KINDS[row.kind]}${on}, and in the file it has not changed since; stays away`;
  if (row.kind === 'goes') return `${KINDS[row.kind]}${on}, and here it has not changed since; goes here too`;
  if (row.kind === 'kept') return `${KINDS[row.kind]}${on}, but you changed it here since; stays`;
  const more = row.kind === 'too-large' || row.kind === 'same' ? '' : changesOf(row);
  return `${KINDS[row.kind]}${more && ` (${more})`}`;
};
