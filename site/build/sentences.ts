const SENTENCES = new Intl.Segmenter('en', { granularity: 'sentence' });

/** The sentences of a text, one after another. */
export const sentencesOf = (text: string): readonly string[] =>
  [...SENTENCES.segment(text)].map(({ segment }) => segment.trim());
