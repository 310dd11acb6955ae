/** The words of a text in lower case; an apostrophe is dropped (`won't` is `wont`), accents too. */
export const wordsOf = (text: string): string[] =>
  text
    .normalize('NFD')
    .replace(/[\u0300-\u036f'’‘`´]/g, '')
    .toLowerCase()
    .match(/[a-z0-9]+/g) ?? [];
