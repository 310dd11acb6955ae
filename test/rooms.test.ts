/** Who may import whom: the rooms of site and engine, and the few pairs of features that may know each other. */
import { globSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path/posix';
import { describe, expect, it } from 'vitest';

type Import = {
  readonly from: string;
  readonly to: string;
  readonly typeOnly: boolean;
  readonly later: boolean;
};

const SPECIFIER =
  /^\s*(?:import|export)\s+(type\s+)?(?:[^'";]*?\sfrom\s+)?'([^']+)'|\bimport\(\s*'([^']+)'\s*\)/gm;

/** What a file imports of this repository, dynamic imports included. */
const importsIn = (file: string, text: string): Import[] =>
  [...text.matchAll(SPECIFIER)].flatMap(([, type, at, later]) => {
    const specifier = at ?? later ?? '';
    const kind = { from: file, typeOnly: Boolean(type), later: later !== undefined };
    if (specifier.startsWith('#engine/')) return [{ ...kind, to: specifier.slice(1) }];
    return specifier.startsWith('.') ? [{ ...kind, to: join(dirname(file), specifier) }] : [];
  });

/** The room that a file lies in: a folder of the site, of the phone a folder a feature. */
const roomOf = (file: string): string => {
  const [top = '', second = '', third = ''] = file.split('/');
  if (top === 'engine') return top;
  if (second === 'client') return third.includes('.') ? 'client' : `client/${third}`;
  if (top === 'content') return `content/${second}`;
  return second.includes('.') ? 'site' : second;
};

/** Everything that a page is written with. */
const PAGE = ['engine', 'shared', 'build', 'components', 'styles'];

/** Which rooms a room may import. It may always import itself. */
const MAY_KNOW: Readonly<Record<string, readonly string[]>> = {
  engine: [],
  'content/tools': ['engine'],
  // What runs anywhere knows nobody but the engine.
  shared: ['engine'],
  // At build time: tools → build → shared.
  build: ['engine', 'shared', 'content/tools'],
  tools: ['engine', 'shared', 'build', 'content/tools', 'worker'],
  worker: [],
  site: ['engine'],
  styles: [],
  components: PAGE,
  layouts: [...PAGE, 'client'],
  pages: [...PAGE, 'layouts', 'content/tools', 'client/clock', 'client/schedule', 'client/jobs'],
  // Pages that an author alone sees, in the live preview.
  preview: [...PAGE, 'layouts', 'content/tools'],
  // On the phone: what every page loads, the drawer that all features share, and the features.
  client: [
    'client/case',
    'client/clock',
    'client/find',
    'client/jobs',
    'client/page',
    'client/practice',
    'client/shared',
    'client/tell',
    'client/walk',
  ],
  'client/shared': ['engine', 'shared'],
  ...Object.fromEntries(
    ['case', 'clock', 'find', 'jobs', 'page', 'practice', 'schedule', 'tell', 'walk'].map((feature) => [
      `client/${feature}`,
      // The looks of what a script draws late come with that script.
      ['engine', 'shared', 'client/shared', 'styles'],
    ]),
  ),
};

/** The features that may know another, and what for. There is no circle among them. */
const PAIRS: readonly (readonly [feature: string, other: string, why: string])[] = [
  ['client/clock', 'client/case', 'what the clock knows joins what was told'],
  ['client/walk', 'client/case', 'a walk goes on from what was told'],
  ['client/walk', 'client/clock', 'and from what the clock knows'],
  ['client/tell', 'client/case', 'what is told in words is told for the walk, too'],
  ['client/tell', 'client/clock', 'and a coat on the clock answers how dry it is'],
  ['client/tell', 'client/jobs', 'and its card tells what is known of that piece'],
  ['client/jobs', 'client/case', 'a card is in hand while its flaw is looked for'],
  ['client/jobs', 'client/clock', 'a coat of a card goes on the clock'],
  ['client/schedule', 'client/jobs', 'a plan becomes a card'],
];

/**
 * The rooms of the engine, and what each may know: from what stands alone to what judges everything. A door beside its room
 * (`clock.ts`) hands on what the room offers. `calc` takes the types of products from `model`, and nothing that runs.
 */
const ENGINE: Readonly<Record<string, readonly string[]>> = {
  plain: [],
  model: ['calc', 'plain'],
  calc: ['plain'],
  knowledge: ['model', 'plain'],
  case: ['knowledge', 'model', 'plain'],
  compiled: ['case', 'knowledge', 'model'],
  rules: ['case', 'compiled', 'knowledge', 'model'],
  steps: ['case', 'faults', 'knowledge', 'model', 'rules'],
  walk: ['case', 'compiled', 'knowledge', 'model', 'rules', 'steps'],
  see: ['case', 'knowledge', 'model', 'plain'],
  find: ['knowledge', 'model', 'plain'],
  hear: ['calc', 'case', 'find', 'knowledge', 'model', 'plain', 'rules', 'see', 'walk'],
  clock: ['calc', 'case', 'model', 'plain'],
  fitness: ['calc', 'case', 'clock', 'model', 'plain', 'rules'],
  schedule: ['calc', 'case', 'clock', 'fitness', 'model', 'plain', 'rules'],
  jobs: ['calc', 'case', 'clock', 'fitness', 'model', 'plain', 'schedule'],
  board: ['calc', 'model'],
  practice: ['board', 'calc', 'case', 'clock', 'knowledge', 'model', 'plain', 'rules', 'see', 'walk'],
  faults: ['model', 'plain'],
  prove: ['case', 'faults', 'fitness', 'knowledge', 'model', 'rules', 'see', 'steps', 'walk'],
};
const TYPES_ALONE = 'calc → model';

/** The parts of the ear, each on those that it may know; what lies beside them (`hear.ts`, `understand.ts`) puts them together. */
const EAR: Readonly<Record<string, readonly string[]>> = {
  words: [],
  coats: ['words'],
  times: ['coats', 'words'],
  measures: ['times', 'words'],
  signs: ['times', 'words'],
  film: ['words'],
  choices: ['words'],
  asked: ['choices', 'film', 'times', 'words'],
  belief: ['times', 'words'],
  reply: ['asked', 'belief', 'words'],
};

/** The room of the engine that a file lies in; a door has the name of its room. */
const engineRoomOf = (file: string): string => file.split('/')[1]?.replace(/\.ts$/, '') ?? '';

const mayKnow = (room: string): readonly string[] => [
  ...(MAY_KNOW[room] ?? []),
  ...PAIRS.filter(([feature]) => feature === room).map(([, other]) => other),
];

/** What is wrong with an import, or nothing. */
const faultOf = ({ from, to }: Pick<Import, 'from' | 'to'>): string | undefined => {
  const [room, other] = [roomOf(from), roomOf(to)];
  if (!(room in MAY_KNOW))
    return `${from}: "${room}" is a room that nobody knows; put the file into one of ${Object.keys(MAY_KNOW).join(', ')}`;
  if (room === other || mayKnow(room).includes(other)) return undefined;
  return `${from} imports ${to}: ${room} may know ${mayKnow(room).join(', ') || 'nobody'}, not ${other}`;
};

const files = globSync('{site,content/tools}/**/*.{ts,tsx,astro}').map((file) => file.replaceAll('\\', '/'));
const imports = files.flatMap((file) => importsIn(file, readFileSync(file, 'utf8')));

const engine = globSync('engine/**/*.ts')
  .map((file) => file.replaceAll('\\', '/'))
  .flatMap((file) => importsIn(file, readFileSync(file, 'utf8')));

describe('rooms', () => {
  it('reads the imports', () => {
    expect(files.length).toBeGreaterThan(200);
    expect(imports.length).toBeGreaterThan(700);
    expect(
      importsIn(
        'site/client/walk/a.ts',
        "void import('../case/b.ts');\nimport type { C } from '#engine/c.ts';",
      ),
    ).toEqual([
      { from: 'site/client/walk/a.ts', to: 'site/client/case/b.ts', typeOnly: false, later: true },
      { from: 'site/client/walk/a.ts', to: 'engine/c.ts', typeOnly: true, later: false },
    ]);
  });

  it('lets no file import a room that its own may not know', () => {
    expect(imports.flatMap((one) => faultOf(one) ?? [])).toEqual([]);
  });

  it('tells what is wrong with an arrow that is turned round', () => {
    const turned = (from: string, to: string) => faultOf({ from, to });
    expect(turned('site/client/case/store.ts', 'site/client/clock/store.ts')).toBe(
      'site/client/case/store.ts imports site/client/clock/store.ts: client/case may know engine, shared, client/shared, styles, not client/clock',
    );
    expect(turned('site/client/walk/question.ts', 'site/build/knowledge.ts')).toContain('not build');
    expect(turned('site/shared/urls.ts', 'site/client/walk/question.ts')).toContain('not client/walk');
    expect(turned('site/build/plan.ts', 'site/tools/build.ts')).toContain('not tools');
    expect(turned('content/tools/read.ts', 'site/shared/urls.ts')).toContain('not shared');
    expect(turned('site/drawer/utils.ts', 'site/shared/urls.ts')).toContain('a room that nobody knows');
  });

  it('names no pair that nobody needs, and none in a circle', () => {
    const used = new Set(imports.map(({ from, to }) => `${roomOf(from)} → ${roomOf(to)}`));
    expect(PAIRS.filter(([feature, other]) => !used.has(`${feature} → ${other}`))).toEqual([]);
    const reaches = (from: string, to: string): boolean =>
      PAIRS.some(([feature, other]) => feature === from && (other === to || reaches(other, to)));
    for (const [feature, other] of PAIRS)
      expect(reaches(other, feature), `${feature} → ${other}`).toBe(false);
  });

  /** Doors that stand for no room of one name. */
  const WIDE = ['index', 'link'];

  it('lets no room of the engine know one that stands above it', () => {
    const faults = engine.flatMap(({ from, to, typeOnly }) => {
      const [room, other] = [engineRoomOf(from), engineRoomOf(to)];
      if (room === other || WIDE.includes(room)) return [];
      // A door says in types what its callers need to name.
      if (!from.includes('/', 'engine/'.length) && typeOnly) return [];
      if (ENGINE[room]?.includes(other) || (typeOnly && `${room} → ${other}` === TYPES_ALONE)) return [];
      return [
        `${from} imports ${to}: ${room} may know ${ENGINE[room]?.join(', ') || 'nobody'}, not ${other}`,
      ];
    });
    expect(faults).toEqual([]);
  });

  it('has doors that other programs open, and no room of the engine', () => {
    const isDoor = (file: string) => dirname(file) === 'engine';
    expect(engine.filter(({ from, to }) => !isDoor(from) && isDoor(to))).toEqual([]);
  });

  it('names every room of the engine, none that may know another for nothing, and no circle', () => {
    const rooms = globSync('engine/*/').map((at) => engineRoomOf(at.replaceAll('\\', '/')));
    expect(Object.keys(ENGINE).sort()).toEqual(rooms.sort());
    const used = new Set(engine.map(({ from, to }) => `${engineRoomOf(from)} → ${engineRoomOf(to)}`));
    const arrows = Object.entries(ENGINE).flatMap(([room, others]) => others.map((other) => [room, other]));
    expect(arrows.filter(([room, other]) => !used.has(`${room} → ${other}`))).toEqual([]);
    const reaches = (from: string, to: string): boolean =>
      Boolean(ENGINE[from]?.some((other) => other === to || reaches(other, to)));
    expect(Object.keys(ENGINE).filter((room) => reaches(room, room))).toEqual([]);
  });

  it('lets no part of the ear know one above it', () => {
    const partOf = (file: string) => file.match(/^engine\/hear\/([^/]+)\//)?.[1];
    const parts = globSync('engine/hear/*/').map((at) => partOf(`${at.replaceAll('\\', '/')}/`) ?? '');
    expect(Object.keys(EAR).sort()).toEqual(parts.sort());
    const used = engine.flatMap(({ from, to }) => {
      const [part, other] = [partOf(from), to.startsWith('engine/hear/') ? (partOf(to) ?? to) : undefined];
      return part && other && part !== other ? [{ from, to, arrow: `${part} → ${other}` }] : [];
    });
    const arrows = Object.entries(EAR).flatMap(([part, others]) =>
      others.map((other) => `${part} → ${other}`),
    );
    expect(used.filter(({ arrow }) => !arrows.includes(arrow))).toEqual([]);
    expect(arrows.filter((arrow) => !used.some((one) => one.arrow === arrow))).toEqual([]);
    const below = new Set<string>();
    for (const [part, others] of Object.entries(EAR)) {
      expect(
        others.filter((other) => !below.has(other)),
        `${part} stands below what it knows`,
      ).toEqual([]);
      below.add(part);
    }
  });

  /** Circles among these imports, each as the files that it leads through. */
  const circlesOf = (of: readonly Import[]): readonly string[] => {
    const next = Map.groupBy(of, ({ from }) => from);
    const done = new Set<string>();
    const circles: string[] = [];
    const follow = (file: string, way: readonly string[]): void => {
      const at = way.indexOf(file);
      if (at >= 0) circles.push([...way.slice(at), file].join(' → '));
      if (at >= 0 || done.has(file)) return;
      for (const { to } of next.get(file) ?? []) follow(to, [...way, file]);
      done.add(file);
    };
    for (const file of next.keys()) follow(file, []);
    return circles;
  };
  const all = [...imports, ...engine];

  it('has no circle of files that run', () => {
    expect(circlesOf(all.filter(({ typeOnly, later }) => !typeOnly && !later))).toEqual([]);
  });

  /** What the store fetches late, to mend what it finds, opens the store in its turn. */
  const FETCHED_IN = 'site/client/jobs/store/';

  it('has no circle of files by their types, nor by what is fetched late outside of the store', () => {
    expect(circlesOf(all.filter(({ from, later }) => !later || !from.startsWith(FETCHED_IN)))).toEqual([]);
  });

  it('finds the parts of a page by their names, so that a class can be changed for its looks alone', () => {
    const BY_CLASS =
      /(?:querySelector(?:All)?|closest|matches)(?:<[^>]*>)?\(\s*(['"`])(?:(?!\1)[^\n$])*\.[a-z]|classList\.contains/g;
    expect(
      [..."a.closest('[data-x] .go'); b.matches(\"p.go\"); c.closest('p[data-x]')".matchAll(BY_CLASS)].length,
    ).toBe(2);
    const found = files
      .filter((file) => file.startsWith('site/client/'))
      .flatMap((file) =>
        [...readFileSync(file, 'utf8').matchAll(BY_CLASS)].map(([text]) => `${file}: ${text}`),
      );
    expect(found).toEqual([]);
  });

  it('spells addresses in one file only', () => {
    const spelled = files
      .filter((file) => file.startsWith('site/') && file !== 'site/shared/urls.ts')
      .flatMap((file) =>
        [...readFileSync(file, 'utf8').matchAll(/\b(?:href|src|action)=(["'{`]+)\/[a-z]/g)].map(
          ([text]) => `${file}: ${text}… leads out of a site in a folder; take it from site/shared/urls.ts`,
        ),
      );
    expect(spelled).toEqual([]);
  });
});
