/** `npm run find`: ranks as the page does. */
import { describe, expect, it } from 'vitest';
import { itAtLength } from '../thorough.ts';
import { run } from './command.ts';

const PATIENCE = { timeout: 240_000 };
type Found = { query: string; hits: { kind: string; id: string; score: number }[] };

describe('find', () => {
  itAtLength('lists the flaw first, best score first', PATIENCE, async () => {
    const { code, out } = await run('find', ['cloudy over black', '--json']);
    const found = JSON.parse(out) as Found;
    expect(code).toBe(0);
    expect(found.query).toBe('cloudy over black');
    expect(found.hits[0]).toMatchObject({ kind: 'defect', id: 'cloudy-film' });
    const scores = found.hits.map((hit) => hit.score);
    expect(scores).toEqual([...scores].sort((a, b) => b - a));
    expect(found.hits.length).toBeLessThanOrEqual(8);
  });

  it('reads one query a line from standard input, blank lines left out', PATIENCE, async () => {
    const { out } = await run(
      'find',
      ['-', '--json'],
      undefined,
      'dog hair stuck in it\n\ndrips down the leg\n',
    );
    const found = out
      .trim()
      .split('\n')
      .map((line) => JSON.parse(line) as Found);
    expect(found.map((one) => one.hits[0]?.id)).toEqual(['hairs-and-dust', 'runs-and-sags']);
  });

  itAtLength('says where to go where it finds nothing', PATIENCE, async () => {
    const { code, out } = await run('find', ['zzzzqq']);
    expect(out).toBe('"zzzzqq" lists nothing; start from what you see: npm start, then /see/\n');
    expect(code).toBe(0);
  });

  itAtLength('asks for words where there are none', PATIENCE, async () => {
    const { code, err } = await run('find', []);
    expect(err).toMatch(/^what are you looking for\? npm run find -- "/);
    expect(code).toBe(1);
  });
});
