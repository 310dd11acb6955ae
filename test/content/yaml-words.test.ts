/** What an author is told where the parser of YAML gives up: a broken text for each, with its line. */
import { expect, it } from 'vitest';
import { link } from '#engine/link.ts';
import { say } from '#engine/say.ts';
import { parseFrontMatter } from '../../content/tools/read.ts';

const told = (yaml: string): string => {
  const linked = link([
    { kind: 'source', id: 'a', file: 'a.mdx', ...parseFrontMatter(`---\n${yaml}\n---\n`) },
  ]);
  return linked.ok ? 'nothing' : say(linked.issues[0]);
};

it.each([
  ['title: One\nread: [one', 'a.mdx:3: a list that begins with [ is not closed; put ] at its end'],
  [
    'title: One\nread: {one: 1',
    'a.mdx:3: a group of fields that begins with { is not closed; put } at its end',
  ],
  ["title: 'One\nread: two", "a.mdx:2: a text that begins with ' is not closed; put ' at its end"],
  ['title: "One\nread: two', 'a.mdx:2: a text that begins with " is not closed; put " at its end'],
  [
    'title:One\nread: two',
    'a.mdx:2: a field has no colon after its name; write a colon and a space after the name',
  ],
  [
    'title: One\n  read: two',
    'a.mdx:2: a field has a text on its own line and more fields below it; take the text away, or move what stands below to the left',
  ],
  ['title:\n\tread: two', 'a.mdx:3: a tab stands at the beginning of this line; use spaces in its place'],
  [
    'title:\n  read: two\n one: three',
    'a.mdx:4: this line stands further to the left or right than the ones that it belongs to; let it begin below them',
  ],
  ['title: One\ntitle: Two', 'a.mdx:3: the field on this line stands twice; remove one of the two'],
  ['title: [One]]', 'a.mdx:2: a bracket is closed that was not opened; remove it, or open it'],
  [
    "title: 'One's'",
    "a.mdx:2: something follows after the end of a list or of a text in quotes; put the whole text between quotes: '…'; a ' inside it is written twice: ''",
  ],
  [
    'title: @one',
    "a.mdx:2: a text begins with a sign that means something else in YAML; put the whole text between quotes: '…'",
  ],
  [
    'title: - one',
    'a.mdx:2: a list begins on the line of its field; begin each - on a line of its own below it',
  ],
])('%j is told in plain words', (yaml, sentence) => {
  expect(told(yaml)).toBe(sentence);
});

it('says what the parser says where it has no words of its own', () => {
  expect(told('title: |x\n')).toMatch(
    /^a\.mdx:\d+: the front matter is not valid YAML: .+; mend the YAML on this line$/,
  );
});
