import { expect, it } from 'vitest';
import { earOf } from '#engine/hear/words/match.ts';
import { isKind, wordsIn } from '#engine/hear/words/words.ts';
import { buildLexicon, hear } from '#engine/hear.ts';
import { WORD_KINDS } from '#engine/model/word-kinds.ts';
import { keysOf } from '#engine/plain/entry-of.ts';
import { readHearContent, readHearing, readSearchWords } from '../../../content/tools/hear.ts';
import { known } from './hearing.ts';

const root = process.cwd();
const content = readHearContent(known, root);
const hearing = readHearing(known, root);

it('holds no word that another spelling is put for, or that is cut in two, before it is looked up', () => {
  const ear = earOf(hearing.lexicon);
  const lost = keysOf(WORD_KINDS).flatMap((kind) =>
    content.kinds[kind].filter((text) => {
      const [word, more] = wordsIn(text, ear);
      return more !== undefined || !isKind(word, kind);
    }),
  );
  expect(lost).toEqual([]);
});

it('holds each word of a kind once', () => {
  for (const kind of keysOf(WORD_KINDS))
    expect(content.kinds[kind], kind).toEqual([...new Set(content.kinds[kind])]);
});

// The word is invented, so that no list has it.
it('is understood at the next build, where an author adds a word', () => {
  const text = 'We glimmed the table three hours ago.';
  const more = { ...content, kinds: { ...content.kinds, laying: [...content.kinds.laying, 'glimmed'] } };
  const lexicon = buildLexicon(known, more, readSearchWords(root));
  const hours = (ear: typeof hearing) =>
    hear(ear, text).facts.find(({ fact }) => fact === 'hours-since-coat')?.sure ?? 0;
  expect(hours({ ...hearing, lexicon })).toBeGreaterThan(hours(hearing));
});

it('hears a slip in what measures the air, as the content lists it', () => {
  const celsius = (units: Record<string, string>) =>
    hear(
      { ...hearing, lexicon: { ...hearing.lexicon, airUnits: units } },
      'varnished it at 50 degres',
    ).facts.some(({ fact }) => fact === 'air-celsius');
  expect([celsius({ degrees: 'deg' }), celsius({})]).toEqual([true, false]);
});
