/** Numbers that look random and are the same each time: a linear congruence (Numerical Recipes, 2nd ed., 7.1). */
export const chanceFrom = (seed: number) => {
  let state = seed;
  const chance = (): number => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
  const pick = <T>(from: readonly T[]): T => from[Math.floor(chance() * from.length)] as T;
  const shuffled = <T>(from: readonly T[]): T[] =>
    from
      .map((one) => ({ one, at: chance() }))
      .sort((a, b) => a.at - b.at)
      .map(({ one }) => one);
  return { chance, pick, shuffled };
};
