/**
 * What can hurt most is said alike wherever it is said: the classes of slip that a reader of the trade found. The figure
 * for the skin is of a burn center's page (content/sources/safety-skin-burn-center); the rest is common practice, no source.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { visits } from '#engine/knowledge/tree.ts';
import { known } from './knowledge.ts';

/** Every sentence that a person reads, with the file it stands in; of the words for the search and the ear none. */
const sentences = readdirSync('content', { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('.mdx') && !file.startsWith('sources'))
  .flatMap((file) =>
    readFileSync(`content/${file}`, 'utf8')
      .split('\n')
      .filter((line) => !/^\s*(?:also|heard):|^\s*- [=a-z0-9|]+(?: [=a-z0-9|]+)*$/.test(line))
      .flatMap((line) => line.split(/(?<=[.!?]['"]?)\s/))
      .map((say) => ({ file, say })),
  );

const slips = (of: RegExp, right: RegExp): readonly string[] =>
  sentences.filter(({ say }) => of.test(say) && !right.test(say)).map(({ file, say }) => `${file}: ${say}`);

it('reads sentences', () => {
  expect(sentences.length).toBeGreaterThan(5000);
});

it('a can that bulges or hisses stays where it stands', () => {
  const of = /\b(?:can|cans|smoking), ?.*\b(?:bulg|hiss)|\bcans? (?:that|which) (?:bulge|hiss)/i;
  expect(sentences.filter(({ say }) => of.test(say)).length).toBeGreaterThan(2);
  expect(slips(of, /\bnot\b|\bstays? (?:away|where)|\bkept away\b/i)).toEqual([]);
});

it('a heater that burns fuel is not allowed by an open door', () => {
  const of = /\b(?:burns fuel|fuel heater|gas heater|kerosene heater)\b.*\bclosed\b/i;
  expect(slips(of, /$^/)).toEqual([]);
});

it('what burns the skin is rinsed for a time that is said', () => {
  const of = /\brinse (?:the )?skin|\bskin:.*rinse/i;
  expect(sentences.filter(({ say }) => of.test(say)).length).toBeGreaterThan(1);
  expect(slips(of, /\b(?:15 to 20|20) minutes\b/)).toEqual([]);
});

it('an oil finish gets no oil that never dries, whatever its repair goes on to', () => {
  const never = /\b(?:mineral oil|petroleum jelly)\b/i;
  const oiled = known.defects.filter(({ families }) =>
    families.every((family) => family === 'oil' || family === 'hardwax-oil'),
  );
  expect(oiled.length).toBeGreaterThan(4);
  const wrong = oiled.flatMap((defect) => {
    const ids = new Set(
      [...visits(defect.tree)].flatMap(({ branch }) => ('remedy' in branch ? [branch.remedy] : [])),
    );
    for (const id of ids) {
      const next = known.get('remedy', id)['if-not'].remedy;
      if (next) ids.add(next);
    }
    return [...ids].flatMap((id) =>
      known
        .get('remedy', id)
        .steps.filter(({ say }) => never.test(say) && !/^On shellac|\bon shellac\b/i.test(say))
        .map(({ say }) => `${defect.id}, ${id}: ${say}`),
    );
  });
  expect(wrong).toEqual([]);
});
