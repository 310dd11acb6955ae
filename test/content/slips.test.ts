/** Slips of an author's hand over files of every kind, made in memory: each is told with its file, its line and a way out. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Issue } from '#engine/faults/issue.ts';
import { say } from '#engine/faults/say.ts';
import { link } from '#engine/link.ts';
import { FOLDERS } from '#engine/model/index.ts';
import type { EntryKind } from '#engine/model/kinds.ts';
import { prove } from '#engine/prove/prove.ts';
import { careTable } from '../../content/tools/care.ts';
import { choicesTable } from '../../content/tools/choices.ts';
import { type ContentRoot, filesIn } from '../../content/tools/files.ts';
import { hardWordsTable, tooHard } from '../../content/tools/hard-words.ts';
import { factsTable, languageTable, questionsTable, searchWordsTable } from '../../content/tools/hear.ts';
import { kinTable } from '../../content/tools/kin.ts';
import { leftOver } from '../../content/tools/left-over.ts';
import { planTable } from '../../content/tools/plan.ts';
import { toldOfTheNew } from '../../content/tools/published.ts';
import { readContent } from '../../content/tools/read.ts';
import { retiredFaults, retiredTable } from '../../content/tools/retired.ts';
import { collectedTable, imaginedTable, saidTable } from '../../content/tools/said.ts';
import { sharedFaults } from '../../content/tools/shared.ts';
import type { Table } from '../../content/tools/table.ts';
import { known, rawContent, retired } from './real/knowledge.ts';

const folder = process.cwd();
/** A line that is changed, and what must be told of it. */
type Slip = readonly [line: RegExp, after: string | ((line: string) => string), told: RegExp, below?: number];

const swapped = (key: string): string => key.slice(0, -2) + (key.at(-1) ?? '') + (key.at(-2) ?? '');

const KEYS: Partial<Record<EntryKind, readonly string[]>> = {
  defect: [
    'name',
    'summary',
    'also',
    'often',
    'families',
    'looks',
    'shows',
    'signs',
    'look-alikes',
    'prevent',
    'claims',
  ],
  remedy: ['name', 'summary', 'steps', 'worked', 'if-not', 'prevent', 'claims'],
  question: ['how', 'safe-from', 'yes', 'sure', 'effort', 'known', 'claims'],
  rule: ['kind', 'level', 'title', 'when', 'defers'],
  source: ['title', 'kind', 'read'],
  term: ['term', 'means'],
  product: ['name', 'what'],
  lesson: ['title', 'summary'],
};
const misspelt = (key: string): Slip => [
  new RegExp(`^${key}:`),
  (line) => line.replace(key, swapped(key)),
  new RegExp(`there is no field "${swapped(key)}" here; did you mean "${key}"\\?$`),
];
const NO_DAY =
  /"2026-13-40", which is no day of the calendar \(there is no month 13\), stands after "on:" in change 1; write the day as year-month-day: 2026-11-28 is November 28, 2026$/;
const COLON: Slip[2] = /holds a colon, .*put the whole text between quotes: [a-z-]+: (['"]).+\1$/;
const COMMA: Slip[2] = /a comma cut this text in two: .*put the whole text between quotes: say: ".+, .+"$/;

const SLIPS: Partial<Record<EntryKind, readonly Slip[]>> = {
  defect: [
    [/^often: /, 'often: comon', /"comon" can not stand after "often:"; did you mean "common"\?/],
    [
      /^families: \[/,
      'families: [water-basd]',
      /"water-basd" can not stand after "families:"; did you mean "water-based"\?/,
    ],
    [/^ {2}round-spots: /, '  round-spot: yes', /no question "round-spot"; did you mean "round-spots"\?/],
    [
      /^ {2}stands-up: /,
      '  stands-up: yess',
      /"yess" can not stand after "stands-up:" under "signs:"; did you mean "yes"\?/,
    ],
    [
      /^ {2}stands-up: /,
      '  stands-up: mostly',
      /"mostly" can not stand after "stands-up:" under "signs:"; write one of yes, no, mostly-yes, mostly-no, either$/,
    ],
    [/^look-alikes: \[/, 'look-alikes: [lap-mark]', /no defect "lap-mark"; did you mean "lap-marks"\?/],
    [
      /^ {2}ask: [a-z]/,
      '  ask: seen-at-arm-length',
      /no question "seen-at-arm-length"; did you mean "seen-at-arms-length"\?/,
    ],
    [
      /^ +(yes|no): \{ remedy: /,
      (line) => line.replace(/remedy: [a-z-]+/, 'remedy: sand-and-recote'),
      /no remedy "sand-and-recote"; did you mean "sand-and-recoat"\?/,
    ],
    [
      /^ +(yes|no): \{ remedy: /,
      (line) => line.replace('remedy:', 'remidy:'),
      /no field "remidy" here; did you mean "remedy"\?/,
    ],
    [/^summary: [^'"]/, 'summary: A white veil: nearly always normal.', COLON],
    [/^looks: [^'"]/, 'looks: Dry: a gray fog.', COLON],
    [/^changes: \[\{ on/, 'changes: [{ on: 28.11.2026 }]', /write the year first: 2026-11-28/],
    [/^changes: \[\{ on/, 'changes: [{ on: 11/28/2026 }]', /write the year first: 2026-11-28/],
    [
      /^changes: \[\{ on/,
      'changes: [{ on: last week }]',
      /"last week", which is no date, stands after "on:" in change 1; write the day as year-month-day/,
    ],
    [/^changes: \[\{ on/, 'changes: [{ on: 2026-13-40 }]', NO_DAY],
    [
      /^also:/,
      'also: cloudy',
      /"cloudy", .*, can not stand after "also:"; put it on a line of its own below/,
    ],
    [
      /^ {4}base: \{ /,
      '    base: { paint: navi }',
      /"navi" can not stand after "paint:" under "base:" in board \d+; did you mean "navy"\?/,
    ],
    [/^ {2}- width-mm: /, '  - width: 60', /no field "width" here; did you mean "width-mm"\?/],
    [
      /^ {4}base: \{ /,
      '    base: { wood: oke }',
      /"oke" can not stand after "wood:" under "base:" in board \d+; did you mean "oak"\?/,
    ],
    [
      /^ {4}grade: common-practice/,
      '    grade: comon-practice',
      /"comon-practice" can not stand after "grade:" in claim \d+; did you mean "common-practice"\?/,
    ],
    [
      /^ {4}source: /,
      '    source: film-s7x',
      /there is no source "film-s7x"; the nearest by its letters is "film-s7" \(.+\); write that, or, if you mean another work, the name of its file in content\/sources, without \.mdx$/,
    ],
    [/^ {4}source: /, '    sorce: film-s7', /no field "sorce" here; did you mean "source"\?/],
    [
      /^ {4}grade: common-practice/,
      '    grade: published',
      /is marked grade: published, but names no source/,
      -1,
    ],
    [/^signs:/, 'signs', /a colon is missing after "signs"; write signs:$/],
    [
      /^prevent:/,
      'prevent: [unclosed',
      /a "\[" is opened after "prevent:" and never closed; take out "\[unclosed"; what belongs to/,
    ],
  ],
  remedy: [
    [
      /^ {2}- \{ kind: sand, grit: /,
      (line) => line.replace(/grit: \d+/, 'grit: P180'),
      /"P180" can not stand after "grit:" in step \d+; did you mean "180"\?$/,
    ],
    [
      /^ {2}- \{ kind: sand, grit: /,
      (line) => line.replace(/grit: \d+/, 'grit: 321'),
      /"321" can not stand after "grit:" in step \d+; did you mean "320"\?/,
    ],
    [
      /^ {2}- \{ kind: wipe, with: /,
      (line) => line.replace(/with: [a-z-]+/, 'with: damp-clot'),
      /"damp-clot" can not stand after "with:" in step \d+; did you mean "damp-cloth"\?/,
    ],
    [
      /^ {2}- \{ kind: wait, until: /,
      (line) => line.replace(/until: [a-z-]+/, 'until: recotable'),
      /"recotable" can not stand after "until:" in step \d+; did you mean "recoatable"\?/,
    ],
    [
      /^ {2}- \{ kind: wait, until: /,
      (line) => line.replace(/until: [a-z-]+/, 'hours: 2-12'),
      /can not stand after "hours:" in step \d+; write two numbers in brackets: \[2, 12\]/,
    ],
    [
      /^ {2}- \{ kind: coat, product: /,
      (line) => line.replace(/product: [a-z-]+/, 'prodct: same'),
      /no field "prodct" here; did you mean "product"\?/,
    ],
    [
      /^ {2}- \{ kind: scrape, tool: /,
      (line) => line.replace(/tool: [a-z-]+/, 'tool: raizor'),
      /"raizor" can not stand after "tool:" in step \d+; did you mean "razor"\?/,
    ],
    [/^ {2}- (vacuum|dust-then-wipe)$/, '  - vacum', /no shared step "vacum"; did you mean "vacuum"\?/],
    [/^ {2}as: oil$/, '  as: oyl', /no kind of repair "oyl"; did you mean "oil"\?/],
    [/^if-not: \{ say/, (line) => line.replace(/\{.*/, '{ say: Sand it, then wait for it to dry. }'), COMMA],
    [
      /^if-not: \{ say/,
      (line) => line.replace(/\{.*/, '{ say: Sand it once more., remedy: sand-and-recote }'),
      /no remedy "sand-and-recote"; did you mean/,
    ],
    [/^summary: [^'"]/, 'summary: One thing: sand it.', COLON],
    [/^worked: [^'"]/, 'worked: Look: nothing is seen.', COLON],
    [
      /^claims:/,
      'claims: none',
      /"none" stands after "claims:", .*; take out "none", or take out the lines below/,
    ],
    [
      /^ {2}setting: \{/,
      '  setting: { do: leeve, say: Leave it alone for now., not: No cloth at all. }',
      /"leeve" can not stand after "do:" under "setting:"; did you mean "leave"\?/,
    ],
    [
      /^prevent:/,
      "prevent: 'unclosed",
      /a quote mark, ', is opened after "prevent:" and never closed; take out "'unclosed"; what belongs to/,
    ],
  ],
  question: [
    [/^by: /, 'by: luk', /"luk" can not stand after "by:"; did you mean "look"\?/],
    [/^safe-from: /, 'safe-from: weet', /"weet" can not stand after "safe-from:"; did you mean "wet"\?/],
    [/^effort: /, 'effort: 4', /"4" can not stand after "effort:"; write 1, 2 or 3$/],
    [/^effort: /, 'effort: easy', /"easy" can not stand after "effort:"; write 1, 2 or 3$/],
    [/^ask: /, 'ask: Is it round.', /end the question with a question mark: Is it round\?$/],
    [/^ask: /, 'ask: [', /a "\[" is opened after "ask:" and never closed; take it out/],
    [/^usually: /, 'usually: mostly', /"mostly" can not stand after "usually:"; write yes or no$/],
    [/^how: [^'"]/, 'how: Look twice: near and far.', COLON],
    [
      /^ {2}- \{ when: \{ family/,
      (line) => line.replace('family', 'familly'),
      /no fact or question "familly"; did you mean "family"\?/,
    ],
    [
      /^ {2}- \{ when: \{ family/,
      (line) => line.replace(/family: \[?[a-z-]+/, 'family: [oyl'),
      /"oyl" can not stand after "family:"; did you mean "oil"\?/,
    ],
    [
      /^ {2}- \{ when: /,
      (line) => line.replace(/answer: (yes|no)/, 'answer: maybe'),
      /"maybe" can not stand after "answer:" in the first entry under "known:"; write yes or no$/,
    ],
  ],
  rule: [
    [/^kind: /, 'kind: causion', /"causion" can not stand after "kind:"; did you mean "caution"\?/],
    [/^level: /, 'level: cair', /"cair" can not stand after "level:"; did you mean "care"\?/],
    [/^hazards: \[/, 'hazards: [dusst]', /"dusst" can not stand after "hazards:"; did you mean "dust"\?/],
    [/^defers: /, 'defers: The label: it wins.', COLON],
  ],
  source: [
    [/^kind: /, 'kind: artcle', /"artcle" can not stand after "kind:"; did you mean "article"\?/],
    [
      /^year: /,
      'year: about 2008',
      /"about 2008" can not stand after "year:"; write a whole number from 1800 to 2100, or undated/,
    ],
    [/^title: /, 'title: ', /nothing stands after "title:"; write it there/],
    [/^---$/, '--', /the first line is "--"; write three hyphens/, 0],
  ],
  term: [
    [/^means: [^'"]/, 'means: Two things: one.', COLON],
    [/^term: /, 'therm: tack', /no field "therm" here; did you mean "term"\?/],
  ],
  product: [
    [
      /^name: /,
      'name: 7',
      /only a number, 7, stands after "name:"; write there the kind of coating, in the words on a can$/,
    ],
  ],
  lesson: [[/^title: /, 'title: [a, b]', /a list, .*, stands after "title:"; write one text/]],
};

type Done = { readonly file: string; readonly line: number; readonly told: RegExp; readonly slip: string };

/** Puts each slip into a file of its own kind that has none yet. */
const slipped = (slips: Partial<Record<EntryKind, readonly Slip[]>>): { root: ContentRoot; done: Done[] } => {
  const texts = new Map<string, string>();
  const done: Done[] = [];
  for (const [kind, list] of Object.entries(slips) as [EntryKind, readonly Slip[]][]) {
    const files = filesIn(folder, `content/${FOLDERS[kind]}`, '.mdx').map(
      (name) => `content/${FOLDERS[kind]}/${name}`,
    );
    for (const [pattern, after, told, below = 0] of list) {
      const free = files.find(
        (file) =>
          !texts.has(file) &&
          readFileSync(file, 'utf8')
            .split('\n')
            .some((line) => pattern.test(line)),
      );
      if (!free) {
        done.push({ file: 'no file', line: 0, told, slip: `${pattern}` });
        continue;
      }
      const lines = readFileSync(free, 'utf8').split('\n');
      const at = lines.findIndex((line) => pattern.test(line));
      const was = lines[at] ?? '';
      lines[at] = typeof after === 'string' ? after : after(was);
      expect(lines[at], `${pattern}`).not.toBe(was);
      texts.set(free, lines.join('\n'));
      done.push({ file: free, line: at + 1 + below, told, slip: `${was} → ${lines[at]}` });
    }
  }
  return { root: { folder, texts }, done };
};

/** Slips that are not told in their file, on their line (or the next, where a parser stops), in these words. */
const missed = (done: readonly Done[], issues: readonly Issue[]): string[] =>
  done.flatMap(({ file, line, told, slip }) => {
    const own = issues.filter((issue) => issue.file === file);
    const hit = own.some((issue) => Math.abs(issue.line - line) <= 1 && told.test(say(issue)));
    return hit
      ? []
      : [`${file}:${line} ${slip}\n  wanted ${told}\n  told ${own.map(say).join('\n       ') || 'nothing'}`];
  });

describe('a slip', () => {
  const all = Object.fromEntries(
    (Object.keys(FOLDERS) as EntryKind[]).map((kind) => [
      kind,
      [...(KEYS[kind] ?? []).map(misspelt), ...(SLIPS[kind] ?? [])],
    ]),
  );
  // Of some kinds there are fewer files than slips: they are made in turns.
  const turns = (size: number) =>
    Array.from(
      { length: Math.ceil(Math.max(...Object.values(all).map((list) => list.length)) / size) },
      (_, turn) =>
        Object.fromEntries(
          Object.entries(all).map(([kind, list]) => [kind, list.slice(turn * size, (turn + 1) * size)]),
        ),
    );

  it('in an entry of any kind is told with its file, its line and a way out', () => {
    const wrong: string[] = [];
    let made = 0;
    for (const turn of turns(18)) {
      const { root, done } = slipped(turn);
      const linked = link(readContent(root), retired);
      wrong.push(...missed(done, linked.ok ? [] : linked.issues));
      made += done.length;
    }
    expect(wrong.join('\n')).toBe('');
    expect(made).toBeGreaterThan(95);
  });

  it('in a table of any kind is told with its file, its line and a way out', () => {
    const tables: readonly (readonly [string, (root: ContentRoot) => readonly Issue[], readonly Slip[]])[] = [
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
            /"remdy\/old" can not stand here as a name; did you mean "remedy\/old"\?/,
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
            /"leeve" can not stand after "do:" under "wet:"; did you mean "leave"\?/,
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
        [[/^not-denying:/, 'not-denyin:', /no field "not-denyin" here; did you mean "not-denying"\?/]],
      ],
      [
        'hear/facts.yaml',
        of(factsTable),
        [[/^family:/, 'familly:', /no field "familly" here; did you mean "family"\?/]],
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
            /"page\/clok" can not stand here as a name; did you mean "page\/clock"\?/,
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
    const wrong: string[] = [];
    for (const [name, read, slips] of tables)
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

  it('that links is told by the proofs', () => {
    const { root, done } = slipped({
      question: [
        [
          /^ask: /,
          'ask: Is the discoloration predominantly superficial, notwithstanding considerable illumination?',
          /reads at US grade/,
        ],
        [
          /^how: /,
          'how: <One sentence - how a beginner checks this.>',
          /is what the template left; put your own words/,
        ],
      ],
      remedy: [
        [/^worked: /, 'worked: <How to know that it worked.>', /is what the template left/],
        [
          /^ {2}- \{ kind: wait, until: /,
          '  - { kind: coat, product: same, say: Lay one thin coat at once. }',
          /comes on a film that has not dried; add a step above it: - \{ kind: wait, until: recoatable/,
        ],
        [
          /^ {2}setting: \{/,
          '  setting: { do: lift, say: Lift it with a brush., not: No cloth at all. }',
          /"do: lift" is more than a film at the stage "setting" bears; write do: leave \(hands off\) or do: stop \(end all work\)/,
        ],
      ],
      defect: [
        [/^summary: /, 'summary: <What it is, in one or two plain sentences.>', /is what the template left/],
      ],
    });
    const linked = link(readContent(root), retired);
    expect(linked.ok ? [] : linked.issues.map(say)).toEqual([]);
    if (!linked.ok) return;
    expect(
      missed(done, [...prove(linked.value), ...tooHard(linked.value, root), ...leftOver(root)]).join('\n'),
    ).toBe('');
  });

  it('that names a thing almost like another is told on the new one, or on either where none is published', () => {
    const near = (kind: EntryKind, id: string, like: string) => {
      const [one] = rawContent.filter((entry) => entry.kind === kind && entry.id === like);
      if (!one) throw new Error(`${like} is gone`);
      const file = `content/${FOLDERS[kind]}/${id}.mdx`;
      const linked = link([...rawContent, { ...one, id, file }], retired);
      if (!linked.ok) throw new Error('does not link');
      return toldOfTheNew(prove(linked.value), folder)
        .filter(({ code }) => code === 'near-name')
        .map(say);
    };
    const { name } = known.get('remedy', 'scrape-the-glue-off');
    expect(new Set(near('remedy', 'scrape-off-the-glue', 'scrape-the-glue-off'))).toEqual(
      new Set([
        `content/remedies/scrape-off-the-glue.mdx:1: there is a remedy almost of this name already, "scrape-the-glue-off" (${name}); use that one and delete this file, or rename this file by what tells it apart`,
      ]),
    );
    const { ask } = known.get('question', 'a-drop-landed');
    expect(new Set(near('question', 'drop-landed', 'a-drop-landed'))).toEqual(
      new Set([
        `content/questions/drop-landed.mdx:1: the question "drop-landed" is named almost like "a-drop-landed" (${ask}); keep the older one, and delete the newer file, or rename it by what tells it apart`,
      ]),
    );
  });
});

/** The faults of one table, whatever else it holds. */
function of(
  read: (of: typeof known, root: ContentRoot) => Table<unknown>,
): (root: ContentRoot) => readonly Issue[] {
  return (root) => {
    const table = read(known, root);
    return table.ok ? [] : table.issues;
  };
}

it('finds nothing in the tables as they stand', () => {
  expect(retiredTable(folder).ok).toBe(true);
  expect(
    [...sharedFaults(folder), ...leftOver(folder), ...retiredFaults(rawContent, folder)].map(say),
  ).toEqual([]);
});

it('leaves every flaw of the real content with a sign for each question that is asked of all', () => {
  const entries = readContent(process.cwd());
  const asked = entries.filter((one) => one.kind === 'question' && 'every-flaw' in (one.data as object));
  const flaws = entries.filter((one) => one.kind === 'defect');
  expect(asked.length).toBeGreaterThan(20);
  for (const { id, data } of flaws)
    for (const question of asked)
      expect((data as { signs: object }).signs, `${id} ${question.id}`).toHaveProperty(question.id);
  expect(readFileSync('content/defects/lap-marks.mdx', 'utf8')).not.toContain('thread-shaped: no');
});
