/** What has to be sent for a first answer, compressed: code and data beside an if-chain of the same content. */
import { gzipSync } from 'node:zlib';
import type { Knowledge } from '#engine/index.ts';
import { codeOf } from '../../bundle.ts';
import { median } from '../measure.ts';
import type { Row } from '../row.ts';
import { startOf } from '../start-data.ts';

const gz = (text: string): number => gzipSync(text, { level: 9 }).length;

export const byteRows = async (known: Knowledge): Promise<readonly Row[]> => {
  const code = await codeOf('test/bench/in-page/start.ts', 'start');
  const all = startOf(known, known.defects);
  const ones = known.defects.map((defect) => startOf(known, [defect]));
  const line = (what: string, name: string, bytes: number, base: number, goal?: number): Row => {
    const ratio = bytes / base;
    return {
      what,
      name,
      value: bytes,
      unit: 'bytes',
      ...(!what && { ratio: [ratio, ratio, ratio] as const }),
      ...(goal !== undefined && { goal: { most: goal, of: 'ratio' as const } }),
    };
  };
  const whole = gz(all.chain);
  const one = median(ones.map(({ chain }) => gz(chain)));
  return [
    line('sent for a first answer, gz', 'if-chain of all trees and rules', whole, whole),
    line('', 'engine code and tables of all', gz(code + all.data), whole),
    line(
      '',
      'engine code and one flaw’s tables',
      median(ones.map(({ data }) => gz(code + data))),
      whole,
      0.75,
    ),
    line('one flaw’s tree and all rules, gz', 'if-chain', one, one),
    line('', 'tables', median(ones.map(({ data }) => gz(data))), one),
    line('', 'engine code and tables', median(ones.map(({ data }) => gz(code + data))), one),
  ];
};
