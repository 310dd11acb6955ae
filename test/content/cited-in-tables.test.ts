/** The sources that tables rest on are read from what a table says, and not from its letters. Invented tables. */
import { expect, it } from 'vitest';
import { citedInTables } from '../../content/tools/knowledge.ts';

const cited = (texts: Readonly<Record<string, string>>) =>
  [...citedInTables({ folder: '/there/is/none', texts: new Map(Object.entries(texts)) })].sort();

it('finds them in any table, however they are written', () => {
  expect(
    cited({
      'content/plan.yaml':
        'coats:\n  - { say: One., source: film-s1 }\n  - say: Two.\n    source: "film-s2"\n',
      'content/another.yaml': "rows: { deep: [{ 'source': film-s3 }] }\n",
      'content/hear/language.yaml': 'tables:\n  wax: { source: film-s4 }\n',
    }),
  ).toEqual(['film-s1', 'film-s2', 'film-s3', 'film-s4']);
});

it('finds none in words, remarks or names that only have it in them', () => {
  expect(
    cited({
      'content/care.yaml':
        '# source: film-s5\nsay: "source: film-s6"\nheat-source: [heater]\nsource: [a, list]\nopen-source: film-s7\n',
    }),
  ).toEqual([]);
});
