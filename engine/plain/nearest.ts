/** Edits (insert, delete, replace, swap neighbors) that turn `a` into `b`. */
const distance = (a: string, b: string): number => {
  const rows: number[][] = [Array.from({ length: b.length + 1 }, (_, j) => j)];
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const cost = a[i - 1] === b[j - 1] ? 0 : 1;
      let best = Math.min(
        (rows[i - 1]?.[j] ?? 0) + 1,
        (row[j - 1] ?? 0) + 1,
        (rows[i - 1]?.[j - 1] ?? 0) + cost,
      );
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        best = Math.min(best, (rows[i - 2]?.[j - 2] ?? 0) + 1);
      row.push(best);
    }
    rows.push(row);
  }
  return rows[a.length]?.[b.length] ?? 0;
};

/**
 * The known name that was probably meant, or undefined where none is within a third of its length, or where several go on
 * where it ends: `mostly` is neither mostly-yes nor mostly-no.
 */
export const nearest = (name: string, names: Iterable<string>): string | undefined => {
  const known = [...names];
  if (known.filter((one) => one.startsWith(`${name}-`)).length > 1) return undefined;
  let best: { name: string; edits: number } | undefined;
  for (const candidate of known) {
    const edits = distance(name, candidate);
    if (edits <= Math.max(2, candidate.length / 3) && (!best || edits < best.edits))
      best = { name: candidate, edits };
  }
  return best?.name;
};

/** The words of an id, without the ending that the same word has elsewhere. */
export const wordsOf = (id: string): ReadonlySet<string> =>
  new Set(
    id
      .split('-')
      .filter((word) => word.length > 2)
      .map((word) => word.replace(/(?:ing|ed|es|e|s)$/, '')),
  );

/**
 * The known id that was probably meant: by its letters, else by its words, in whatever order. At least two words are
 * shared, and of several the one that has the fewest others.
 */
export const nearestId = (id: string, known: Iterable<string>): string | undefined => {
  const ids = [...known];
  const spelled = nearest(id, ids);
  if (spelled !== undefined) return spelled;
  const own = wordsOf(id);
  let best: { id: string; likeness: number } | undefined;
  for (const candidate of ids) {
    const words = wordsOf(candidate);
    const common = [...own].filter((word) => words.has(word)).length;
    const likeness = common / (own.size + words.size - common);
    if (common >= 2 && (!best || likeness > best.likeness)) best = { id: candidate, likeness };
  }
  return best?.id;
};
