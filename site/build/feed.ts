import type { Knowledge } from '#engine/index.ts';
import { defectUrl, FEED, HOME, remedyUrl } from '../shared/urls.ts';

const SHOWN = 60;

/** A change that a page tells of. The date is a day: YYYY-MM-DD. */
export type FeedEntry = {
  readonly name: string;
  readonly url: string;
  readonly on: string;
  readonly says: string;
};

/** The latest changes of flaws and repairs, newest first; those of one day in the order of their addresses. */
export const feedEntries = (known: Knowledge): readonly FeedEntry[] =>
  [
    ...known.defects.map(({ id, name, changes }) => ({ name, changes, url: defectUrl(id) })),
    ...known.remedies.map(({ id, name, changes }) => ({ name, changes, url: remedyUrl(id) })),
  ]
    .flatMap(({ name, changes, url }) =>
      changes.map(({ on, what, why }) => ({ name, url, on, says: `${what} ${why}` })),
    )
    .sort((a, b) => (a.on === b.on ? (a.url < b.url ? -1 : 1) : a.on < b.on ? 1 : -1))
    .slice(0, SHOWN);

const escaped = (text: string): string => text.replace(/[&<>"]/g, (sign) => `&#${sign.charCodeAt(0)};`);

/** The changes as an Atom feed. Days have no hour, so noon stands for it. */
export const atom = (entries: readonly FeedEntry[], absolute: (path: string) => string): string => {
  const noon = (day: string) => `${day}T12:00:00Z`;
  const entry = ({ name, url, on, says }: FeedEntry, index: number) => {
    const earlier = entries.slice(index + 1).filter((other) => other.url === url && other.on === on).length;
    return [
      '<entry>',
      `<id>${absolute(url)}#changed-${on}${earlier ? `-${earlier}` : ''}</id>`,
      `<title>${escaped(name)}</title>`,
      `<link href="${absolute(url)}"/>`,
      `<updated>${noon(on)}</updated>`,
      `<summary>${escaped(says)}</summary>`,
      '</entry>',
    ].join('');
  };
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    '<feed xmlns="http://www.w3.org/2005/Atom" xml:lang="en-US">',
    '<title>Halfdry: what changed</title>',
    `<id>${absolute(HOME)}</id>`,
    `<link href="${absolute(HOME)}"/>`,
    `<link rel="self" href="${absolute(FEED)}"/>`,
    '<author><name>Halfdry</name></author>',
    `<updated>${noon(entries[0]?.on ?? '1970-01-01')}</updated>`,
    ...entries.map(entry),
    '</feed>',
    '',
  ].join('\n');
};
