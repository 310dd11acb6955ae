/** Slips of an author's hand, made in memory: each is told with its file, its line and a way out. */
import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import type { Issue } from '#engine/faults/issue.ts';
import { say } from '#engine/faults/say.ts';
import { careTable } from '../../../content/tools/care.ts';
import { choicesTable } from '../../../content/tools/choices.ts';
import { clockTable } from '../../../content/tools/clock-words.ts';
import type { ContentRoot } from '../../../content/tools/files.ts';
import { hardWordsTable } from '../../../content/tools/hard-words.ts';
import {
  factsTable,
  languageTable,
  questionsTable,
  searchWordsTable,
  wordKindsTable,
} from '../../../content/tools/hear.ts';
import { kinTable } from '../../../content/tools/kin.ts';
import { leftOver } from '../../../content/tools/left-over.ts';
import { planTable } from '../../../content/tools/plan.ts';
import { retiredFaults, retiredTable } from '../../../content/tools/retired.ts';
import { collectedTable, imaginedTable, saidTable } from '../../../content/tools/said.ts';
import { sharedFaults } from '../../../content/tools/shared.ts';
import type { Table } from '../../../content/tools/table.ts';
import { known, rawContent } from '../real/knowledge.ts';
import { folder, missed, type Slip } from './slipped.ts';

/** The faults of one table, whatever else it holds. */
const of =
  (read: (of: typeof known, root: ContentRoot) => Table<unknown>) =>
  (root: ContentRoot): readonly Issue[] => {
    const table = read(known, root);
    return table.ok ? [] : table.issues;
  };

const TABLES: readonly (readonly [string, (root: ContentRoot) => readonly Issue[], readonly Slip[]])[] = [
  [
    'hear/search-words.yaml',
    of(searchWordsTable),
    [
      [/^spellings:/, 'spelings:', /no field "spelings" here; did you mean "spellings"\?/],
      [/^ {2}clowdy: /, '  clowdy: Cloudy!', /write one word in small letters, .*: cloudy$/],
    ],
  ],
  [
    'hard-words.yaml',
    of(hardWordsTable),
    [
      [
        /^- \{ term: water-based/,
        '- { therm: water-based, why: It is what the can says. }',
        /no field "therm" here; did you mean "term"\?/,
      ],
    ],
  ],
  [
    'retired.yaml',
    (root) => retiredFaults(rawContent, root),
    [
      [
        /^remedy\/clear-the-mold/,
        'remedy/clear-the-mold-first: dry-the-mold',
        /there is no remedy "dry-the-mold"; did you mean "dry-out-the-mold"\?$/,
      ],
      [
        /^remedy\/test-the-bond/,
        'remdy/old: sand-and-recoat',
        /"remdy\/old" cannot stand here as a name; did you mean "remedy\/old"\?/,
      ],
      [
        /^remedy\/test-the-bond/,
        'remedy/sand-and-recoat: scrape-then-seal',
        /is retired, but its file content\/remedies\/sand-and-recoat\.mdx is still there; to keep it, delete this line/,
      ],
    ],
  ],
  [
    'acts.yaml',
    sharedFaults,
    [
      [
        /^ {4}do: leave/,
        '    do: leeve',
        /"leeve" cannot stand after "do:" under "wet:"; did you mean "leave"\?/,
      ],
      [/^ {2}setting:/, '  seting:', /no field "seting" here; did you mean "setting"\?/],
    ],
  ],
  [
    'steps.yaml',
    sharedFaults,
    [
      [/with: vacuum/, (line) => line.replace('with: vacuum', 'with: vacum'), /did you mean "vacuum"\?/],
      [
        /^dust-then-wipe:/,
        'dust-then-wype:',
        /no remedy uses the shared step "dust-then-wype"; did you mean "dust-then-wipe", which a remedy asks for\?/,
      ],
    ],
  ],
  [
    'plan.yaml',
    of(planTable),
    [
      [
        /source: [a-z]/,
        (line) => line.replace(/source: [a-z0-9-]+/, 'source: no-such-book'),
        /no source "no-such-book"; write the name of a file in content\/sources here/,
      ],
      [
        /^ {2}tool: /,
        (line) => line.replace('{product}', '{can}'),
        /\{can\} is no place of this sentence, .*; write \{product\}$/,
      ],
    ],
  ],
  [
    'care.yaml',
    of(careTable),
    [
      [
        /grade: [a-z]/,
        (line) => line.replace(/grade: [a-z-]+/, 'grade: publishd'),
        /did you mean "published"\?/,
      ],
    ],
  ],
  [
    'choices.yaml',
    of(choicesTable),
    [[/^[a-z-]+:/, (line) => `x${line}`, /there is no field "xpiece" here; did you mean "piece"\?$/]],
  ],
  [
    'hear/language.yaml',
    of(languageTable),
    [
      [/^not-denying:/, 'not-denyin:', /no field "not-denyin" here; did you mean "not-denying"\?/],
      [/^ {2}next-coat:/, '  next-coats:', /no field "next-coats" here; did you mean "next-coat"\?/],
      [
        /^ {4}- how long\|soon$/,
        '    - How (long|soon)',
        /write words in small letters: a\|b is either word/,
      ],
      [/^ {4}too-soon: .*$/, '    too-soon: "Wait {hours} more, please."', /in braces write from, age alone/],
    ],
  ],
  [
    'hear/facts.yaml',
    of(factsTable),
    [[/^family:/, 'familly:', /no field "familly" here; did you mean "family"\?/]],
  ],
  [
    'hear/word-kinds.yaml',
    of(wordKindsTable),
    [
      [/^laying:/, 'layin:', /no field "layin" here; did you mean "laying"\?/],
      [
        /^sheen: .*$/,
        'sheen: [semi-gloss]',
        /"semi-gloss" cannot stand after "sheen:"; write one word in small letters without an apostrophe$/,
      ],
    ],
  ],
  [
    'hear/questions.yaml',
    of(questionsTable),
    [
      [
        /^a-drop-landed:/,
        (line) => line.replace('a-drop-landed', 'a-drop-lands'),
        /no question "a-drop-lands"; did you mean "a-drop-landed"\?/,
      ],
    ],
  ],
  [
    'hear/pages.yaml',
    of(saidTable),
    [
      [
        /^ {2}blush: /,
        (line) => line.replace('blush', 'blushh'),
        /no defect "blushh"; did you mean "blush"\?/,
      ],
      [
        /^ {2}page\/clock: /,
        (line) => line.replace('clock', 'clok'),
        /"page\/clok" cannot stand here as a name; did you mean "page\/clock"\?/,
      ],
    ],
  ],
  [
    'clock.yaml',
    of(clockTable),
    [
      [/^thin:/, 'thinn:', /no field "thinn" here; did you mean "thin"\?/],
      [
        /^ {2}full: /,
        '  full: "Full cure: {cured}."',
        /\{cured\} is no place of this sentence, .*; write \{cure\}$/,
      ],
      [
        /^ {2}due: "buff it from/,
        '  due: "buff it"',
        /\{from\} is missing in this sentence, .*; write it where/,
      ],
      [/^ {2}touch: "dry to/, '  touch: "dry at {time}"', /\{time\} is no place .*nothing is filled in here/],
      [/^ {2}cloths: /, (line) => line.replace('safety-s6', 'safety-s66666'), /no source "safety-s66666"/],
      [/^ {2}cloths: /, (line) => line.replace(', source: safety-s6', ''), /published.* no source/],
      [
        /^ {2}verdict: \{ say: "Hands off", /,
        '  verdict: { say: "Wipe it with a cloth", grade: common-practice }',
        /"Wipe it with a cloth".* where hands are off the film/,
      ],
      [
        /^ {2}cured-why: /,
        '  cured-why: "Utilization of refinished furniture is unconditionally permissible."',
        /reads at US grade/,
      ],
    ],
  ],
  [
    'hear/imagined.yaml',
    of(imaginedTable),
    [
      [
        /^ {2}blush:/,
        (line) => line.replace('blush', 'blushh'),
        /no defect "blushh"; did you mean "blush"\?/,
      ],
    ],
  ],
  [
    'hear/kin.yaml',
    of(kinTable),
    [
      [/^ {2}yellow: /, '  yellow: []', /"yellow:" under "kin:".*at least 2/],
      [
        /^ {2}yellow: /,
        '  yellow: [yellow, amber, turned rather yellow]',
        /write one or two words in small letters, without marks or an apostrophe$/,
      ],
      [
        /^ {2}yellow: /,
        '  yellow: [yellow, amber, yellow]',
        /"yellow", which stands there already, .*leave it out$/,
      ],
      [
        /^ {2}yellow: /,
        '  yellow: [amber, yellow, yellowing]',
        /"yellowing", which is the same word to the search as "yellow", .*leave it out$/,
      ],
      [
        /^ {2}yellow: /,
        '  yellow: [yellow, of amber]',
        /"of amber", of which "of" says nothing, .*leave that word out$/,
      ],
    ],
  ],
  [
    'hear/collected.yaml',
    of(collectedTable),
    [
      [
        /is: \[tacky-film\]/,
        (line) => line.replace('tacky-film', 'tacky-fim'),
        /no defect "tacky-fim"; did you mean "tacky-film"\?/,
      ],
    ],
  ],
];

it('tells a slip in a table of any kind with its file, its line and a way out', () => {
  const wrong: string[] = [];
  for (const [name, read, slips] of TABLES)
    for (const [pattern, after, told] of slips) {
      const file = `content/${name}`;
      const lines = readFileSync(file, 'utf8').split('\n');
      const at = lines.findIndex((line) => pattern.test(line));
      const was = lines[at] ?? '';
      lines[at] = typeof after === 'string' ? after : after(was);
      const issues = read({ folder, texts: new Map([[file, lines.join('\n')]]) });
      wrong.push(...missed([{ file, line: at + 1, told, slip: `${was} → ${lines[at]}` }], issues));
    }
  expect(wrong.join('\n')).toBe('');
});

it('finds nothing in the tables as they stand', () => {
  expect(retiredTable(folder).ok).toBe(true);
  expect(
    [...sharedFaults(folder), ...leftOver(folder), ...retiredFaults(rawContent, folder)].map(say),
  ).toEqual([]);
});
