/** One file with all its mutants in it, each behind a switch: `$m(7)` is true while mutant 7 is tried. */
import { stripTypeScriptTypes } from 'node:module';
import ts from 'typescript';
import { type Change, changesOf, parse } from './operators.ts';

export type Mutant = {
  readonly id: number;
  readonly file: string;
  readonly line: number;
  readonly column: number;
  readonly kind: string;
  readonly was: string;
  readonly by: string;
};

type Numbered = Change & { readonly id: number };
/** Where a switch is written: a range, and whether it holds an expression, a block or the statements of a case. */
type Spot = { readonly from: number; readonly to: number; readonly changes: Numbered[] };

const bounds = (change: Change): readonly [number, number] =>
  change.kind === 'case' ? [change.from, change.to] : [change.at.getStart(), change.at.getEnd()];

const switched = (spot: Spot, inner: string, text: string): string => {
  const [{ kind, id }] = spot.changes as [Numbered];
  if (kind === 'block') return `{if($m(${id})){}else${inner}}`;
  if (kind === 'case') return `if($m(${id})){}else{${inner}}`;
  const others = spot.changes.map(
    (one) => `$m(${one.id})?(${text.slice(spot.from, one.from)}${one.by}${text.slice(one.to, spot.to)}):`,
  );
  return `(${others.join('')}(${inner}))`;
};

const rendered = (spots: readonly Spot[], text: string, from: number, to: number): string => {
  let out = '';
  let at = from;
  for (let i = 0; i < spots.length; ) {
    const spot = spots[i] as Spot;
    let next = i + 1;
    while (next < spots.length && (spots[next] as Spot).to <= spot.to) next += 1;
    const inner = rendered(spots.slice(i + 1, next), text, spot.from, spot.to);
    out += text.slice(at, spot.from) + switched(spot, inner, text);
    at = spot.to;
    i = next;
  }
  return out + text.slice(at, to);
};

/** The mutants of a file, numbered on from `first`, and its code as a program reads it. */
export const instrument = (
  file: string,
  text: string,
  first: number,
): { readonly mutants: readonly Mutant[]; readonly code: string } => {
  const source = parse(file, text);
  const changes: Numbered[] = changesOf(source).map((change, i) => ({ ...change, id: first + i }));
  const spots = new Map<string, Spot>();
  for (const change of changes) {
    const [from, to] = bounds(change);
    const key = `${from} ${to} ${['block', 'case'].includes(change.kind)}`;
    const spot = spots.get(key) ?? { from, to, changes: [] };
    spot.changes.push(change);
    spots.set(key, spot);
  }
  const inOrder = [...spots.values()].sort((a, b) => a.from - b.from || b.to - a.to);
  const code = rendered(inOrder, text, 0, text.length);
  const short = (what: string) => what.replace(/\s+/g, ' ').slice(0, 120);
  const mutants = changes.map(({ id, kind, from, to, by }) => {
    const { line, character } = ts.getLineAndCharacterOfPosition(source, from);
    return { id, file, line: line + 1, column: character + 1, kind, was: short(text.slice(from, to)), by };
  });
  return { mutants, code: stripTypeScriptTypes(code) };
};

/** A file that is not tried, as a program reads it. */
export const plain = (text: string): string => stripTypeScriptTypes(text);
