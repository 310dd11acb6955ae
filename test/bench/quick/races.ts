/** Walks and rules beside an if-chain of the same content and general libraries; each is shown to agree first. */
import { rulesOf, treesOf } from '#engine/compiled/compiled.ts';
import { codesOf } from '#engine/compiled/fact-codes.ts';
import { markHolding } from '#engine/compiled/rules.ts';
import { endOf, markEnds } from '#engine/compiled/trees.ts';
import { type Knowledge, possible, walk } from '#engine/index.ts';
import { compiledFrom, ruleChain, treeChain, treeChainBoth } from '../if-chain.ts';
import { race, type Timed } from '../measure.ts';
import { type Row, rowsOf } from '../row.ts';
import { type Answers, type Facts, machines, ruleEngine, runMachine, treeEngines } from './peers.ts';
import { type Session, sessionsOf } from './sessions.ts';

const agree = (what: string, one: unknown, other: unknown): void => {
  if (JSON.stringify(one) !== JSON.stringify(other))
    throw new Error(`${what}: ${JSON.stringify(one)} is not ${JSON.stringify(other)}; nothing was timed`);
};

/** General libraries are to take at least so many times the time. */
const FASTER = 500;

export const races = async (known: Knowledge): Promise<readonly Row[]> => {
  const trees = treesOf(known);
  const table = rulesOf(known);
  const sessions = sessionsOf(known);
  const chain = compiledFrom<(defect: string, a: Answers) => number>(treeChain(trees));
  const chainBoth = compiledFrom<(defect: string, a: Answers, out: Set<number>) => void>(
    treeChainBoth(trees),
  );
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

  const each = (run: (session: Session) => void) => () => {
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
      sessions.length,
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
          run: each(({ defect, on }) => {
            const { leaves: causes, met } = possible(known, on, defect);
            kept += causes.length;
            for (const { answer, open, of } of met) kept += answer === 'unsure' || open ? of.length : 1;
          }),
        },
        {
          name: 'the whole walk: causes, rules, what to do, trace',
          run: each(({ defect, on }) => (kept += walk(known, on, defect, { forCause: true }).leaves.length)),
        },
      ],
      sessions.length,
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
      sessions.length,
    );
  };

  /** The rules library answers only by promises, so it is timed apart, beside the table in the same minute. */
  const slowPeers = async () => {
    const engines = treeEngines(trees);
    const all = ruleEngine(known.rules);
    const few = sessions.slice(0, 96);
    const timed = async (run: (session: Session) => Promise<void>): Promise<number> => {
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

  const [walked, both, fired] = [walks(), bothWays(), rules()];
  const slow = await slowPeers();
  if (!Number.isFinite(kept)) throw new Error('nothing was timed');
  const base = (of: readonly Timed[]) => of[0]?.ns ?? Number.NaN;
  const beside = (name: string, ns: number, floor: number): Timed => ({
    name,
    ns,
    ratio: [ns / floor, ns / floor, ns / floor],
  });
  const faster = (what: string, peer: string, ns: number, of: readonly Timed[]): Row => ({
    what,
    name: `${peer}, over the ${of[1]?.name}`,
    value: ns / (of[1]?.ns ?? Number.NaN),
    unit: 'times',
    goal: { least: FASTER, of: 'value' },
  });
  const ruleCount = `${known.rules.length} rules on a case`;
  return [
    ...rowsOf('one walk', [...walked, beside('json-rules-engine 7.3', slow.walked, base(walked))], {
      table: { most: 1, of: 'ratio' },
    }),
    faster('', 'xstate 5.33', walked[2]?.ns ?? Number.NaN, walked),
    faster('', 'json-rules-engine 7.3', slow.walked, walked),
    ...rowsOf('both ways kept, 1 answer in 10 not told', both, {
      table: { most: 1.5, of: 'ratio' },
      'with what was met and why': { most: 2, of: 'ratio' },
    }),
    ...rowsOf(ruleCount, [...fired, beside('json-rules-engine 7.3', slow.fired, base(fired))], {
      bits: { most: 0.6, of: 'ratio' },
    }),
    faster('', 'json-rules-engine 7.3', slow.fired, fired),
  ];
};
