const SENTENCES = new Intl.Segmenter('en', { granularity: 'sentence' });

/** The sentences of a text, one after another. */
export const sentencesOf = (text: string): readonly string[] =>
  [...SENTENCES.segment(text)].map(({ segment }) => segment.trim());

/** What forbids is marked: a hurried eye must not miss it. */
export const forbids = (sentence: string): boolean =>
  /^(?:Never|No|Not|Nothing|Nobody|Do not|Don’t|Keep out)\b/.test(sentence);
