/** Who is called once something has happened. */
export const WHOM = ['emergency', 'poison', 'vet'] as const;
export type Whom = (typeof WHOM)[number];

/**
 * The numbers that the words of rules name: those of US readers (`content/calls.yaml` has the rows of all countries, and
 * a phone sets its own before them; what a vet's line rests on is a claim of the rule `emergency`).
 */
export const NUMBERS: Readonly<Record<Whom, string>> = {
  emergency: '911',
  poison: '1-800-222-1222',
  vet: '1-888-426-4435',
};

/** Those whose number stands in a text. */
export const numbersIn = (text: string): readonly Whom[] =>
  WHOM.filter((whom) => new RegExp(`(?<![\\d-])${NUMBERS[whom]}(?![\\d-])`).test(text));
