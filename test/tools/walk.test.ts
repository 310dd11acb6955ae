/** `npm run walk`: the answer in the terminal, and a whole sentence for every slip. */
import { describe, expect, it } from 'vitest';
import { walkCommand } from '../../content/tools/walk.ts';
import { Refused } from '../../content/tools/walk-args.ts';
import { known } from '../content/real/knowledge.ts';
import { run } from './command.ts';

const PATIENCE = { timeout: 240_000 };
const printed = (...args: readonly string[]) => walkCommand(known, args);

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
    it(`gives the action for ${defect}`, () => {
      expect(printed(defect, ...told)).toContain(verdict);
    });

  it('goes to the output and ends with 0; a slip goes to the errors and ends with 1', PATIENCE, async () => {
    const [good, slip] = await Promise.all([
      run('walk', ['bubbles', '--fact', 'stage=setting']),
      run('walk', ['bubles']),
    ]);
    expect(good).toEqual({ code: 0, out: `${printed('bubbles', '--fact', 'stage=setting')}\n`, err: '' });
    expect(slip).toEqual({ code: 1, out: '', err: 'there is no defect "bubles"; did you mean "bubbles"?\n' });
  });

  it('asks for the stage first, with the values it takes', () => {
    expect(printed('bubbles')).toContain(
      'How dry is it?\n  --fact stage=wet | setting | dry-to-touch | recoatable | cured',
    );
  });

  it('numbers the steps of a repair, each caution before its step', () => {
    const told = ['stage=recoatable', 'family=water-based', 'age=unknown', 'piece=food-surface'].flatMap(
      (fact) => ['--fact', fact],
    );
    const answers = ['one-tool-wide=yes', 'felt-with-eyes-shut=yes'];
    expect(printed('lap-marks', ...told, ...answers)).toMatch(
      /Closed from step \d+ of \d+ on\. If a test of every layer/,
    );
    const out = printed('lap-marks', ...told, ...answers, '--settled');
    expect(out).toMatch(/^STOP FIRST: The old finish may hold lead$/m);
    const lines = out.split('\n');
    const caution = lines.findIndex((line) => line.includes('! Dust:'));
    const sand = lines.findIndex((line) => /^ {2}\d+\. \[P\d+\]/.test(line));
    expect(caution).toBeGreaterThan(0);
    expect(caution).toBeLessThan(sand);
    // What hangs on facts alone stands by itself, once: a caution before the steps, a note below them.
    const apart = lines.flatMap((line, at) => (line.startsWith('Caution: ') ? [{ line, at }] : []));
    expect(apart.map(({ line }) => line)).toEqual(['Caution: Food on it?', 'Caution: Dry is not cured']);
    expect(apart[0]?.at).toBeLessThan(sand);
    expect(apart[1]?.at).toBeGreaterThan(lines.findIndex((line) => line.startsWith('  If not: ')));
  });

  it('prints the same outcome as JSON', () => {
    const walked = JSON.parse(printed('bubbles', '--fact', 'stage=setting', '--json')) as {
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
    it(`tells ${slip} in one line`, () => {
      expect(() => printed(...args)).toThrow(new Refused(said));
    });

  it('tells an unknown option in words', () => {
    expect(() => printed('bubbles', '--facts', 'stage=wet')).toThrow(Refused);
    expect(() => printed('bubbles', '--facts', 'stage=wet')).toThrow('--facts');
  });
});
