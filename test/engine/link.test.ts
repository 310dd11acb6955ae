/** Where a dead link is told: at its own line, however the entry is written. Invented entries. */
import { expect, it } from 'vitest';
import { link } from '#engine/link.ts';
import type { RawEntry } from '#engine/model/knowledge.ts';
import { defect, question, remedy, rule } from './small.ts';

/** Each place of the entry on a line of its own, as in a file with a field a line. */
const aLineEach = (entry: RawEntry, path: string): RawEntry => ({
  ...entry,
  lineOf: (at) => (at.join(' ') === path ? 7 : 1),
});

it.each([
  [remedy('a', {}, { 'if-not': { say: 'Do the other.', remedy: 'gone' } }), 'if-not remedy'],
  [defect('flaw', { remedy: 'a' }, { signs: { gone: 'yes' } }), 'signs gone'],
  [defect('flaw', { ask: 'gone', yes: { remedy: 'a' }, no: { remedy: 'a' } }), 'tree ask'],
  [defect('flaw', { ask: 'one', yes: { remedy: 'gone' }, no: { remedy: 'a' } }), 'tree yes remedy'],
])('%#: the line of %s', (entry, path) => {
  const others = [remedy('a'), question('one')].filter(({ id }) => id !== entry.id);
  const linked = link([...others, aLineEach(entry, path)]);
  expect(linked.ok ? [] : linked.issues.map(({ code, line }) => [code, line])).toEqual([['dead-link', 7]]);
});

it('takes no name for a fact that every object has by birth', () => {
  const linked = link([rule('r', { when: { constructor: 'yes' } }), question('one')]);
  expect(linked.ok ? [] : linked.issues).toMatchObject([{ code: 'unknown-fact', fact: 'constructor' }]);
});
