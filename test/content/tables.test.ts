/** Faults in the tables are told with file, line, what is wrong and what to do. */
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { say } from '#engine/faults/say.ts';
import { careTable, readCare } from '../../content/tools/care.ts';
import { choicesTable } from '../../content/tools/choices.ts';
import { languageTable } from '../../content/tools/hear.ts';
import { planTable, readPlan } from '../../content/tools/plan.ts';
import { sightsTable } from '../../content/tools/sights.ts';
import { known } from './real/knowledge.ts';

const READERS = {
  plan: planTable,
  care: careTable,
  choices: choicesTable,
  sights: sightsTable,
  'hear/language': languageTable,
};
type Which = keyof typeof READERS;
const text = (which: Which) => readFileSync(`content/${which}.yaml`, 'utf8');
const PLAN = text('plan');

let root = '';
beforeAll(() => {
  root = mkdtempSync(join(tmpdir(), 'tables-'));
  mkdirSync(join(root, 'content/hear'), { recursive: true });
});
afterAll(() => rmSync(root, { recursive: true }));

const lineOf = (text: string, part: string): number => {
  const index = text.indexOf(part);
  if (index < 0) throw new Error(`the table no longer has ${part}`);
  return text.slice(0, index).split('\n').length;
};

/** What is told of a table in which `from` is replaced by `to`, and the line where that is. */
const spoiled = (which: Which, from: string, to: string): { told: readonly string[]; line: number } => {
  const whole = text(which);
  writeFileSync(join(root, `content/${which}.yaml`), whole.replace(from, to));
  const table = READERS[which](known, root);
  return { told: table.ok ? [] : table.issues.map(say), line: lineOf(whole, from) };
};

describe('the tables', () => {
  it('read without fault', () => {
    expect(readPlan(known, process.cwd()).coats.length).toBeGreaterThan(5);
    expect(readCare(known, process.cwd()).cleaning.length).toBeGreaterThan(3);
  });

  it('tell a dead source with its line and the nearest', () => {
    const { told, line } = spoiled('plan', 'source: film-s135 }', 'source: film-s1355 }');
    expect(told).toEqual([
      `content/plan.yaml:${line}: there is no source "film-s1355"; the nearest by its letters is "film-s135" (${known.get('source', 'film-s135').title}); write that, or, if you mean another work, the name of its file in content/sources, without .mdx`,
    ]);
  });

  it('tell what stands for a source that was retired, with its line', () => {
    const { told, line } = spoiled('plan', 'source: film-s135 }', 'source: wax-w4 }');
    expect(told).toEqual([
      `content/plan.yaml:${line}: the source "wax-w4" was retired; write "safety-s69" instead`,
    ]);
  });

  it('tell what stands for a page that was retired', () => {
    const { told, line } = spoiled(
      'hear/language',
      'page: lesson/take-the-old-finish-off',
      'page: remedy/clear-the-mold-first',
    );
    expect(told).toEqual([
      `content/hear/language.yaml:${line}: the remedy "clear-the-mold-first" was retired; write "dry-out-the-mold" instead`,
    ]);
  });

  it('tell a page that an answer leads to and that is not there', () => {
    const dead = spoiled(
      'hear/language',
      'page: lesson/take-the-old-finish-off',
      'page: lesson/take-the-finish-off',
    );
    expect(dead.told).toEqual([
      expect.stringMatching(
        new RegExp(
          `^content/hear/language.yaml:${dead.line}: there is no lesson "take-the-finish-off"; .*"take-the-old-finish-off"`,
        ),
      ),
    ]);
    const wrong = spoiled('hear/language', 'page: page/schedule', 'page: page/shedule');
    expect(wrong.told.join()).toMatch(new RegExp(`language.yaml:${wrong.line}: "page/shedule"`));
  });

  it('tell a sign and a flaw of the groups that are not there', () => {
    const sign = spoiled('sights', 'signs: [white-or-milky]', 'signs: [white-or-milk]');
    expect(sign.told).toEqual([
      expect.stringMatching(
        new RegExp(
          `^content/sights.yaml:${sign.line}: there is no question "white-or-milk"; .*"white-or-milky"`,
        ),
      ),
    ]);
    const face = spoiled('sights', 'face: print-marks', 'face: print-mark');
    expect(face.told.join()).toMatch(new RegExp(`sights.yaml:${face.line}: .*"print-mark".*"print-marks"`));
    const flaw = spoiled('sights', 'also: [frosted-oil, dry-spray', 'also: [frosted-oils, dry-spray');
    expect(flaw.told.join()).toMatch(new RegExp(`sights.yaml:${flaw.line}: .*"frosted-oils".*"frosted-oil"`));
  });

  it('tell a dead defect, product and rule', () => {
    const defect = spoiled(
      'plan',
      'defects: [missed-spots, runs-and-sags]',
      'defects: [missed-spot, runs-and-sags]',
    );
    expect(defect.told).toEqual([
      `content/plan.yaml:${defect.line}: there is no defect "missed-spot"; did you mean "missed-spots"?`,
    ]);
    const product = spoiled('plan', 'products: [aerosol-lacquer]', 'products: [aerosol-laquer]');
    expect(product.told[0]).toContain(
      `content/plan.yaml:${product.line}: there is no product "aerosol-laquer"`,
    );
    const rule = spoiled('plan', 'refuse: [not-a-crib', 'refuse: [not-a-krib');
    expect(rule.told[0]).toContain(`content/plan.yaml:${rule.line}: there is no rule "not-a-krib"`);
  });

  it('tell a published row without a source', () => {
    const { told, line } = spoiled('plan', 'published, source: film-s135 }', 'published }');
    expect(told).toHaveLength(1);
    expect(told[0]).toMatch(
      new RegExp(
        `^content/plan.yaml:${line}: .*is marked grade: published, but names no source; add "source:" with the name of a file`,
      ),
    );
  });

  it('tell an unknown key, a bad value and a missing key, each on its line', () => {
    const key = spoiled('care', 'until: light-use, say', 'untill: light-use, say');
    expect(key.told.every((one) => one.startsWith(`content/care.yaml:${key.line}: `))).toBe(true);
    expect(key.told.join('\n')).toContain('"untill"');
    const value = spoiled('care', 'until: light-use, say', 'until: soon, say');
    expect(value.told).toHaveLength(1);
    expect(value.told[0]).toContain(
      `content/care.yaml:${value.line}: "soon" cannot stand after "until:" in the second entry under "not-yet:"; write one of hand-over`,
    );
    const misspelt = spoiled('care', 'promise:\n', 'promises:\n');
    expect(misspelt.told.join('\n')).toContain('"promises" here; did you mean "promise"?');
    const missing = spoiled('care', 'promise:\n', 'zzz:\n');
    expect(missing.told.join('\n')).toContain('the field "promise" is missing; add a line promise: …');
  });

  it('tell what is wrong with the sentences on sanding', () => {
    const source = spoiled('plan', 'source: film-s38 }, {', 'source: film-s3888 }, {');
    expect(source.told[0]).toContain(`content/plan.yaml:${source.line}: there is no source "film-s3888"`);
    const missing = spoiled('plan', '    no-film:\n', '    no-fillm:\n');
    expect(missing.told.join('\n')).toMatch(/content\/plan.yaml:\d+: .*no-film/);
    const other = spoiled('plan', 'micrometers: 125, say', 'micrometers: 120, say');
    expect(other.told).toEqual([
      `content/plan.yaml:${other.line}: the words after say: tell 125 µm and micrometers: is 120, after "too-thick:" under "sanding:"; write the same in both`,
    ]);
  });

  it('tell an answer of the forms that is missing, or that no form asks', () => {
    const missing = spoiled('choices', '    milk-paint: Milk paint\n', '');
    expect(missing.told.join('\n')).toMatch(/content\/choices.yaml:\d+: .*milk-paint/);
    const strange = spoiled('choices', 'crib: Crib or cot', 'crip: Crib or cot');
    expect(strange.told.join('\n')).toMatch(/content\/choices.yaml:\d+: .*crip/);
  });

  it('tell a sentence to the buyer that reads too hard', () => {
    const { told, line } = spoiled(
      'care',
      'Alcohol melts it.',
      'Alcoholic preparations irreversibly deteriorate the underlying resinous material.',
    );
    expect(told).toHaveLength(1);
    expect(told[0]).toMatch(
      new RegExp(`^content/care.yaml:${line}: .*reads at US grade .*use shorter words`),
    );
  });

  it('tell broken YAML on the line where it breaks', () => {
    const { told, line } = spoiled('care', 'cleaning:\n', 'cleaning: [\n');
    expect(told).toHaveLength(1);
    const at = Number(/^content\/care\.yaml:(\d+): /.exec(told[0] ?? '')?.[1]);
    expect(at).toBeGreaterThanOrEqual(line);
    expect(told[0]).toContain('a "[" is opened after "cleaning:" and never closed');
  });

  it('tell several faults at once, in the order of their lines, and throw them where a table is needed', () => {
    const both = PLAN.replace('source: film-s135 }', 'source: nowhere }').replace(
      'refuse: [',
      'refuse: [nothing, ',
    );
    writeFileSync(join(root, 'content/plan.yaml'), both);
    const lines = [lineOf(PLAN, 'source: film-s135 }'), lineOf(PLAN, 'refuse: [')];
    expect(() => readPlan(known, root)).toThrow(
      new RegExp(`content/plan.yaml:${lines[0]}: .*nowhere.*\n.*content/plan.yaml:${lines[1]}: .*nothing`),
    );
  });
});
