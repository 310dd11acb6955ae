/**
 * A pack, unpacked. It begins with the length of its head in bytes, as four bytes with the highest first; then the
 * head as JSON; then the parts, one behind the other. What many pages share (their styles) is one part for all.
 */
export type PackHead = {
  /** Bytes of each part. */
  readonly parts: readonly number[];
  /** Address → its media type and the numbers of its parts. */
  readonly files: Readonly<Record<string, readonly [type: string, ...parts: number[]]>>;
};

type Found = { readonly type: string; readonly parts: readonly Uint8Array<ArrayBuffer>[] };

const isHead = (head: unknown): head is PackHead =>
  typeof head === 'object' &&
  head !== null &&
  'parts' in head &&
  Array.isArray(head.parts) &&
  'files' in head;

/** Reads one address out of a pack; nothing where it is not in there. */
export type Pack = (path: string) => Found | undefined;

export const readPack = (bytes: ArrayBuffer): Pack => {
  const length = new DataView(bytes).getUint32(0);
  const head: unknown = JSON.parse(new TextDecoder().decode(new Uint8Array(bytes, 4, length)));
  if (!isHead(head)) throw new SyntaxError('a pack without a head');
  const starts: number[] = [];
  let at = 4 + length;
  for (const part of head.parts) {
    starts.push(at);
    at += part;
  }
  return (path) => {
    const file = Object.hasOwn(head.files, path) ? head.files[path] : undefined;
    if (!file) return undefined;
    const [type, ...parts] = file;
    return { type, parts: parts.map((n) => new Uint8Array(bytes, starts[n] ?? 0, head.parts[n] ?? 0)) };
  };
};
