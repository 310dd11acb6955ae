/** Same seed, same order: Marsaglia's xorshift on 32 bits (Journal of Statistical Software 8(14), 2003). */
export const shuffled = <T>(list: readonly T[], seed: number): T[] => {
  let state = seed >>> 0 || 1;
  const next = (below: number) => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    state >>>= 0;
    return state % below;
  };
  const out = [...list];
  for (let last = out.length - 1; last > 0; last -= 1) {
    const other = next(last + 1);
    [out[last], out[other]] = [out[other] as T, out[last] as T];
  }
  return out;
};
