/** What is told of sentences and figures. */

import { maybe, type Say } from './told.ts';

export const OF_WORDS: Say<
  | 'too-hard'
  | 'word-twice'
  | 'misspelt'
  | 'other-word'
  | 'past-the-reader'
  | 'one-system'
  | 'figures-differ'
  | 'figure-unclaimed'
  | 'bare-figure'
  | 'against-the-trade'
> = {
  'too-hard': (issue) => [
    `"${issue.text}" reads at US grade ${issue.grade.toFixed(1)}`,
    `use shorter words and sentences (grade ${issue.most} at most)`,
  ],
  'word-twice': (issue) => [`"${issue.word}" stands twice in a row`, 'remove one of them'],
  misspelt: (issue) => [
    `"${issue.word}" is in no American dictionary`,
    `${maybe(issue.nearest) || 'spell it otherwise.'} If it is right as it stands, add it after spelled: in content/house-style.yaml`,
  ],
  'other-word': (issue) => [`this site does not write "${issue.word}"`, `write "${issue.write}"`],
  'past-the-reader': (issue) => [`"${issue.word}" speaks past the reader`, 'speak to the reader: you, your'],
  'one-system': (issue) => [
    `"${issue.figure}" stands in one system of units alone`,
    `write "${issue.figure} (${issue.wants})"`,
  ],
  'figures-differ': (issue) => [
    `"${issue.figure}" and "${issue.beside}" are not the same`,
    `${issue.figure} is ${issue.is}; mend the one that is wrong`,
  ],
  'figure-unclaimed': (issue) => [
    `no claim holds the figure "${issue.figure}"`,
    'add a claim that says it and how we know it, or use a figure that one has',
  ],
  'bare-figure': (issue) => [`"${issue.figure}" holds a figure without its unit`, 'write the unit behind it'],
  'against-the-trade': (issue) => [issue.what, issue.mend],
};
