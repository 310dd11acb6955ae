/** `npm run walk`: the answer in the terminal, and a whole sentence for every slip. */
import { describe, expect, it } from 'vitest';
import { run } from './command.ts';

const PATIENCE = { timeout: 240_000 };

describe('walk', () => {
  for (const [defect, told, verdict] of [
    ['cloudy-film', ['--fact', 'stage=wet', '--fact', 'family=water-based'], 'HANDS OFF'],
    ['bubbles', ['--fact', 'stage=setting'], 'HANDS OFF'],
    ['hairs-and-dust', ['--fact', 'stage=wet', 'just-laid=yes', 'easy-to-grip=yes'], 'LIFT IT OUT NOW, ONCE'],
    [
      'pools',
      [
        '--fact',
        'stage=cured',
        'only-in-grooves-and-corners=yes',
        'colored-stain=no',
        'white-or-milky=no',
        'seen-at-arms-length=no',
      ],
      'LEAVE IT AS IT IS',
    ],
    [
      'lap-marks',
      [
        '--fact',
        'stage=recoatable',
        '--fact',
        'family=water-based',
        'one-tool-wide=yes',
        'felt-with-eyes-shut=yes',
      ],
      'GO ON, REPAIR IT',
    ],
  ] as const)
    it(`gives the action for ${defect}`, PATIENCE, async () => {
      const { code, out, err } = await run('walk', [defect, ...told]);
      expect(err).toBe('');
      expect(out).toContain(verdict);
      expect(code).toBe(0);
    });

  it('asks for the stage first, with the values it takes', PATIENCE, async () => {
    const { out } = await run('walk', ['bubbles']);
    expect(out).toContain('How dry is it?\n  --fact stage=wet | setting | dry-to-touch | recoatable | cured');
  });

  it('numbers the steps of a repair, each caution before its step', PATIENCE, async () => {
    const told = ['stage=recoatable', 'family=water-based', 'age=unknown', 'piece=food-surface'].flatMap(
      (fact) => ['--fact', fact],
    );
    const { out } = await run('walk', ['lap-marks', ...told, 'one-tool-wide=yes', 'felt-with-eyes-shut=yes']);
    expect(out).toMatch(/^STOP FIRST: The old finish may hold lead$/m);
    const lines = out.split('\n');
    const caution = lines.findIndex((line) => line.includes('! Dust:'));
    const sand = lines.findIndex((line) => /^ {2}\d+\. \[P\d+\]/.test(line));
    expect(caution).toBeGreaterThan(0);
    expect(caution).toBeLessThan(sand);
    // What hangs on facts alone stands by itself, below the steps, once.
    const apart = lines.flatMap((line, at) => (line.startsWith('Caution: ') ? [{ line, at }] : []));
    expect(apart.map(({ line }) => line)).toEqual(['Caution: Dry is not cured', 'Caution: Food on it?']);
    expect(apart[0]?.at).toBeGreaterThan(lines.findIndex((line) => line.startsWith('  If not: ')));
  });

  it('prints the same outcome as JSON', PATIENCE, async () => {
    const { out } = await run('walk', ['bubbles', '--fact', 'stage=setting', '--json']);
    const walked = JSON.parse(out) as {
      kind: string;
      action: { do: string };
      trace: { fact: string; value: string }[];
    };
    expect(walked).toMatchObject({ kind: 'outcome', action: { do: 'leave' } });
    expect(walked.trace).toContainEqual(expect.objectContaining({ fact: 'stage', value: 'setting' }));
  });

  for (const [slip, args, said] of [
    [
      'no defect',
      [],
      'which defect? npm run walk -- <defect> [--fact name=value …] [question=answer …] [--json]',
    ],
    ['an unknown defect', ['bubles'], 'there is no defect "bubles"; did you mean "bubbles"?'],
    ['an unknown fact', ['bubbles', '--fact', 'stge=wet'], 'there is no fact "stge"; did you mean "stage"?'],
    [
      'a bad value',
      ['bubbles', '--fact', 'stage=damp'],
      '"damp" is no value of stage; use one of wet, setting, dry-to-touch, recoatable, cured',
    ],
    [
      'a number out of range',
      ['bubbles', '--fact', 'air-celsius=99'],
      'air-celsius is "99"; it takes a number from -20 to 50 °C',
    ],
    [
      'no number',
      ['bubbles', '--fact', 'air-celsius=warm'],
      'air-celsius is "warm"; it takes a number from -20 to 50 °C',
    ],
    [
      'an empty number',
      ['bubbles', '--fact', 'air-celsius='],
      'air-celsius is ""; it takes a number from -20 to 50 °C',
    ],
    [
      'an unknown question',
      ['bubbles', 'rond-spots=yes'],
      'there is no question "rond-spots"; did you mean "round-spots"?',
    ],
    ['a bad answer', ['bubbles', 'round-spots=maybe'], 'round-spots is "maybe"; answer yes, no or unsure'],
    ['no pair', ['bubbles', 'oops'], '"oops" is not name=value; write --fact stage=wet or round-spots=yes'],
  ] as const)
    it(`tells ${slip} in one line`, PATIENCE, async () => {
      const { code, out, err } = await run('walk', args);
      expect(err).toBe(`${said}\n`);
      expect(out).toBe('');
      expect(code).toBe(1);
    });

  it('tells an unknown option in words, not in a stack of calls', PATIENCE, async () => {
    const { code, err } = await run('walk', ['bubbles', '--facts', 'stage=wet']);
    expect(code).toBe(1);
    expect(err).toContain('--facts');
    expect(err).not.toMatch(/^\s+at /m);
  });
});
