/** All that the proofs find stands in the order of files and lines, whichever proof found it. Invented knowledge with faults. */
import { expect, it } from 'vitest';
import { link } from '#engine/link.ts';
import type { RawEntry } from '#engine/model/knowledge.ts';
import { prove } from '#engine/prove/prove.ts';
import { readContent } from '../../../content/tools/read.ts';
import { act, defect, question, remedy } from '../small.ts';

const DOINGS = readContent(process.cwd()).filter(({ kind }) => kind === 'doing');
/** Deep places stand high up in the file, so that no proof tells them in order by chance. */
const placed = (entry: RawEntry): RawEntry => ({
  ...entry,
  lineOf: (path) => 90 - 10 * path.length - (typeof path[1] === 'number' ? path[1] : 0),
});
const steps = [
  { kind: 'coat', product: 'same', say: 'Lay one thin coat.' },
  { kind: 'sand', grit: 120, say: 'Sand it by hand.' },
  { kind: 'look', say: 'Brush on shellac.' },
];

it('is told by file and line', () => {
  const ask = { ask: 'round', yes: { leave: 'Press it flat.' }, no: { leave: 'Press it flat.' } };
  const linked = link(
    [
      question('round', { by: 'look' }),
      question('idle', { how: 'Scrape a spot.' }),
      remedy('z-mend', { wet: act('repair'), setting: act('lift') }, { steps }),
      remedy('a-mend', { setting: act('lift') }, { steps }),
      defect('spot', { ask: 'round', yes: { remedy: 'z-mend' }, no: { remedy: 'a-mend' } }),
      defect('haze', ask),
    ]
      .map(placed)
      .concat(DOINGS),
  );
  if (!linked.ok) throw new Error(JSON.stringify(linked.issues));
  const places = prove(linked.value).map(({ file, line }) => [file, line] as const);
  expect(places.length).toBeGreaterThan(12);
  expect(new Set(places.map(([file]) => file)).size).toBeGreaterThan(4);
  const sorted = places.toSorted(([a, one], [b, other]) => a.localeCompare(b, 'en') || one - other);
  expect(places).toEqual(sorted);
});
