/** Buckets for what has no natural parts: so many that one stays small, so few that all are quickly fetched. */
const SEE_BUCKETS = 24;
const PICTURE_BUCKETS = 24;

/** FNV-1a, to spread addresses evenly. */
const bucket = (text: string, buckets: number): number => {
  let sum = 0x811c9dc5;
  for (const letter of text) sum = Math.imul(sum ^ letter.charCodeAt(0), 0x01000193) >>> 0;
  return sum % buckets;
};

/**
 * The pack that an address of the site lies in, told from the address alone. `path` is relative to the site's
 * folder, the query cut off; a page ends in a slash. An edit changes few packs, so a phone fetches little again.
 */
export const packKey = (path: string): string => {
  const [top = '', second = ''] = path.split('/');
  if (top === 'boards') return `pictures-${bucket(path, PICTURE_BUCKETS)}`;
  if (top === 'see' && second) return `see-${bucket(path, SEE_BUCKETS)}`;
  if (top === 'defects' && second) return `defects-${second}`;
  if ((top === 'remedies' || top === 'sources' || top === 'learn') && second) return `${top}-${second[0]}`;
  if (top === 'r') return 'r';
  if (top === 'data' && /^(halfdry|schema)\.json$/.test(second)) return 'data';
  return 'core';
};

/** Whether a pack may come after the words: pages work without it. */
export const comesLater = (key: string): boolean => key.startsWith('pictures-') || key === 'data';
