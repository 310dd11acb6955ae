/**
 * Every sentence to an author, by a law: it begins with the place, names all that it was given to name, says what is wrong
 * and then what to do, and holds no hole. Invented faults; the marks in braces are what must stand in the sentence.
 */
import { describe, expect, it } from 'vitest';
import type { Fault } from '#engine/faults/issue.ts';
import { say } from '#engine/faults/say.ts';
import { OF_BOARDS } from './told/boards.ts';
import { OF_FIELDS } from './told/fields.ts';
import { OF_NAMES } from './told/names.ts';
import { OF_SAFETY } from './told/safety.ts';
import { OF_TREES } from './told/trees.ts';
import { OF_WORDS } from './told/words.ts';

const told = (fault: Fault): { readonly whole: string; readonly what: string; readonly mend: string } => {
  const whole = say({ file: 'content/x/page.mdx', line: 41, ...fault });
  const at = whole.indexOf('; ');
  return { whole, what: whole.slice('content/x/page.mdx:41: '.length, at), mend: whole.slice(at + 2) };
};

/** What an author is told to do. */
const ORDER =
  /\b(?:write|rename|did you mean|use|remove|add|copy|keep|put|take|change|make|move|delete|give|bring|tell|say|spell|speak|mend|name|wipe|answer|write it)\b/;

const CASES = [...OF_FIELDS, ...OF_NAMES, ...OF_TREES, ...OF_SAFETY, ...OF_WORDS, ...OF_BOARDS];

describe.each(CASES)('%o', (fault, inWhat, inMend) => {
  const { whole, what, mend } = told(fault);
  it('names what it speaks of, and what to do', () => {
    expect(whole).toMatch(/^content\/x\/page\.mdx:41: \S.*\S; \S.*\S$/);
    for (const one of inWhat) expect(what).toContain(one);
    for (const one of inMend) expect(mend).toContain(one);
    expect(mend).toMatch(ORDER);
  });
  it('has no hole in it', () => {
    expect(whole).not.toMatch(/undefined|NaN|\[object|Something was here| {2}|""|: ;/);
    if ('nearest' in fault && fault.nearest === undefined) expect(whole).not.toContain('did you mean');
  });
});

it('two sentences of one code differ wherever their faults do', () => {
  const all = CASES.map(([fault]) => told(fault).whole);
  expect(new Set(all).size).toBe(all.length);
});

it('a long list of choices is cut after two dozen', () => {
  const names = (count: number) => Array.from({ length: count }, (_, at) => `n${at}`);
  const of = (count: number) =>
    told({ code: 'bad-choice', at: ['a'], value: 'v', nearest: undefined, allowed: names(count) }).mend;
  expect(of(24)).toContain('n23');
  expect(of(24)).not.toContain('…');
  expect(of(25)).toContain('n23, …');
  expect(of(25)).not.toContain('n24');
});
