/** Single slips of an author's hand, made in memory: each names what was done and where. */
import type { RawEntry } from '#engine/model/knowledge.ts';

export type Mutant = {
  readonly slip: string;
  readonly what: string;
  /** The file that is changed. */
  readonly entry: RawEntry;
  /** The file as it reads after the slip; nothing where it is gone. */
  readonly after: RawEntry | undefined;
};

type Data = Record<string, unknown>;
type Tree = {
  ask?: string;
  yes?: Tree;
  no?: Tree;
  remedy?: string;
  defect?: string;
  leave?: string;
  cause?: string;
};
type Step = Data & { kind: string };

const copy = (entry: RawEntry): Data => structuredClone(entry.data) as Data;

/** One slip per place: `change` gets a fresh copy of the data and alters it. */
const slip = (name: string, entry: RawEntry, what: string, change: (data: Data) => void): Mutant => {
  const data = copy(entry);
  change(data);
  return { slip: name, what: `${entry.id}: ${what}`, entry, after: { ...entry, data } };
};

const at = (data: Data, path: readonly string[]): Tree =>
  path.reduce<Tree>((tree, key) => (tree as Data)[key] as Tree, data['tree'] as Tree);

const put = (data: Data, path: readonly string[], tree: Tree): void => {
  const last = path.at(-1);
  if (!last) data['tree'] = tree;
  else (at(data, path.slice(0, -1)) as Data)[last] = tree;
};

function* places(
  tree: Tree,
  path: readonly string[] = [],
  above: readonly string[] = [],
): Generator<{
  tree: Tree;
  path: readonly string[];
  above: readonly string[];
}> {
  yield { tree, path, above };
  if (!tree.ask) return;
  for (const key of ['yes', 'no'] as const) {
    const below = tree[key];
    if (below) yield* places(below, [...path, key], [...above, tree.ask]);
  }
}

function* ofDefect(entry: RawEntry): Generator<Mutant> {
  const data = entry.data as Data;
  for (const { tree, path, above } of places(data['tree'] as Tree)) {
    const where = path.join('/') || 'the top';
    if (tree.ask) {
      yield slip('swap yes and no', entry, `${tree.ask} at ${where}`, (d) =>
        put(d, path, { ask: tree.ask as string, yes: tree.no as Tree, no: tree.yes as Tree }),
      );
      for (const key of ['yes', 'no'] as const)
        yield slip('remove a branch', entry, `${tree.ask}, only its ${key} is left at ${where}`, (d) =>
          put(d, path, tree[key] as Tree),
        );
      yield slip('ask for a lost question', entry, `${tree.ask} at ${where}`, (d) =>
        put(d, path, { ...tree, ask: `${tree.ask}-s` }),
      );
    } else {
      const [asked] = above;
      if (asked)
        yield slip('ask twice on a path', entry, `${asked} at ${where}`, (d) =>
          put(d, path, { ask: asked, yes: tree, no: { leave: 'It is good enough as it is.' } }),
        );
      yield slip('ask without consequence', entry, `felt-with-eyes-shut at ${where}`, (d) =>
        put(d, path, { ask: 'felt-with-eyes-shut', yes: tree, no: tree }),
      );
      yield slip('hand over in a circle', entry, `at ${where}`, (d) => put(d, path, { defect: entry.id }));
      if (tree.remedy)
        yield slip('misspell a remedy', entry, `${tree.remedy} at ${where}`, (d) =>
          put(d, path, { ...tree, remedy: `${tree.remedy}s` }),
        );
    }
  }
  yield slip('empty the other names', entry, 'also', (d) => {
    d['also'] = [];
  });
  for (const [question, sign] of Object.entries(data['signs'] as Data)) {
    if (sign === 'yes' || sign === 'no')
      yield slip('flip a sign', entry, `${question} from ${sign}`, (d) => {
        (d['signs'] as Data)[question] = sign === 'yes' ? 'no' : 'yes';
      });
    yield slip('misspell a sign', entry, question, (d) => {
      const signs = d['signs'] as Data;
      signs[`${question}x`] = signs[question];
      delete signs[question];
    });
  }
  const alike = (data['look-alikes'] as string[] | undefined) ?? [];
  for (const [index, id] of alike.entries())
    yield slip('point a look-alike nowhere', entry, id, (d) => {
      (d['look-alikes'] as string[])[index] = `${id}-x`;
    });
}

const STRANGE: Record<string, readonly string[]> = {
  wet: ['repair', 'accept'],
  setting: ['lift', 'tip-off', 'repair', 'wipe-back', 'wash-off', 'wait'],
  'dry-to-touch': ['repair', 'lift', 'tip-off'],
  recoatable: ['lift', 'wash-off'],
  cured: ['tip-off', 'wick'],
};

function* ofRemedy(entry: RawEntry): Generator<Mutant> {
  const data = entry.data as Data;
  for (const [stage, doings] of Object.entries(STRANGE))
    for (const doing of doings)
      yield slip(`change the act at ${stage}`, entry, doing, (d) => {
        ((d['now'] as Data)[stage] as Data)['do'] = doing;
      });
  const steps = data['steps'] as Step[];
  const without = (index: number) => (d: Data) => void (d['steps'] as Step[]).splice(index, 1);
  for (const [index, step] of steps.entries()) {
    const coated = steps[index - 1]?.kind === 'coat' ? ' after the coat' : '';
    // A wait that is the same as the one beside it is there twice on purpose: a stage, then days.
    const beside = steps[index - 1]?.kind === 'wait' || steps[index + 1]?.kind === 'wait';
    if (step.kind === 'wait' && step['until'] && !beside)
      yield slip('drop a wait', entry, `step ${index + 1}${coated}`, without(index));
    if (step.kind === 'mix' && step['what'] === 'tint')
      yield slip('drop the tint', entry, `step ${index + 1}`, without(index));
    if (step.kind === 'mix' && step['percent'])
      yield slip('raise a percent', entry, `step ${index + 1}`, (d) => {
        const mixed = (d['steps'] as Step[])[index] as Data;
        mixed['percent'] = [20, 40];
      });
    if (step.kind === 'sand')
      yield slip('misprint a grit', entry, `step ${index + 1}`, (d) => {
        ((d['steps'] as Step[])[index] as Data)['grit'] = 230;
      });
    if (step['does'])
      yield slip('drop a mark', entry, `step ${index + 1}`, (d) => {
        delete ((d['steps'] as Step[])[index] as Data)['does'];
      });
    if (step['by'] === 'spray')
      yield slip('drop a mark', entry, `spray of step ${index + 1}`, (d) => {
        delete ((d['steps'] as Step[])[index] as Data)['by'];
      });
    if (step['when'])
      yield slip('misspell a family in a condition', entry, `step ${index + 1}`, (d) => {
        ((d['steps'] as Step[])[index] as Data)['when'] = { family: ['waterbased'] };
      });
  }
  yield slip('forget how to know that it worked', entry, 'worked', (d) => void delete d['worked']);
}

function* ofRule(entry: RawEntry): Generator<Mutant> {
  const data = entry.data as Data;
  const hazards = (data['hazards'] as string[] | undefined) ?? [];
  for (const [index, one] of hazards.entries())
    yield slip(
      'drop a hazard of a rule',
      entry,
      one,
      (d) => void (d['hazards'] as string[]).splice(index, 1),
    );
  if (data['kind'] === 'stop')
    yield slip(
      'soften a stop',
      entry,
      'caution',
      (d) => void Object.assign(d, { kind: 'caution', level: 'note' }),
    );
  for (const fact of Object.keys((data['when'] as Data | undefined) ?? {}))
    if (!['not', 'any'].includes(fact))
      yield slip('misspell a fact of a rule', entry, fact, (d) => {
        const when = d['when'] as Data;
        when[`${fact}s`] = when[fact];
        delete when[fact];
      });
}

const HARD =
  'Is the discoloration characteristically concentrated in deliberately accumulated irregularities?';

function* ofQuestion(entry: RawEntry): Generator<Mutant> {
  const data = entry.data as Data;
  yield slip('ask in hard words', entry, 'ask', (d) => {
    d['ask'] = HARD;
  });
  yield slip('forget the question mark', entry, 'ask', (d) => {
    d['ask'] = String(d['ask']).replace('?', '.');
  });
  for (const [index] of ((data['known'] as unknown[] | undefined) ?? []).entries())
    yield slip('misspell a known fact', entry, `known ${index + 1}`, (d) => {
      ((d['known'] as Data[])[index] as Data)['when'] = { famly: 'shellac' };
    });
}

function* ofAny(entry: RawEntry): Generator<Mutant> {
  const claims = ((entry.data as Data)['claims'] as Data[] | undefined) ?? [];
  for (const [index, claim] of claims.entries())
    if (claim['source'])
      yield slip(
        'drop a source',
        entry,
        `claim ${index + 1}`,
        (d) => void delete ((d['claims'] as Data[])[index] as Data)['source'],
      );
}

/** Every single slip that can be made in the content. Products, lessons and terms are proved elsewhere. */
export function* mutantsOf(entries: readonly RawEntry[]): Generator<Mutant> {
  const cited = new Set(
    entries.flatMap((entry) =>
      (((entry.data as Data)?.['claims'] as Data[] | undefined) ?? []).map((claim) => claim['source']),
    ),
  );
  for (const entry of entries) {
    if (entry.kind === 'defect') yield* ofDefect(entry);
    if (entry.kind === 'remedy') yield* ofRemedy(entry);
    if (entry.kind === 'rule') yield* ofRule(entry);
    if (entry.kind === 'question') yield* ofQuestion(entry);
    if (['defect', 'remedy', 'rule', 'question'].includes(entry.kind)) {
      yield* ofAny(entry);
      if (entry.kind !== 'rule')
        yield {
          slip: 'rename a file',
          what: `${entry.kind} ${entry.id}`,
          entry,
          after: { ...entry, id: `${entry.id}-2` },
        };
    }
    if (entry.kind === 'source' && cited.has(entry.id))
      yield { slip: 'lose a source', what: entry.id, entry, after: undefined };
  }
}
