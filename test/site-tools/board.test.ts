/** `npm run board`: what it draws of a flaw, and that its sheet tells every field of every feature. */
import { execFile } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import sharp from 'sharp';
import { afterAll, describe, expect, it } from 'vitest';
import { BoardFeature, FEATURE_KINDS } from '#engine/model/board/recipe.ts';
import { FEATURE_GROUPS, shownBest } from '../../site/build/pictures/feature-fields.ts';
import { featurePage } from '../../site/build/pictures/feature-page.ts';
import { itAtLength } from '../thorough.ts';
import { clearCopies, copyOfContent } from '../tools/command.ts';

const COMMAND = join(process.cwd(), 'site/tools/board.ts');
const board = (args: readonly string[], cwd: string): Promise<{ code: number; out: string; err: string }> =>
  new Promise((done) => {
    execFile(process.execPath, [COMMAND, ...args], { cwd }, (error, out, err) =>
      done({ code: error ? 1 : 0, out, err }),
    );
  });

afterAll(clearCopies, 60_000);

describe('the pictures of a flaw', () => {
  it('are drawn from what is written now, in both lights, as large as the site shows them', async () => {
    const folder = copyOfContent();
    const { code, out } = await board(['dull-spots'], folder);
    expect(code).toBe(0);
    const files = [...out.matchAll(/^ {2}(.+\.png)$/gm)].map(([, file]) => file ?? '');
    expect(files).toEqual(
      ['1-raking', '1-facing', '2-raking', '2-facing'].map((name) => `pictures/dull-spots/${name}.png`),
    );
    const drawn = files.map((file) => readFileSync(join(folder, file)));
    for (const picture of drawn)
      expect(await sharp(picture).metadata()).toMatchObject({ format: 'png', width: 480, height: 360 });
    expect(new Set(drawn.map((picture) => picture.toString('base64'))).size).toBe(4);
  });

  itAtLength(
    'tell a fault of the recipe with its line, and nothing of what is unfinished elsewhere',
    async () => {
      const file = 'content/defects/dull-spots.mdx';
      const text = readFileSync(file, 'utf8');
      const folder = copyOfContent({
        [file]: text.replace('diameter-mm: 30', 'diametre-mm: 30'),
        'content/defects/cloudy-film.mdx': 'nothing yet',
      });
      const line = text.split('\n').findIndex((one) => one.includes('diameter-mm: 30')) + 1;
      expect(await board(['dull-spots'], folder)).toMatchObject({
        code: 1,
        err: `${file}:${line}: there is no field "diametre-mm" here; did you mean "diameter-mm"?\n`,
      });
    },
  );
});

describe('a picture that the check refuses', () => {
  itAtLength('is drawn, and what the check will say is told', async () => {
    const file = 'content/defects/dull-spots.mdx';
    const text = readFileSync(file, 'utf8');
    const folder = copyOfContent({
      [file]: text.replace('at: [30, 34], diameter-mm: 30', 'at: [900, 10], diameter-mm: 30'),
    });
    const line = text.split('\n').findIndex((one) => one.includes('diameter-mm: 30')) + 1;
    const { code, out, err } = await board(['dull-spots'], folder);
    expect(code).toBe(0);
    expect(err).toMatch(
      new RegExp(
        `^npm run check will refuse this:\n${file}:${line}: ".+" is laid at 900, 10 mm, off a piece `,
      ),
    );
    expect(out).toContain('pictures/dull-spots/1-raking.png');
  });
});

describe('the sheet of features', () => {
  itAtLength('is drawn of one group alone, which tells that it draws', { timeout: 120_000 }, async () => {
    const folder = copyOfContent();
    const { code, out } = await board(['--sheet', 'bodies'], folder);
    expect(code).toBe(0);
    expect(out).toMatch(/ {2}drawing the \d+ bodies …\n {2}pictures\/features\/bodies\.png\n$/);
    expect(readdirSync(join(folder, 'pictures/features'))).toEqual(['bodies.png']);
  });

  itAtLength('names the groups where it is asked for another', async () => {
    expect(await board(['--sheet', 'bodys'], process.cwd())).toMatchObject({
      code: 1,
      err: 'there is no group of features "bodys"; did you mean "bodies"?\n',
    });
    const { err } = await board(['--sheet', 'everything'], process.cwd());
    expect(err).toBe(
      'there is no group of features "everything"; groups: veils, tints, relief, sheens, bodies\n',
    );
  });

  it('has every feature that a recipe may name, with every field', () => {
    const told = new Map(
      FEATURE_GROUPS.flatMap(({ features }) => features.map((one) => [one.kind, one] as const)),
    );
    expect([...told.keys(), 'none'].sort()).toEqual([...FEATURE_KINDS].sort());
    for (const { shape } of BoardFeature.options) {
      const { kind, ...fields } = shape;
      if (kind.value === 'none') continue;
      expect(told.get(kind.value)?.fields.map(({ name }) => name)).toEqual(Object.keys(fields));
    }
    for (const { fields } of told.values())
      for (const { values, what } of fields) expect(`${values} ${what}`).not.toMatch(/undefined|^ | $/);
  });

  it('tells bounds with their unit, and what stands where nothing is written', () => {
    const craters = FEATURE_GROUPS.flatMap(({ features }) => features).find(({ kind }) => kind === 'craters');
    expect(craters?.fields[0]).toEqual({
      name: 'diameter-mm',
      values: '[least, most] of 0.3 to 15 mm',
      usually: '[1.5, 6]',
      what: 'Width inside the rim.',
    });
  });

  it('shows a feature as the flaw with the fewest others does', () => {
    const recipe = (...kinds: string[]) => ({ features: kinds.map((kind) => ({ kind })) }) as never;
    const boards = [
      { file: 'two', recipe: recipe('nibs', 'hair') },
      { file: 'one', recipe: recipe('hair') },
    ];
    expect(shownBest(boards, 'hair')?.file).toBe('one');
    expect(shownBest(boards, 'nibs')?.file).toBe('two');
    expect(shownBest(boards, 'peel')).toBeUndefined();
  });

  it('is drawn as a page', async () => {
    const [{ features = [] } = {}] = FEATURE_GROUPS;
    const page = await featurePage('veils', features.slice(0, 1), () => undefined);
    const { format, height = 0 } = await sharp(page).metadata();
    expect(format).toBe('png');
    expect(height).toBeGreaterThan(400);
  });
});
