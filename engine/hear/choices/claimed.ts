import type { Match } from '../words/match.ts';

/** Whether no other word stands between those of a phrase. */
const isTight = ({ from, to, size }: Match): boolean => to - from === size;

/** Phrases that tell a fact, the longer before those inside it: "oil based stain" is no oil. */
export const claimed = (matches: readonly Match[]): Match[] => {
  const telling = matches
    .filter(
      ({ kind, of }) =>
        kind === 'none' || kind === 'among' || (kind === 'fact' && of[0] !== 'stage' && of[0] !== 'overdue'),
    )
    .sort(
      (a, b) =>
        b.size - a.size ||
        Number(b.kind === 'none') - Number(a.kind === 'none') ||
        a.to - a.from - (b.to - b.from) ||
        a.from - b.from,
    );
  const kept: Match[] = [];
  for (const match of telling) {
    const covered = kept.some((other) => {
      if (other.from >= match.to || match.from >= other.to) return false;
      const inside = other.from <= match.from && match.to <= other.to;
      // "a water based stain" is one, though "a water stain" is a mark
      const isLooser = other.size === match.size && isTight(match) && !isTight(other);
      if (other.kind === 'none') return inside && other.size >= match.size && !isLooser;
      // "white oak table" is of white oak, and no white table
      if (other.of[0] === match.of[0] && other.of[1] !== match.of[1] && other.size === match.size)
        return isTight(other) && !isTight(match);
      if (other.size <= match.size) return false;
      // "satin nitrocellulose clear" leaves nothing open
      if (other.kind === 'among' && match.kind === 'fact' && other.to - other.from > other.size) return false;
      // "sprayed water based lacquer" is one kind, though two phrases end in it.
      return other.of[0] === match.of[0] || (inside && isLayer(other, match));
    });
    if (!covered) kept.push(match);
  }
  return kept.filter(({ kind }) => kind !== 'none');
};

/** What is said of the layer below is not said of the top coat. */
const isLayer = (longer: Match, match: Match): boolean =>
  // "dark wax" is no dark base
  (longer.of[0] === 'family' && match.of[0] === 'base-tone') ||
  // "antique white cabinets" are no antiques
  (longer.of[0] === 'base-tone' && /^(valuable|unknown)$/.test(match.of[1] ?? '')) ||
  (longer.of[0] === 'base' && (match.of[0] === 'family' || match.kind === 'among')) ||
  (longer.of[0] === 'family' && match.of[0] === 'base');
