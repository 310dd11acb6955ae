/** Characters that a short reply has at most. */
export const SHORT = 500;

/** Joins what fits into `most` characters, what comes first being kept first. Whole parts only, the last one always. */
export const fitted = (parts: readonly string[], last: string, most: number): string => {
  const kept: string[] = [];
  let length = last.length;
  for (const part of parts.filter(Boolean)) {
    if (length + part.length + 1 > most) continue;
    kept.push(part);
    length += part.length + 1;
  }
  return [...kept, last].filter(Boolean).join(' ');
};
