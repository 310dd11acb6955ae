/** `npm run new` and `npm run check`, in a copy of the content. */
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { say } from '#engine/faults/say.ts';
import { provenKnowledge } from '../../content/tools/knowledge.ts';
import { templates } from '../../content/tools/templates.ts';
import { itAtLength } from '../thorough.ts';
import { clearCopies, copyOfContent, run } from './command.ts';

const PATIENCE = { timeout: 300_000 };
const read = (folder: string, file: string) => readFileSync(join(folder, file), 'utf8');
const faults = (err: string) => err.split('\n').filter((line) => line.startsWith('content/'));

afterAll(clearCopies, 60_000);

describe('new', () => {
  const KINDS = {
    defect: 'defects',
    question: 'questions',
    remedy: 'remedies',
    rule: 'rules',
    source: 'sources',
    term: 'terms',
  };
  /** What only the author knows: where it is linked from, how it looks, and what tells it from the others. */
  const AUTHORS =
    /no flaw (?:leads to|asks)|no claim rests on|no picture is described|reads at US grade|is what the template left/;

  itAtLength(
    'writes files of every kind that link as they stand, but for what only the author knows',
    PATIENCE,
    async () => {
      // One kind through the terminal; the others by the same templates, without a process each.
      const { defect, ...others } = KINDS;
      const drafts = Object.entries(others).map(
        ([kind, folder]) =>
          [
            `content/${folder}/drips-on-legs.mdx`,
            templates[kind as keyof typeof templates]('drips-on-legs', '2026-01-31'),
          ] as const,
      );
      const copy = copyOfContent(Object.fromEntries(drafts));
      const file = `content/${defect}/drips-on-legs.mdx`;
      const { code, out, err } = await run('new', ['defect', 'drips-on-legs', '--blank'], copy);
      expect({ code, err }).toEqual({ code: 0, err: '' });
      expect(out).toMatch(
        new RegExp(`Wrote ${file}. Next: fill in what stands in <angle brackets>, then npm run check.\n$`),
      );
      // The trade's name for it is there already, and it is told.
      expect(out).toContain('Runs and sags (runs-and-sags)');
      for (const text of [read(copy, file), ...drafts.map(([, text]) => text)])
        expect(text).toMatch(/<[A-Z][^>]+>/);
      const own = provenKnowledge(copy)
        .issues.map(say)
        .filter((line) => line.includes('drips-on-legs'));
      expect(own.length).toBeGreaterThan(drafts.length);
      expect(own.filter((line) => !AUTHORS.test(line))).toEqual([]);
    },
  );

  it('never writes over a file', PATIENCE, async () => {
    const copy = copyOfContent({ 'content/terms/tack.mdx': 'mine' });
    const again = await run('new', ['term', 'tack'], copy);
    expect(again).toMatchObject({
      code: 1,
      err: 'content/terms/tack.mdx is there already; edit it or choose another id\n',
    });
    expect(read(copy, 'content/terms/tack.mdx')).toBe('mine');
  });

  itAtLength('tells how it is used where it is asked, or where no file is named', PATIENCE, async () => {
    const [help, bare] = await Promise.all([
      run('new', ['--help']),
      run('new', ['defect', 'x', '--answers']),
    ]);
    const usage = /^npm run new -- <kind> <id> \[--answers <file> \| --blank\]; kinds: .+\n$/;
    expect(help).toMatchObject({ code: 0, out: expect.stringMatching(usage), err: '' });
    expect(bare).toMatchObject({ code: 1, out: '', err: expect.stringMatching(usage) });
  });

  itAtLength(
    'says that nobody can be asked where there is no terminal, and writes nothing',
    PATIENCE,
    async () => {
      const copy = copyOfContent();
      const { code, err } = await run('new', ['defect', 'torn-lip'], copy, 'Torn lip\nA ragged lip.\n');
      expect(code).toBe(1);
      expect(err).toBe(
        'no terminal here: nobody can be asked. Give --answers <file>, or --blank for a file to fill in; nothing was written\n',
      );
      expect(existsSync(join(copy, 'content/defects/torn-lip.mdx'))).toBe(false);
    },
  );

  itAtLength('tells a kind or an id that it cannot use, and writes nothing', PATIENCE, async () => {
    const copy = copyOfContent();
    const [kind, id, none] = await Promise.all([
      run('new', ['board', 'x'], copy),
      run('new', ['defect', 'Bad_Id'], copy),
      run('new', [], copy),
    ]);
    expect(kind.err).toMatch(
      /^npm run new -- <kind> <id> \[--answers <file> \| --blank\]; kinds: question, remedy, defect, source, rule, term/,
    );
    expect(id.err).toBe(
      '"Bad_Id" is not a usable id; use lower-case words joined by hyphens, like drips-on-legs\n',
    );
    expect([kind.code, id.code, none.code]).toEqual([1, 1, 1]);
    expect(existsSync(join(copy, 'content/defects/Bad_Id.mdx'))).toBe(false);
  });
});

describe('check', () => {
  itAtLength('exits 0 on the content as it stands', PATIENCE, async () => {
    const { code, out, err } = await run('check', []);
    expect(faults(err)).toEqual([]);
    expect(out).toMatch(/^\d+ defects, \d+ questions, \d+ remedies/);
    expect(code).toBe(0);
  });

  it('exits 1 on a broken copy and lists the faults of all files in one run', PATIENCE, async () => {
    const root = process.cwd();
    const was = (file: string) => read(root, file);
    const bubbles = 'content/defects/bubbles.mdx';
    const again = 'content/remedies/look-again-when-dry.mdx';
    const dust = 'content/rules/sanding-dust.mdx';
    const asked = 'content/questions/round-spots.mdx';
    const copy = copyOfContent({
      [bubbles]: was(bubbles).replace('remedy: tip-off-the-foam', 'remedy: tip-off-the-fome'),
      [again]: was(again).replace(/^worked:.*\n(?: .*\n)*/m, ''),
      [dust]: was(dust).replace(/^level: care$/m, 'levle: care'),
      [asked]: was(asked).replace(/^ask: /m, 'ask: ['),
    });
    const { code, err } = await run('check', [], copy);
    const told = faults(err);
    expect(code).toBe(1);
    for (const [file, what] of [
      [bubbles, 'there is no remedy "tip-off-the-fome"; did you mean "tip-off-the-foam"?'],
      [again, 'the field "worked" is missing; add a line worked: …'],
      [dust, 'there is no field "levle" here; did you mean "level"?'],
      [asked, 'a "[" is opened after "ask:" and never closed'],
    ] as const)
      expect(
        told.some((line) => new RegExp(`^${file}:\\d+: `).test(line) && line.includes(what)),
        `${file}: ${what}\n${err}`,
      ).toBe(true);
    const lineOf = told.find((line) => line.includes('tip-off-the-fome'))?.split(':')[1];
    expect(read(copy, bubbles).split('\n')[Number(lineOf) - 1]).toContain('tip-off-the-fome');
    expect(err).toMatch(new RegExp(`\\n${told.length} faults\\.\\n$`));
  });
});
