/** Wordings as an author writes them, and what of a sentence they find. Invented. */
import { describe, expect, it } from 'vitest';
import { patternOfWordings } from '#engine/hear/words/wordings.ts';
import { Wording } from '#engine/model/wordings.ts';

const finds = (wording: string, text: string): boolean =>
  new RegExp(patternOfWordings([wording]), 'i').test(text);

describe('a wording', () => {
  it.each([
    ['how long|soon', 'And how soon is it?', 'how much longer'],
    ['how long', 'How long', 'somehow long'],
    ['recoat*', 'recoating it', 'precoat'],
    ['when i|we? can', 'when can it', 'when they can'],
    ['put _ _? back', 'put the lamp back', 'put back'],
    ['can ... over', 'can I brush this over wax', 'can I? Not over wax'],
    ['paint _? over', 'paint right over', 'paint it right over'],
    ["won't dry", 'it won’t dry', 'it will dry'],
    ["won't dry", 'it wont dry', 'it won dry'],
    ['re-coat', 're-coat', 're coat'],
  ])('%s is found in "%s", not in "%s"', (wording, has, hasNot) => {
    expect(finds(wording, has)).toBe(true);
    expect(finds(wording, hasNot)).toBe(false);
  });
  it.each(['How long', 'how (long|soon)', 'how  long', '... long', 'how ...', 'how long?', 'how|', '*'])(
    'is refused with what to do: %s',
    (wording) => {
      const read = Wording.safeParse(wording);
      expect(read.success).toBe(false);
      expect(read.error?.issues[0]?.message).toMatch(/write words in small letters|must not be one that/);
    },
  );
});
