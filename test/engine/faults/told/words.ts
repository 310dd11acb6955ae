import { type Case, far, near } from './case.ts';

/** Faults of words and how they are found, each with what its sentence names. */
export const OF_WORDS: readonly Case[] = [
  [
    { code: 'too-hard', text: 'qtext', grade: 9.26, most: 7 },
    ['"qtext"', 'grade 9.3'],
    ['shorter', 'grade 7 at most'],
  ],
  [{ code: 'against-the-trade', what: 'qwhat', mend: 'write qmend' }, ['qwhat'], ['write qmend']],
  [{ code: 'word-twice', word: 'qword' }, ['"qword" stands twice'], ['remove one']],
  [
    { code: 'misspelt', word: 'qword', ...near },
    ['"qword"', 'dictionary'],
    ['"qnear"', 'content/house-style.yaml'],
  ],
  [
    { code: 'misspelt', word: 'qword', ...far },
    ['"qword"'],
    ['spell it otherwise', 'content/house-style.yaml'],
  ],
  [{ code: 'other-word', word: 'qword', write: 'qwrite' }, ['"qword"'], ['write "qwrite"']],
  [{ code: 'past-the-reader', word: 'qword' }, ['"qword"', 'reader'], ['you, your']],
  [
    { code: 'one-system', figure: 'qfig', wants: 'qwants' },
    ['"qfig"', 'one system of units'],
    ['"qfig (qwants)"'],
  ],
  [
    { code: 'figures-differ', figure: 'qfig', beside: 'qbeside', is: 'qis' },
    ['"qfig" and "qbeside"', 'not the same'],
    ['qfig is qis'],
  ],
  [{ code: 'figure-unclaimed', figure: 'qfig' }, ['no claim', '"qfig"'], ['add a claim']],
  [{ code: 'bare-figure', figure: 'qfig' }, ['"qfig"', 'without its unit'], ['write the unit']],
];
