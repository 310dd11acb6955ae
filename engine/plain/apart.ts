type Named = { readonly id: string; readonly name: string };

/** How many of these texts differ. */
const kinds = (texts: readonly string[]): number => new Set(texts).size;

/** Of the marks only those that tell these apart: the first that does alone, else one after another while each helps. */
const telling = <T>(items: readonly T[], marks: readonly ((item: T) => string)[]): readonly string[] => {
  const said = marks.map((mark) => items.map(mark));
  const alone = said.find((texts) => kinds(texts) === items.length);
  if (alone) return alone;
  let words = items.map(() => '');
  for (const texts of said) {
    const longer = words.map((before, at) => [before, texts[at]].filter(Boolean).join(', '));
    if (kinds(longer) > kinds(words)) words = longer;
  }
  return words;
};

/**
 * What is said beside a name that others have, too, so that they are told apart; nothing for a name that stands once.
 * Whoever no mark tells apart gets a number, in the order given.
 */
export const toldApart = <T extends Named>(
  items: readonly T[],
  marks: readonly ((item: T) => string)[],
): ReadonlyMap<string, string> => {
  const byName = new Map<string, T[]>();
  for (const item of items) {
    const name = item.name.trim().toLowerCase();
    byName.set(name, [...(byName.get(name) ?? []), item]);
  }
  return new Map(
    [...byName.values()]
      .filter((group) => group.length > 1)
      .flatMap((group) => {
        const words = telling(group, marks);
        return group.map((item, at): [string, string] => {
          const mine = words[at] ?? '';
          const same = words.filter((one) => one === mine).length > 1;
          const nth = words.slice(0, at + 1).filter((one) => one === mine).length;
          return [item.id, same ? [mine, `number ${nth}`].filter(Boolean).join(', ') : mine];
        });
      }),
  );
};
