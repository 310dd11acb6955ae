/**
 * Tries the engine's tests by small changes of the engine.
 *
 *   npm run mutate                    what changed since this left main, new files with it
 *   npm run mutate -- since HEAD~3    … since any commit
 *   npm run mutate -- sample 600      a sample by folders; --seed 7 draws another
 *   npm run mutate -- all             everything, some nights; one that was stopped goes on where it was
 *   npm run mutate -- at engine/walk/walk.ts:40   one file or line
 *   npm run mutate -- meet            only what each test meets, which is kept for the next run
 *
 * A change that lives and is not reasoned in `test/mutation/engine-survivors.md` fails `since` and `at`.
 * `--only calc,clock` keeps to folders or files of the engine, `--by test/engine/calc` to tests whose paths begin so.
 * `--minutes 30` ends in time: what was tried by then is a sample, too.
 * What was found lies in `reports/mutation/`.
 */
import { execFileSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { shuffled } from '../random.ts';
import type { Mutant } from './instrument.ts';
import { meetAll, prepare, testFiles } from './knows.ts';
import { KEPT } from './process.ts';
import { isReasoned } from './reasoned.ts';
import { stratumOf, tableOf } from './score.ts';
import { nearness, type Tried, Trier } from './try.ts';

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    seed: { type: 'string', default: '1' },
    only: { type: 'string' },
    by: { type: 'string' },
    minutes: { type: 'string' },
  },
});
const [mode = 'since', given] = positionals;
if (!['since', 'sample', 'all', 'at', 'meet'].includes(mode)) throw new Error(`no such way to try: ${mode}`);

const { mutants, mark } = prepare();
const only = values.only?.split(',');
const open = mutants.filter(
  ({ file }) => !only || only.some((one) => file.startsWith(`engine/${one}`) || stratumOf(file) === one),
);

const groups = new Map<string, Mutant[]>();
for (const mutant of open) {
  const stratum = stratumOf(mutant.file);
  groups.set(stratum, [...(groups.get(stratum) ?? []), mutant]);
}

/** So many that each folder has its share, and none fewer than this. */
const LEAST = 20;

const sampled = (wanted: number, seed: number): Mutant[] => {
  const total = open.length;
  const drawn = [...groups.values()].flatMap((group) =>
    shuffled(group, seed).slice(0, Math.max(LEAST, Math.round((wanted * group.length) / total))),
  );
  // In no order, so that what was tried when someone stops it is a sample, too.
  return shuffled(drawn, seed);
};

const git = (...args: readonly string[]): string[] =>
  execFileSync('git', args, { encoding: 'utf8', maxBuffer: 1e9 }).split('\n');

/** The lines that are not as they were where this and the commit parted, by file. */
const changedSince = (ref: string): Map<string, Set<number>> => {
  const lines = new Map<string, Set<number>>();
  const diff = git('diff', '-U0', '--no-color', '--no-ext-diff', '--merge-base', ref, '--', 'engine');
  let file = '';
  for (const line of diff) {
    if (line.startsWith('+++ ')) file = line.slice(6);
    const hunk = /^@@ -\S+ \+(\d+)(?:,(\d+))? @@/.exec(line);
    if (!hunk) continue;
    const from = Number(hunk[1]);
    const own = lines.get(file) ?? new Set();
    for (let at = 0; at < Number(hunk[2] ?? 1); at += 1) own.add(from + at);
    lines.set(file, own);
  }
  return lines;
};

const chosen = (): Mutant[] => {
  if (mode === 'all') return shuffled(open, Number(values.seed));
  if (mode === 'meet') return [];
  if (mode === 'at') {
    const found = open.filter(({ file, line }) => given === file || given === `${file}:${line}`);
    if (!found.length) throw new Error(`nothing to change at ${given ?? 'no place given'}`);
    return found;
  }
  if (mode === 'sample') return sampled(Number(given ?? 600), Number(values.seed));
  const changed = changedSince(given ?? 'main');
  const added = new Set(git('ls-files', '--others', '--exclude-standard', '--', 'engine'));
  return open.filter(({ file, line }) => added.has(file) || changed.get(file)?.has(line));
};

const picked = chosen();
console.log(`${picked.length} of ${open.length} mutants`);
const by = values.by?.split(',');
const files = testFiles().filter((file) => !by || by.some((one) => file.startsWith(one)));
if (mode === 'meet') {
  const { tests } = await meetAll(mutants, mark, files);
  console.log(`${tests.length} tests`);
  process.exit(0);
}
if (!picked.length) process.exit(0);

const sizes = new Map([...groups].map(([stratum, group]) => [stratum, group.length]));
mkdirSync(KEPT, { recursive: true });
const name = `${mode}-${values.only ?? 'engine'}-${values.seed}`.replaceAll('/', '+');
const STOPPED = join(KEPT, `${name}.json`);
/** What an `all` that was stopped had tried; nothing where the engine is another by now. */
const before = (): Tried[] => {
  if (mode !== 'all' || !existsSync(STOPPED)) return [];
  const kept = JSON.parse(readFileSync(STOPPED, 'utf8')) as { mark: string; tried: Tried[] };
  return kept.mark === mark ? kept.tried : [];
};
const tried: Tried[] = before();
const keep = (): void => {
  writeFileSync(STOPPED, JSON.stringify({ mark, tried }, null, 1));
  writeFileSync(join(KEPT, `${name}.md`), `${tableOf(tried, sizes)}\n`);
};

const isAlive = ({ state }: Tried): boolean => state === 'survived' || state === 'no coverage';
const reasoned = isReasoned();
const began = performance.now();
const seconds = () => Math.round((performance.now() - began) / 1000);
const most = Number(values.minutes ?? Number.POSITIVE_INFINITY) * 60;

/** Tries them by the tests of these files, each with a second look where it lives, and tells what became of it. */
const tryBy = async (some: readonly Mutant[], by: readonly string[], told: (one: Tried) => void) => {
  if (!some.length) return;
  const trier = new Trier(await meetAll(mutants, mark, by), mutants);
  for (const mutant of some) {
    if (seconds() > most) break;
    const first = await trier.try(mutant);
    told(first.state === 'survived' ? await trier.try(mutant, true) : first);
  }
  trier.end();
};

const done = new Set(tried.map(({ mutant }) => mutant.id));
let left: readonly Mutant[] = picked.filter(({ id }) => !done.has(id));
if (mode === 'since' || mode === 'at') {
  // Somebody waits: the tests beside the change first, and all the others only for what these do not tell.
  const beside = files.filter((test) => picked.some(({ file }) => nearness(file, test) < 2));
  await tryBy(left, beside, (one) => {
    if (isAlive(one)) return;
    tried.push(one);
    done.add(one.mutant.id);
  });
  left = picked.filter(({ id }) => !done.has(id));
  console.log(`${tried.length} of ${picked.length} told by the tests beside them, ${seconds()} s`);
}
await tryBy(left, files, (one) => {
  tried.push(one);
  if (isAlive(one)) {
    const { file, line, column, kind, was, by } = one.mutant;
    const found = reasoned(one.mutant) ? 'reasoned' : one.state;
    console.log(`${found}: ${file}:${line}:${column} ${kind}: ${was} → ${by || 'nothing'}`);
  }
  if (tried.length % 25 !== 0) return;
  keep();
  console.log(`… ${tried.length}, ${tried.filter(isAlive).length} alive, ${seconds()} s`);
});
keep();
console.log(`${tableOf(tried, sizes)}\n${seconds()} s`);
if ((mode === 'since' || mode === 'at') && tried.some((one) => isAlive(one) && !reasoned(one.mutant)))
  process.exitCode = 1;
