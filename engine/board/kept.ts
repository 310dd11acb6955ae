/**
 * `make`, with its last few results kept by key: boards are drawn many at a time, and what lies under their flaw is
 * mostly the same. Only for results that nobody changes.
 */
export const kept = <A extends readonly unknown[], T>(
  keyOf: (...by: A) => string,
  make: (...by: A) => T,
  most = 6,
): ((...by: A) => T) => {
  const results = new Map<string, T>();
  return (...by) => {
    const key = keyOf(...by);
    const result = results.get(key) ?? make(...by);
    // Put back last, so that what was not asked for longest goes first.
    results.delete(key);
    results.set(key, result);
    const oldest = results.keys().next();
    if (results.size > most && !oldest.done) results.delete(oldest.value);
    return result;
  };
};
