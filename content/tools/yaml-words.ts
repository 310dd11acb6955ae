/** What the parser of YAML stumbles over, and the way out, for someone who has never seen YAML. */
export type PlainYaml = { readonly message: string; readonly mend: string };

const closing = (what: string, opened: string, close: string): PlainYaml => ({
  message: `${what} that begins with ${opened} is not closed`,
  mend: `put ${close} at its end`,
});

/** What a parser says → what is meant. The first that fits is told. */
const MEANT: readonly (readonly [says: RegExp, meant: PlainYaml])[] = [
  [/Flow sequence .*end with a \]/, closing('a list', '[', ']')],
  [/Flow map .*end with a \}/, closing('a group of fields', '{', '}')],
  [/Missing closing '/, closing('a text', "'", "'")],
  [/Missing closing "/, closing('a text', '"', '"')],
  [
    /Implicit keys need to be on a single line|Implicit map keys need/,
    { message: 'a field has no colon after its name', mend: 'write a colon and a space after the name' },
  ],
  [
    /Nested mappings are not allowed in compact mappings/,
    {
      message: 'a field has a text on its own line and more fields below it',
      mend: 'take the text away, or move what stands below to the left',
    },
  ],
  [
    /Tabs are not allowed/,
    { message: 'a tab stands at the beginning of this line', mend: 'use spaces in its place' },
  ],
  [
    /All (?:mapping items|collection items|sequence items) must start at the same column/,
    {
      message: 'this line stands further to the left or right than the ones that it belongs to',
      mend: 'let it begin below them',
    },
  ],
  [
    /Map keys must be unique/,
    { message: 'the field on this line stands twice', mend: 'remove one of the two' },
  ],
  [
    /Unexpected flow-(?:seq|map)-end token/,
    { message: 'a bracket is closed that was not opened', mend: 'remove it, or open it' },
  ],
  [
    /Unexpected scalar at node end/,
    {
      message: 'something follows after the end of a list or of a text in quotes',
      mend: "put the whole text between quotes: '…'; a ' inside it is written twice: ''",
    },
  ],
  [
    /cannot start with/,
    {
      message: 'a text begins with a sign that means something else in YAML',
      mend: "put the whole text between quotes: '…'",
    },
  ],
  [
    /block-seq-ind on same line with key/,
    { message: 'a list begins on the line of its field', mend: 'begin each - on a line of its own below it' },
  ],
];

/** What a message of the parser means, or nothing where it is not met often enough to have words of its own. */
export const plainYaml = (says: string): PlainYaml | undefined => MEANT.find(([one]) => one.test(says))?.[1];
