/**
 * What editors read: the schemas that lie in the repository are those of the code, every file of content fits them as a
 * language server for YAML sees it, and that server completes and explains what an author writes. The server is the one
 * that common editors run; it comes along with the checker of the pages.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { describe, expect, it } from 'vitest';
import { ENTRY_KINDS, FOLDERS } from '#engine/model/index.ts';
import {
  committedSchemas,
  kindSchema,
  kindSchemaWithIds,
  TABLES,
  tableName,
  tableSchema,
} from '../../content/tools/editor-schemas.ts';
import { known } from '../content/real/knowledge.ts';

const FOLDER = 'content/schema';
const require = createRequire(import.meta.url);
const checker = createRequire(require.resolve('@astrojs/check'));
const within = createRequire(checker.resolve('@astrojs/language-server'));
const { getLanguageService } = createRequire(within.resolve('volar-service-yaml'))(
  'yaml-language-server',
) as {
  getLanguageService: (options: object) => Service;
};
const { TextDocument } = within('vscode-languageserver-textdocument') as {
  TextDocument: { create: (uri: string, language: string, version: number, text: string) => Document };
};
type Place = { line: number; character: number };
type Document = { positionAt: (offset: number) => Place };
type Service = {
  configure: (settings: object) => void;
  doValidation: (
    document: Document,
    isKubernetes: boolean,
  ) => Promise<{ message: string; range: { start: Place } }[]>;
  doComplete: (
    document: Document,
    place: Place,
    isKubernetes: boolean,
  ) => Promise<{ items: { label: string }[] }>;
  doHover: (document: Document, place: Place) => Promise<{ contents: { value: string } } | null>;
};

/** The server with one schema for everything. */
const serverWith = (schema: object): Service => {
  const service = getLanguageService({
    schemaRequestService: async () => JSON.stringify(schema),
    workspaceContext: { resolveRelativePath: (path: string) => path },
    telemetry: { send: () => undefined, sendError: () => undefined, sendTrack: () => undefined },
  });
  service.configure({
    validate: true,
    completion: true,
    hover: true,
    yamlVersion: '1.2',
    schemas: [{ fileMatch: ['*.yaml'], uri: 'memory://schema.json', schema }],
  });
  return service;
};
let opened = 0;
/** The server keeps what it read of a name and a version. */
const open = (text: string): Document =>
  TextDocument.create(pathToFileURL(join(process.cwd(), 'open.yaml')).href, 'yaml', ++opened, text);

const frontOf = (file: string): string =>
  /^---\n([\s\S]*?)^---$/m.exec(readFileSync(file, 'utf8'))?.[1] ?? '';
/** The first file and every tenth. */
const some = (folder: string): readonly string[] =>
  readdirSync(folder)
    .filter((_, index) => index % 10 === 0)
    .map((name) => join(folder, name));
const faultsOf = async (service: Service, text: string): Promise<string[]> =>
  (await service.doValidation(open(text), false)).map(
    ({ message, range }) => `${range.start.line + 1}: ${message}`,
  );

describe('the schemas in content/schema', () => {
  it('are those of the code; npm run schemas writes them', () => {
    const committed = committedSchemas();
    expect(readdirSync(FOLDER).sort()).toEqual([...committed.keys()].sort());
    for (const [name, text] of committed) expect(readFileSync(join(FOLDER, name), 'utf8'), name).toBe(text);
  });

  it('are named in the first line of every table', () => {
    for (const file of Object.keys(TABLES)) {
      const [first] = readFileSync(join('content', file), 'utf8').split('\n');
      const up = file.includes('/') ? '../' : '';
      expect(first).toBe(`# yaml-language-server: $schema=${up}schema/${tableName(file)}.json`);
    }
  });
});

describe('an editor', () => {
  it('finds nothing wrong in any table', { timeout: 60_000 }, async () => {
    for (const file of Object.keys(TABLES)) {
      const text = readFileSync(join('content', file), 'utf8').replace(/^# yaml-language-server.*/, '#');
      expect(await faultsOf(serverWith(tableSchema(file)), text), file).toEqual([]);
    }
  });

  for (const kind of ENTRY_KINDS)
    it(`finds nothing wrong in files of the kind ${kind}`, { timeout: 60_000 }, async () => {
      for (const schema of [kindSchema(kind), kindSchemaWithIds(kind, known)]) {
        const service = serverWith(schema);
        for (const file of some(`content/${FOLDERS[kind]}`))
          expect(await faultsOf(service, frontOf(file)), file).toEqual([]);
      }
    });

  it('marks a misspelt field, a value that may not stand there and an id that is not there', async () => {
    const front = frontOf('content/defects/dull-spots.mdx');
    const service = serverWith(kindSchemaWithIds('defect', known));
    const spoiled = front
      .replace('often: occasional', 'often: sometimes')
      .replace('shows: ', 'show: ')
      .replace('look-alikes: [missed-spots', 'look-alikes: [misst-spots');
    const told = (await faultsOf(service, spoiled)).join('\n');
    for (const part of [
      '"occasional"',
      'Property show is not allowed',
      'Missing property "shows"',
      '"missed-spots"',
    ])
      expect(told).toContain(part);
  });

  it('offers ids and values, and tells what a field and a question are', async () => {
    const front = frontOf('content/defects/dull-spots.mdx');
    const service = serverWith(kindSchemaWithIds('defect', known));
    const at = (text: string, mark: string): [Document, Place] => {
      const document = open(text);
      return [document, document.positionAt(text.indexOf(mark) + mark.length)];
    };
    const labels = async (text: string, mark: string) =>
      (await service.doComplete(...at(text, mark), false)).items.map(({ label }) => label);
    expect(await labels(front.replace('often: occasional', 'often: '), 'often: ')).toEqual(
      expect.arrayContaining(['common', 'occasional', 'rare']),
    );
    expect(await labels(front.replace('signs:\n', 'signs:\n  \n'), 'signs:\n  ')).toContain('water-beads');
    const hover = async (mark: string) => (await service.doHover(...at(front, mark)))?.contents.value ?? '';
    expect(await hover('\nlook')).toContain('What it looks like and feels like');
    expect(await hover('\n  sheen-on')).toContain('Is it only shiny against dull');
  });
});
