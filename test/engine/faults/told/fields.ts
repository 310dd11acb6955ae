import type { Fault } from '#engine/faults/issue.ts';
import { type Case, far, near } from './case.ts';

/** Faults of fields and what stands in them, each with what its sentence names. */
export const OF_FIELDS: readonly Case[] = [
  [{ code: 'bad-id', id: 'Run_And Sag' }, ['"Run_And Sag"'], ['run-and-sag.mdx']],
  [{ code: 'bad-id', id: '__' }, ['"__"'], ['new-name.mdx']],
  [{ code: 'bad-id', id: '-A--b-' }, ['"-A--b-"'], ['to a-b.mdx']],
  [
    { code: 'unknown-key', key: 'qkey', ...near, allowed: ['a1'] },
    ['no field', '"qkey"'],
    ['did you mean "qnear"?'],
  ],
  [{ code: 'unknown-key', key: 'qkey', ...far, allowed: ['a1', 'b2'] }, ['"qkey"'], ['one of a1, b2']],
  [{ code: 'unknown-key', key: 'qkey', ...far, allowed: [] }, ['"qkey"'], ['remove it']],
  [
    { code: 'missing-key', key: 'qkey', about: 'What it is. ', write: 'qkey: qq' },
    ['"qkey" is missing'],
    ['above', '---', 'qkey: qq'],
  ],
  [
    { code: 'missing-key', key: 'qkey', about: 'What it is.' },
    ['"qkey" is missing'],
    ['qkey: …', 'what it is'],
  ],
  [{ code: 'missing-key', key: 'qkey', about: undefined }, ['"qkey" is missing'], ['qkey: …']],
  [
    { code: 'bad-value', at: ['steps', 1, 'grit'], what: 'qwhat', wants: 'write qwants' },
    ['qwhat', 'after "grit:" in step 2'],
    ['write qwants'],
  ],
  [{ code: 'bad-name', name: 'qname', ...near, wants: 'write qw' }, ['"qname"'], ['did you mean "qnear"?']],
  [{ code: 'bad-name', name: 'qname', ...far, wants: 'write qw' }, ['"qname"'], ['write qw']],
  [
    { code: 'bad-branch', keys: ['ask', 'leave', 'yes'] },
    ['ask and leave and yes', 'one of ask, remedy, defect and leave'],
    ['keep one of ask and leave,'],
  ],
  [{ code: 'bad-branch', keys: ['yes'] }, ['holds yes,'], ['{ ask: …, yes: …, no: … }', '{ leave: … }']],
  [{ code: 'bad-branch', keys: [] }, ['branch', 'wanted here'], ['{ remedy: … }', '{ defect: … }']],
  [{ code: 'left-over', text: 'qtext' }, ['"qtext"', 'template'], ['your own words']],
  [
    { code: 'needs-quotes', why: 'colon', text: 'qtext', write: 'a: "q"' },
    ['"qtext" holds a colon'],
    ['between quotes: a: "q"'],
  ],
  [
    { code: 'needs-quotes', why: 'comma', text: 'qtext', write: undefined },
    ['a comma', '"qtext"'],
    ['between quotes: "…"'],
  ],
  [
    { code: 'bad-choice', at: ['often'], value: 'qvalue', ...near, allowed: ['a'] },
    ['"qvalue"', 'after "often:"'],
    ['"qnear"'],
  ],
  [
    { code: 'bad-choice', at: ['often'], value: 'qvalue', ...far, allowed: ['a', 'b'] },
    ['"qvalue"'],
    ['write a or b'],
  ],
  [
    { code: 'bad-choice', at: ['often'], value: 'qvalue', ...far, allowed: ['a', 'b', 'c'] },
    ['"qvalue"'],
    ['write one of a, b, c'],
  ],
  [
    { code: 'no-source', says: 'qsays', grade: 'published' },
    ['"qsays"', 'grade: published', 'no source'],
    ['"source:"', 'content/sources', 'common-practice'],
  ],
  [{ code: 'unknown-fact', fact: 'qfact', ...near }, ['no fact or question "qfact"'], ['"qnear"']],
  [
    { code: 'unknown-fact', fact: 'qfact', ...far },
    ['"qfact"'],
    ['write one of', 'family', 'stage', 'the name of a question'],
  ],
  [
    { code: 'bad-fact-value', fact: 'qfact', value: 'qvalue', ...near, allowed: [] },
    ['"qvalue"', 'after "qfact:"'],
    ['"qnear"'],
  ],
  [
    { code: 'bad-fact-value', fact: 'qfact', value: 'qvalue', ...far, allowed: ['a', 'b', 'c'] },
    ['"qvalue"', 'after "qfact:"'],
    ['one of a, b, c'],
  ],
  [{ code: 'stray-file', should: 'qshould' }, ['nothing reads this file'], ['name it qshould', 'delete it']],
  [{ code: 'needless-exception', what: 'qwhat', mend: 'remove qmend' }, ['qwhat'], ['remove qmend']],
  [{ code: 'no-front-matter', why: 'dashes', first: '--' }, ['first line is "--"'], ['three hyphens', '---']],
  [{ code: 'no-front-matter', why: 'open', first: '' }, ['have no end'], ['a line of three hyphens', '---']],
  [{ code: 'no-front-matter', why: 'closed', first: 'qfirst' }, ['first line', '---'], ['above "qfirst"']],
  [
    { code: 'no-front-matter', why: 'above', first: 'qfirst' },
    ['first line', '---'],
    ['delete what stands above', '"qfirst"'],
  ],
  [
    { code: 'no-front-matter', why: 'above', first: '---' },
    ['first line', '---'],
    ['delete the empty lines above'],
  ],
  [
    { code: 'no-front-matter', why: 'empty', first: '' },
    ['no fields at the top'],
    ['copy', 'your own words'],
  ],
  [
    { code: 'no-front-matter', why: 'none', first: 'qfirst' } as unknown as Fault,
    ['first line', '---'],
    ['above "qfirst"', 'below the last field'],
  ],
];
