/**
 * `npm run bench [-- --json]`: times beside peers, as ratios from one run. Every contestant is first shown to give the
 * same results on the same cases; what differs ends the run.
 */
import { cpus } from 'node:os';
import { gzipSync } from 'node:zlib';
import { rulesOf, treesOf } from '#engine/compiled/compiled.ts';
import { codesOf } from '#engine/compiled/fact-codes.ts';
import { markHolding } from '#engine/compiled/rules.ts';
import { endOf, markEnds, NO, OPEN, YES } from '#engine/compiled/trees.ts';
import { type Case, possible, walk } from '#engine/index.ts';
import { linkedKnowledge } from '../../content/tools/knowledge.ts';
import { boardRace } from './boards.ts';
import { compiledFrom, ruleChain, treeChain, treeChainBoth } from './if-chain.ts';
import { race, type Timed } from './measure.ts';
import { type Answers, type Facts, machines, ruleEngine, runMachine, treeEngines } from './peers.ts';
import { searchQuality } from './search.ts';
import { tableOf } from './table.ts';

const { known } = linkedKnowledge(process.cwd());
if (!known) throw new Error('the content does not link; npm run check tells why');
const trees = treesOf(known);
const table = rulesOf(known);

/** Numbers that look random and are the same each time: a linear congruence (Numerical Recipes, 2nd ed., 7.1). */
const chance = (() => {
  let state = 20_261_128;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
})();
const pick = <T>(from: readonly T[]): T => from[Math.floor(chance() * from.length)] as T;

const SESSIONS = 1024;
const CANT_TELL = 0.1;
const TOLD = 0.4;

const sessions = Array.from({ length: SESSIONS }, () => {
  const defect = pick(known.defects).id;
  const answers: Answers = Object.fromEntries(
    trees.questions.map((question) => [question, pick(['yes', 'no'])]),
  );
  const unsure: Answers = Object.fromEntries(
    Object.entries(answers).map(([question, answer]) => [question, chance() < CANT_TELL ? 'unsure' : answer]),
  );
  const code = (of: Answers) =>
    Uint8Array.from(trees.questions, (question) =>
      of[question] === 'yes' ? YES : of[question] === 'no' ? NO : OPEN,
    );
  const facts: Facts = Object.fromEntries(
    table.facts.flatMap(({ name, examples, bounds }) => {
      const value = pick(bounds.length ? examples.filter((one) => typeof one === 'number') : examples);
      return chance() < TOLD && value !== undefined ? [[name, value]] : [];
    }),
  );
  const on: Case = Object.fromEntries(
    Object.entries(unsure).map(([question, value]) => [question, { value, how: 'answered' as const }]),
  );
  return {
    defect,
    root: trees.roots.get(defect) ?? Number.NaN,
    answers,
    unsure,
    facts,
    on,
    codes: code(answers),
    codesUnsure: code(unsure),
    factCodes: codesOf(table.facts, (name) => facts[name]),
  };
});

const agree = (what: string, one: unknown, other: unknown): void => {
  if (JSON.stringify(one) !== JSON.stringify(other))
    throw new Error(`${what}: ${JSON.stringify(one)} is not ${JSON.stringify(other)}; nothing was timed`);
};

const chain = compiledFrom<(defect: string, a: Answers) => number>(treeChain(trees));
const chainBoth = compiledFrom<(defect: string, a: Answers, out: Set<number>) => void>(treeChainBoth(trees));
const chainRules = compiledFrom<(f: Facts, out: Uint16Array) => number>(ruleChain(known.rules));
const machineOf = machines(trees);
const ends = new Uint32Array(Math.ceil(trees.leaves.length / 32));
const bits = new Uint32Array(table.stride);
const out = new Uint16Array(known.rules.length);

const numbersIn = (words: Uint32Array, count: number): number[] =>
  Array.from({ length: count }, (_, at) => at).filter((at) => ((words[at >> 5] ?? 0) >>> (at & 31)) & 1);

/** The numbers of the rules that hold, as the chain gives them. */
const listBits = (): number => {
  let n = 0;
  for (let word = 0; word < table.words; word++) {
    let left = bits[word] ?? 0;
    while (left) {
      out[n++] = word * 32 + 31 - Math.clz32(left & -left);
      left &= left - 1;
    }
  }
  return n;
};

const each = (run: (session: (typeof sessions)[number]) => void) => () => {
  for (const session of sessions) run(session);
};
let kept = 0;

const walks = (): readonly Timed[] => {
  for (const { defect, root, answers, codes } of sessions) {
    agree('a walk', endOf(trees, root, codes), chain(defect, answers));
    const machine = machineOf.get(defect);
    if (machine) agree('a machine', runMachine(machine, trees, answers), `leaf${chain(defect, answers)}`);
  }
  return race(
    [
      { name: 'if-chain', run: each(({ defect, answers }) => (kept += chain(defect, answers))) },
      { name: 'table', run: each(({ root, codes }) => (kept += endOf(trees, root, codes))) },
      {
        name: 'xstate 5.33, actor',
        run: each(({ defect, answers }) => {
          const machine = machineOf.get(defect);
          if (machine) kept += runMachine(machine, trees, answers).length;
        }),
      },
    ],
    SESSIONS,
  );
};

const bothWays = (): readonly Timed[] => {
  for (const { defect, root, unsure, codesUnsure } of sessions) {
    const found = new Set<number>();
    chainBoth(defect, unsure, found);
    ends.fill(0);
    markEnds(trees, root, codesUnsure, ends);
    agree(
      'both ways',
      numbersIn(ends, trees.leaves.length),
      [...found].sort((a, b) => a - b),
    );
  }
  return race(
    [
      {
        name: 'if-chain',
        run: each(({ defect, unsure }) => {
          const found = new Set<number>();
          chainBoth(defect, unsure, found);
          kept += found.size;
        }),
      },
      {
        name: 'table',
        run: each(({ root, codesUnsure }) => {
          ends.fill(0);
          markEnds(trees, root, codesUnsure, ends);
          kept += ends[0] ?? 0;
        }),
      },
      {
        name: 'with what was met and why',
        run: each(({ defect, on }) => (kept += possible(known, on, defect).leaves.length)),
      },
      {
        name: 'the whole walk: causes, rules, what to do, trace',
        run: each(({ defect, on }) => (kept += walk(known, on, defect, { forCause: true }).leaves.length)),
      },
    ],
    SESSIONS,
  );
};

const rules = (): readonly Timed[] => {
  for (const { facts, factCodes } of sessions) {
    markHolding(table, factCodes, bits);
    const count = listBits();
    const mine = [...out.subarray(0, count)];
    agree('rules', mine, [...out.subarray(0, chainRules(facts, out))]);
  }
  return race(
    [
      { name: 'if-chain', run: each(({ facts }) => (kept += chainRules(facts, out))) },
      {
        name: 'bits',
        run: each(({ factCodes }) => {
          markHolding(table, factCodes, bits);
          kept += listBits();
        }),
      },
      {
        name: 'bits, from words',
        run: each(({ facts }) => {
          markHolding(
            table,
            codesOf(table.facts, (name) => facts[name]),
            bits,
          );
          kept += listBits();
        }),
      },
    ],
    SESSIONS,
  );
};

/** The rules library answers only by promises, so it is timed apart, beside the table in the same minute. */
const slowPeers = async () => {
  const engines = treeEngines(trees);
  const all = ruleEngine(known.rules);
  const few = sessions.slice(0, 96);
  const timed = async (run: (session: (typeof sessions)[number]) => Promise<void>): Promise<number> => {
    for (const session of few) await run(session);
    const began = process.hrtime.bigint();
    for (const session of few) await run(session);
    return Number(process.hrtime.bigint() - began) / few.length;
  };
  const walked = await timed(async ({ defect, answers }) => {
    const { events } = (await engines.get(defect)?.run(answers)) ?? { events: [] };
    agree(
      'json-rules-engine, a walk',
      events.map(({ type }) => Number(type)),
      [chain(defect, answers)],
    );
  });
  const fired = await timed(async ({ facts }) => {
    const { events } = await all.run(facts);
    agree(
      'json-rules-engine, rules',
      events.map(({ type }) => Number(type)).sort((a, b) => a - b),
      [...out.subarray(0, chainRules(facts, out))],
    );
  });
  return { walked, fired };
};

const gz = (text: string): number => gzipSync(text, { level: 9 }).length;

const run = async () => {
  const [walked, both, fired] = [walks(), bothWays(), rules()];
  const slow = await slowPeers();
  const base = (of: readonly Timed[]) => of[0]?.ns ?? Number.NaN;
  const beside = (name: string, ns: number, floor: number): Timed => ({
    name,
    ns,
    ratio: [ns / floor, ns / floor, ns / floor],
  });
  return {
    machine: `${cpus()[0]?.model.trim() ?? 'unknown'}, ${cpus().length} cores, Node ${process.versions.node}`,
    sessions: SESSIONS,
    rows: [
      {
        what: 'one walk',
        goal: 1,
        timed: [...walked, beside('json-rules-engine 7.3', slow.walked, base(walked))],
      },
      { what: 'both ways kept, 1 answer in 10 not told', goal: 1.5, timed: both },
      {
        what: `${known.rules.length} rules on a case`,
        goal: 0.6,
        timed: [...fired, beside('json-rules-engine 7.3', slow.fired, base(fired))],
      },
      { what: 'a board of 480 × 360', goal: undefined, timed: await boardRace(known) },
    ],
    bytes: {
      'if-chain, trees and rules, gz': gz(treeChainBoth(trees) + ruleChain(known.rules)),
      'tables, trees and rules, gz': gz(
        JSON.stringify([[...trees.nodes], trees.questions, [...trees.roots], [...table.rows], table.facts]),
      ),
    },
    search: searchQuality(known),
  };
};

const result = await run();
if (!Number.isFinite(kept)) throw new Error('nothing was timed');
console.log(process.argv.includes('--json') ? JSON.stringify(result, undefined, 2) : tableOf(result));

export type Benched = Awaited<ReturnType<typeof run>>;
