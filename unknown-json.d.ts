/** What `JSON.parse` gives is whatever the text held: it is looked at, or read by a schema, before it is anything. */
interface JSON {
  parse(text: string, reviver?: (this: unknown, key: string, value: unknown) => unknown): unknown;
}
