import { type EntryKind, FOLDERS } from '#engine/model/kinds.ts';
import { keysOf } from '#engine/plain/entry-of.ts';
import type { Slip } from './slipped.ts';

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
    [/^often: /, 'often: comon', /"comon" cannot stand after "often:"; did you mean "common"\?/],
    [
      /^families: \[/,
      'families: [water-basd]',
      /"water-basd" cannot stand after "families:"; did you mean "water-based"\?/,
    ],
    [/^ {2}round-spots: /, '  round-spot: yes', /no question "round-spot"; did you mean "round-spots"\?/],
    [
      /^ {2}stands-up: /,
      '  stands-up: yess',
      /"yess" cannot stand after "stands-up:" under "signs:"; did you mean "yes"\?/,
    ],
    [
      /^ {2}stands-up: /,
      '  stands-up: mostly',
      /"mostly" cannot stand after "stands-up:" under "signs:"; write one of yes, no, mostly-yes, mostly-no, either$/,
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
    [/^also:/, 'also: cloudy', /"cloudy", .*, cannot stand after "also:"; put it on a line of its own below/],
    [
      /^ {4}base: \{ /,
      '    base: { paint: navi }',
      /"navi" cannot stand after "paint:" under "base:" in board \d+; did you mean "navy"\?/,
    ],
    [/^ {2}- width-mm: /, '  - width: 60', /no field "width" here; did you mean "width-mm"\?/],
    [
      /^ {4}base: \{ /,
      '    base: { wood: oke }',
      /"oke" cannot stand after "wood:" under "base:" in board \d+; did you mean "oak"\?/,
    ],
    [
      /^ {4}grade: common-practice/,
      '    grade: comon-practice',
      /"comon-practice" cannot stand after "grade:" in claim \d+; did you mean "common-practice"\?/,
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
      /"P180" cannot stand after "grit:" in step \d+; did you mean "180"\?$/,
    ],
    [
      /^ {2}- \{ kind: sand, grit: /,
      (line) => line.replace(/grit: \d+/, 'grit: 321'),
      /"321" cannot stand after "grit:" in step \d+; did you mean "320"\?/,
    ],
    [
      /^ {2}- \{ kind: wipe, with: /,
      (line) => line.replace(/with: [a-z-]+/, 'with: damp-clot'),
      /"damp-clot" cannot stand after "with:" in step \d+; did you mean "damp-cloth"\?/,
    ],
    [
      /^ {2}- \{ kind: wait, until: /,
      (line) => line.replace(/until: [a-z-]+/, 'until: recotable'),
      /"recotable" cannot stand after "until:" in step \d+; did you mean "recoatable"\?/,
    ],
    [
      /^ {2}- \{ kind: wait, until: /,
      (line) => line.replace(/until: [a-z-]+/, 'hours: 2-12'),
      /cannot stand after "hours:" in step \d+; write two numbers in brackets: \[2, 12\]/,
    ],
    [
      /^ {2}- \{ kind: coat, product: /,
      (line) => line.replace(/product: [a-z-]+/, 'prodct: same'),
      /no field "prodct" here; did you mean "product"\?/,
    ],
    [
      /^ {2}- \{ kind: scrape, tool: /,
      (line) => line.replace(/tool: [a-z-]+/, 'tool: raizor'),
      /"raizor" cannot stand after "tool:" in step \d+; did you mean "razor"\?/,
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
      /"leeve" cannot stand after "do:" under "setting:"; did you mean "leave"\?/,
    ],
    [
      /^prevent:/,
      "prevent: 'unclosed",
      /a quote mark, ', is opened after "prevent:" and never closed; take out "'unclosed"; what belongs to/,
    ],
  ],
  question: [
    [/^by: /, 'by: luk', /"luk" cannot stand after "by:"; did you mean "look"\?/],
    [/^safe-from: /, 'safe-from: weet', /"weet" cannot stand after "safe-from:"; did you mean "wet"\?/],
    [/^effort: /, 'effort: 4', /"4" cannot stand after "effort:"; write 1, 2 or 3$/],
    [/^effort: /, 'effort: easy', /"easy" cannot stand after "effort:"; write 1, 2 or 3$/],
    [/^ask: /, 'ask: Is it round.', /end the question with a question mark: Is it round\?$/],
    [/^ask: /, 'ask: [', /a "\[" is opened after "ask:" and never closed; take it out/],
    [/^usually: /, 'usually: mostly', /"mostly" cannot stand after "usually:"; write yes or no$/],
    [/^how: [^'"]/, 'how: Look twice: near and far.', COLON],
    [
      /^ {2}- \{ when: \{ family/,
      (line) => line.replace('family', 'familly'),
      /no fact or question "familly"; did you mean "family"\?/,
    ],
    [
      /^ {2}- \{ when: \{ family/,
      (line) => line.replace(/family: \[?[a-z-]+/, 'family: [oyl'),
      /"oyl" cannot stand after "family:"; did you mean "oil"\?/,
    ],
    [
      /^ {2}- \{ when: /,
      (line) => line.replace(/answer: (yes|no)/, 'answer: maybe'),
      /"maybe" cannot stand after "answer:" in the first entry under "known:"; write yes or no$/,
    ],
  ],
  rule: [
    [/^kind: /, 'kind: causion', /"causion" cannot stand after "kind:"; did you mean "caution"\?/],
    [/^level: /, 'level: cair', /"cair" cannot stand after "level:"; did you mean "care"\?/],
    [/^hazards: \[/, 'hazards: [dusst]', /"dusst" cannot stand after "hazards:"; did you mean "dust"\?/],
    [/^defers: /, 'defers: The label: it wins.', COLON],
  ],
  source: [
    [/^kind: /, 'kind: artcle', /"artcle" cannot stand after "kind:"; did you mean "article"\?/],
    [
      /^year: /,
      'year: about 2008',
      /"about 2008" cannot stand after "year:"; write a whole number from 1800 to 2100, or undated/,
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

/** Every slip of an entry, by its kind: each field misspelt, and what else goes wrong in a file of that kind. */
export const ENTRY_SLIPS: Readonly<Record<string, readonly Slip[]>> = Object.fromEntries(
  keysOf(FOLDERS).map((kind) => [kind, [...(KEYS[kind] ?? []).map(misspelt), ...(SLIPS[kind] ?? [])]]),
);
