/** What a printed file holds, read from its operators (ISO 32000): as the browser writes it, no other program. */
import { inflateSync } from 'node:zlib';

type Matrix = readonly [number, number, number, number, number, number];
const ONE: Matrix = [1, 0, 0, 1, 0, 0];

const times = ([a, b, c, d, e, f]: Matrix, [A, B, C, D, E, F]: Matrix): Matrix => [
  a * A + b * C,
  a * B + b * D,
  c * A + d * C,
  c * B + d * D,
  e * A + f * C + E,
  e * B + f * D + F,
];

const objectsOf = (pdf: Buffer): ReadonlyMap<string, string> =>
  new Map(
    [...pdf.toString('latin1').matchAll(/(\d+) 0 obj\s([\s\S]*?)\sendobj/g)].map(([, id = '', body = '']) => [
      id,
      body,
    ]),
  );

/** Its length is told before it: what is packed may end in any byte. */
const unpacked = (object: string): string => {
  const [, length = '0'] = /\/Length (\d+)/.exec(object) ?? [];
  const [begin = ''] = /[\s\S]*?>> stream\r?\n/.exec(object) ?? [];
  const packed = object.slice(begin.length, begin.length + Number(length));
  return inflateSync(Buffer.from(packed, 'latin1')).toString('latin1');
};

/** How far down the sheet its last words stand, from 0 at the top to 1 at the bottom. */
const fillOf = (operators: string, height: number): number => {
  let at: Matrix = ONE;
  let line: Matrix = ONE;
  let lowest = height;
  const kept: Matrix[] = [];
  const found = operators.matchAll(/((?:-?[\d.]+ ){6})(cm|Tm)\b|(?<=\s)(q|Q|BT|Tj|TJ)(?=\s)/g);
  for (const [, numbers = '', sets, word] of found) {
    const given = numbers.trim().split(' ').map(Number) as unknown as Matrix;
    if (sets === 'cm') at = times(given, at);
    else if (sets === 'Tm') line = given;
    else if (word === 'q') kept.push(at);
    else if (word === 'Q') at = kept.pop() ?? ONE;
    else if (word === 'BT') line = ONE;
    else lowest = Math.min(lowest, times(line, at)[5]);
  }
  return 1 - lowest / height;
};

/** For each sheet how far down its last words stand. */
export const sheetsIn = (pdf: Buffer): readonly number[] => {
  const objects = objectsOf(pdf);
  return [...objects.values()]
    .filter((object) => /\/Type\s*\/Page\b/.test(object))
    .map((page) => {
      const [, content = ''] = /\/Contents (\d+) 0 R/.exec(page) ?? [];
      const [, height = ''] = /\/MediaBox \[0 0 [\d.]+ ([\d.]+)\]/.exec(page) ?? [];
      return fillOf(`\n${unpacked(objects.get(content) ?? '')}\n`, Number(height));
    });
};
