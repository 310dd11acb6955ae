/** What is told of a file, its fields and their values. */

import { FACTS } from '../model/facts.ts';
import { keysOf } from '../plain/entry-of.ts';
import { asClause } from './found.ts';
import { placeOf } from './place.ts';
import { list, maybe, type Of, oneOf, type Say, type Told } from './told.ts';

/** The ways on that a branch of a tree can take, of which it takes one. */
const waysOn = (keys: readonly string[]): readonly string[] =>
  keys.filter((key) => ['ask', 'remedy', 'defect', 'leave'].includes(key));

/** A name as files have it: `Bad_Id` is bad-id. */
const inSmallLetters = (name: string): string =>
  name
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, '-')
    .replaceAll(/^-+|-+$/g, '') || 'new-name';

/** What is told of a file that has no fields between two lines of hyphens at its top. */
const noFrontMatter = ({ why, first }: Of<'no-front-matter'>): Told => {
  const three = 'the first line must be three hyphens and nothing else: ---';
  switch (why) {
    case 'dashes':
      return [`the first line is "${first}"`, 'write three hyphens there and nothing else: ---'];
    case 'open':
      return [
        'the fields at the top of this file have no end',
        'write a line of three hyphens, ---, below the last of them',
      ];
    case 'closed':
      return [three, `write it above "${first}"`];
    case 'above':
      return [
        three,
        first === '---' ? 'delete the empty lines above it' : `delete what stands above it: "${first}"`,
      ];
    case 'empty':
      return [
        'there are no fields at the top of this file',
        'copy all that stands in another file of the same folder, and put your own words in',
      ];
    default:
      return [three, `write it above "${first}", and write the same line again below the last field`];
  }
};

export const OF_FIELDS: Say<
  | 'bad-yaml'
  | 'no-front-matter'
  | 'bad-id'
  | 'unknown-key'
  | 'missing-key'
  | 'bad-value'
  | 'bad-name'
  | 'bad-branch'
  | 'left-over'
  | 'needs-quotes'
  | 'bad-choice'
  | 'unknown-fact'
  | 'bad-fact-value'
  | 'no-source'
  | 'stray-file'
  | 'needless-exception'
> = {
  'bad-yaml': (issue) => [issue.what, issue.mend],
  'no-front-matter': noFrontMatter,
  'bad-id': (issue) => [
    `the name of this file, "${issue.id}", is not made of words in small letters`,
    `rename the file to ${inSmallLetters(issue.id)}.mdx: small letters and figures, hyphens between words`,
  ],
  'unknown-key': (issue) => [
    `there is no field "${issue.key}" here`,
    maybe(issue.nearest) || (issue.allowed.length ? `use one of ${list(issue.allowed)}` : 'remove it'),
  ],
  'missing-key': (issue) => [
    `the field "${issue.key}" is missing`,
    issue.write
      ? `above the second line --- add: ${issue.write}`
      : `add a line ${issue.key}: …${issue.about ? ` and write in place of the dots ${asClause(issue.about)}` : ''}`,
  ],
  'bad-value': (issue) => [`${issue.what} ${placeOf(issue.at)}`, issue.wants],
  'bad-name': (issue) => [`"${issue.name}" cannot stand here as a name`, maybe(issue.nearest) || issue.wants],
  'bad-branch': (issue) => [
    issue.keys.length
      ? `this branch of the tree holds ${issue.keys.join(' and ')}, where one of ask, remedy, defect and leave is wanted`
      : 'a branch of the tree is wanted here, with one of ask, remedy, defect and leave',
    waysOn(issue.keys).length > 1
      ? `keep one of ${waysOn(issue.keys).join(' and ')}, and take out the other with what stands after it`
      : 'write { ask: …, yes: …, no: … }, { remedy: … }, { defect: … } or { leave: … }',
  ],
  'left-over': (issue) => [`"${issue.text}" is what the template left`, 'put your own words in its place'],
  'needs-quotes': (issue) => [
    issue.why === 'colon'
      ? `the text "${issue.text}" holds a colon, which begins a new field`
      : `a comma cut this text in two: "${issue.text}" was read as a field of its own`,
    `put the whole text between quotes: ${issue.write ?? '"…"'}`,
  ],
  'bad-choice': (issue) => [
    `"${issue.value}" cannot stand ${placeOf(issue.at)}`,
    maybe(issue.nearest) || oneOf(issue.allowed),
  ],
  'unknown-fact': (issue) => [
    `there is no fact or question "${issue.fact}"`,
    maybe(issue.nearest) || `write one of ${list(keysOf(FACTS))}, or the name of a question`,
  ],
  'bad-fact-value': (issue) => [
    `"${issue.value}" cannot stand after "${issue.fact}:"`,
    maybe(issue.nearest) || oneOf(issue.allowed),
  ],
  'no-source': (issue) => [
    `"${issue.says}" is marked grade: ${issue.grade}, but names no source`,
    'add "source:" with the name of a file in content/sources (without .mdx), or write another grade, such as common-practice',
  ],
  'stray-file': (issue) => ['nothing reads this file', `name it ${issue.should}, or delete it`],
  'needless-exception': (issue) => [issue.what, issue.mend],
};
