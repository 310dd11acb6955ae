/** `npm run new -- defect …`: what it asks, in which order, and what it writes. The flaw and the answers are invented. */
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { find } from '#engine/find.ts';
import type { Sign } from '#engine/model/defect.ts';
import { matrixOf } from '#engine/see/matrix.ts';
import { fromFile, fromTerminal, unasked } from '../../content/tools/answers.ts';
import { readAnswers } from '../../content/tools/answers-file.ts';
import { interview } from '../../content/tools/interview.ts';
import { FOUND, nearOf } from '../../content/tools/near.ts';
import { questionId } from '../../content/tools/replies.ts';
import { readIndex } from '../../content/tools/said.ts';
import { MOST_SIGNS, tellingSign } from '../../content/tools/telling-signs.ts';
import { known } from '../content/real/knowledge.ts';
import { itAtLength } from '../thorough.ts';
import { clearCopies, copyOfContent, run } from './command.ts';

const PATIENCE = { timeout: 300_000 };
const root = process.cwd();
const GLUE = {
  summary: 'A yellow, smooth spot next to a joint where dried glue kept the stain out.',
  families: ['water-based', 'oil-based'],
  alike: ['dull-spots', 'tannin-bleed'],
  signs: { 'sheen-only': 'no', 'one-or-two-spots': 'mostly-yes', 'only-in-low-light': 'no' },
  mark: 'Is it right beside a joint?',
  repairs: ['sand-back-and-restain', 'Cut the glue away'],
  decides: { 'sand-back-and-restain': 'bigger-than-a-coin' },
};

afterAll(clearCopies, 60_000);

describe('what looks like a new page', () => {
  it('is found by its words, for a flaw, a repair and a question', () => {
    const ids = (
      ...told: Parameters<typeof nearOf> extends [unknown, unknown, ...infer Rest] ? Rest : never
    ) => nearOf(known, root, ...told).map(({ id }) => id);
    expect(ids('remedy', 'scrape-off-glue')).toContain('scrape-the-glue-off');
    expect(ids('question', 'pale-with-spirits')).toContain('pale-when-wet-with-spirits');
    expect(ids('defect', 'white-circles', ['A white ring where a wet glass stood'])[0]).toBe('white-rings');
    expect(ids('question', 'x', ['Does it vanish when you wet it?'])[0]).toBe('vanishes-when-wetted');
  });
});

describe('what is near a flaw', () => {
  it('is what the search finds by the name and by the sentence', () => {
    const index = readIndex(known, root);
    const told = ['Torn tape lip', 'A ragged ridge of finish where the masking tape was pulled off late.'];
    const near = nearOf(known, root, 'defect', 'torn-tape-lip', told).map(({ id }) => id);
    const searched = told.flatMap((text) =>
      find(index, text, { limit: FOUND }).flatMap(({ kind, id }) => (kind === 'defect' ? [id] : [])),
    );
    expect(searched.length).toBeGreaterThan(0);
    expect(near.slice(0, new Set(searched).size).sort()).toEqual([...new Set(searched)].sort());
  });
});

describe('the id of a question', () => {
  it.each([
    ['Is it right beside a joint?', 'right-beside-a-joint'],
    ['Does it look yellow next to the joint?', 'look-yellow'],
    ['Is the lip torn along the edge of the tape?', 'lip-torn-along-the-edge'],
    ['Did the tape pull at the edge?', 'tape-pull-at-the-edge'],
    ['Has it a lip that stands in the corner?', 'a-lip-that-stands'],
  ])('of "%s" is %s', (ask, id) => expect(questionId(ask)).toBe(id));
});

describe('a file of answers', () => {
  const guide = readFileSync(join(root, 'content/README.md'), 'utf8');
  const example = /```json\n([\s\S]+?)```/.exec(guide)?.[1] ?? '';
  const told = (change: (answers: Record<string, unknown>) => object) => {
    const answers = JSON.parse(example) as Record<string, unknown>;
    const read = readAnswers(known, 'answers.json', JSON.stringify(change(answers), null, 2));
    return 'faults' in read ? read.faults : [];
  };

  it('is shown whole in the guide, and every answer of it is asked for', async () => {
    const read = readAnswers(known, 'answers.json', example);
    if ('faults' in read) throw new Error(read.faults.join('\n'));
    const asked = new Set<string>();
    const answers = fromFile(read.told, () => undefined);
    const { defect } = await interview(known, root, 'glue-spots', (prompt) => {
      asked.add(prompt.key);
      return answers(prompt);
    });
    expect(defect).toMatchObject({ name: 'Glue spots', alike: ['dull-spots', 'tannin-bleed'] });
    expect(defect.signs.get('sheen-only')).toBe('no');
    expect(unasked(read.told, asked)).toEqual([]);
  });

  it('is refused for fields that there are not and for answers that it lacks, each by name', () => {
    expect(
      told(({ summary, signs, ...rest }) => ({ ...rest, sumary: summary, sings: signs, color: 'red' })),
    ).toEqual([
      expect.stringMatching(/^answers\.json:\d+: there is no field "sumary" here; did you mean "summary"\?$/),
      expect.stringMatching(/^answers\.json:\d+: there is no field "sings" here; did you mean "signs"\?$/),
      expect.stringMatching(/^answers\.json:\d+: there is no field "color" here; use one of name, summary, /),
    ]);
    expect(told(() => ({}))).toEqual(
      ['summary', 'alike', 'signs'].map(
        (key) => `answers.json:1: the field "${key}" is missing; add a line ${key}: …`,
      ),
    );
  });

  it('is refused for ids that are not there, for a sign that is none, and where it cannot be read', () => {
    expect(told((all) => ({ ...all, alike: ['dull-spot'] }))).toEqual([
      'answers.json:5: there is no defect "dull-spot"; did you mean "dull-spots"?',
    ]);
    expect(told((all) => ({ ...all, signs: { 'sheen-onli': 'no' } }))[0]).toContain(
      'did you mean "sheen-only"?',
    );
    expect(told((all) => ({ ...all, signs: { 'sheen-only': 'maybe' } }))[0]).toContain(
      '"maybe" cannot stand',
    );
    const broken = readAnswers(known, 'answers.json', '{ "name": [');
    expect('faults' in broken && broken.faults[0]).toMatch(
      /^answers\.json:1: a "\[" is opened after "name:" and never closed; /,
    );
  });

  itAtLength('writes nothing where it is refused, or holds what nothing asks for', PATIENCE, async () => {
    const folder = copyOfContent();
    writeFileSync(
      join(folder, 'few.json'),
      JSON.stringify({ summary: GLUE.summary, famlies: ['oil-based'] }),
    );
    writeFileSync(
      join(folder, 'more.json'),
      JSON.stringify({ ...GLUE, decides: { ...GLUE.decides, 'rub-out-the-ring': 'sheen-only' } }),
    );
    const [few, more, none] = await Promise.all(
      ['few.json', 'more.json', 'none.json'].map((file) =>
        run('new', ['defect', 'glue-spots', '--answers', file], folder),
      ),
    );
    expect([few?.code, more?.code, none?.code]).toEqual([1, 1, 1]);
    expect(few?.err).toContain('did you mean "families"?');
    expect(few?.err).toContain('"alike" is missing');
    expect(more?.err).toContain('more.json: nothing asks for decides.rub-out-the-ring here');
    expect(none?.err).toBe('there is no file none.json; nothing was written\n');
    for (const { err } of [few, more, none].filter((one) => one !== undefined))
      expect(err).not.toMatch(/^\s+at /m);
    expect(existsSync(join(folder, 'content/defects/glue-spots.mdx'))).toBe(false);
    expect(existsSync(join(folder, 'content/questions/right-beside-a-joint.mdx'))).toBe(false);
  });
});

describe('the signs that are asked', () => {
  const matrix = matrixOf(known);
  /** Asks until nothing more tells; `answer` gives what the new flaw shows. */
  const asked = (alike: readonly string[], answer: (id: string) => Sign): Map<string, Sign> => {
    const signs = new Map<string, Sign>();
    for (;;) {
      const id = tellingSign(matrix, alike, signs);
      if (id === undefined) return signs;
      signs.set(id, answer(id));
    }
  };

  it('are twelve at most, none twice, and begin with one that splits the look-alikes', () => {
    const alike = ['dull-spots', 'white-rings'];
    const signs = asked(alike, () => 'either');
    expect(signs.size).toBe(MOST_SIGNS);
    const [first = ''] = signs.keys();
    const shown = alike.map(
      (id) => matrix.signs[matrix.questions.indexOf(first)]?.[matrix.defects.indexOf(id)],
    );
    expect(new Set(shown).size).toBe(2);
  });

  it('tell every flaw from its own look-alikes, answered as its file answers', { timeout: 120_000 }, () => {
    const share = known.defects.map((defect) => {
      const row = matrix.defects.indexOf(defect.id);
      const signAt = (id: string, at: number) => matrix.signs[matrix.questions.indexOf(id)]?.[at];
      const NAMES: Record<string, Sign> = { 0: 'no', 1: 'yes', 2: 'either', 3: 'mostly-yes', 4: 'mostly-no' };
      const signs = asked(defect['look-alikes'], (id) => NAMES[signAt(id, row) ?? '2'] ?? 'either');
      const apart = defect['look-alikes'].filter((other) =>
        [...signs].some(([id, sign]) => {
          const theirs = signAt(id, matrix.defects.indexOf(other));
          return (sign === 'yes' && theirs === '0') || (sign === 'no' && theirs === '1');
        }),
      );
      return apart.length / Math.max(1, defect['look-alikes'].length);
    });
    const mean = share.reduce((sum, one) => sum + one, 0) / share.length;
    expect(mean).toBeGreaterThan(0.9);
  });
});

describe('the terminal', () => {
  it('asks again where an answer cannot be used, and tells how to check when asked', async () => {
    const given = ['?', 'perhaps', 'y'];
    const printed: string[] = [];
    const answers = fromTerminal(
      async () => given.shift() ?? '',
      (line) => printed.push(line),
    );
    const refuse = (answer: string) => (answer === 'y' ? undefined : 'answer with y');
    const prompt = { key: 'a', lines: ['List'], ask: 'Is it?', help: 'Look at it.', refuse };
    expect(await answers(prompt)).toBe('y');
    expect(printed).toEqual(['List', '  Look at it.', '  answer with y']);
  });

  it('takes what is usual where nothing is answered', async () => {
    const { defect, mirrors } = await interview(known, root, 'glue-spots', async () => '');
    expect(defect).toMatchObject({
      name: 'Glue spots',
      often: 'occasional',
      question: undefined,
      remedies: [],
    });
    expect(defect.alike.length).toBeGreaterThan(0);
    expect(mirrors.size).toBe(0);
  });

  it('tells which answer of a file cannot be used', async () => {
    const answers = fromFile({ ...GLUE, often: 'sometimes' }, () => undefined);
    await expect(interview(known, root, 'glue-spots', answers)).rejects.toThrow(
      '"sometimes" at often: "sometimes" is none of these; give numbers or names',
    );
  });
});

describe('what is written', () => {
  itAtLength('passes the check but for what only the author knows', PATIENCE, async () => {
    const folder = copyOfContent();
    writeFileSync(join(folder, 'answers.json'), JSON.stringify(GLUE));
    const { code, out, err } = await run(
      'new',
      ['defect', 'glue-spots', '--answers', 'answers.json'],
      folder,
    );
    expect({ code, err }).toEqual({ code: 0, err: '' });
    for (const part of [
      'Wrote content/defects/glue-spots.mdx, content/questions/right-beside-a-joint.mdx, content/remedies/cut-the-glue-away.mdx',
      'Three things only you know',
      '1. what people type who have it: content/defects/glue-spots.mdx:',
    ])
      expect(out).toContain(part);
    expect(out).not.toContain('does not fit yet');
    const read = (file: string) => readFileSync(join(folder, file), 'utf8');
    expect(read('content/defects/glue-spots.mdx')).toContain('\n  right-beside-a-joint: yes\n');
    for (const other of GLUE.alike)
      expect(read(`content/defects/${other}.mdx`)).toContain('\nsigns:\n  right-beside-a-joint: no\n');
    const checked = await run('check', [], folder);
    const told = checked.err.split('\n').filter((line) => line.startsWith('content/'));
    expect(told.length).toBeGreaterThan(10);
    expect(told.filter((line) => !/^content\/.+:\d+: .* is what the template left;/.test(line))).toEqual([]);
  });
});
