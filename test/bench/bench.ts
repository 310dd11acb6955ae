/**
 * `npm run bench [-- quick|browser|build|growth|all …] [--json] [--write]`: what this costs, beside peers, as ratios from
 * one run. Every contestant is first shown to give the same results; what differs ends the run.
 */
import { cpus, loadavg } from 'node:os';
import { type Figures, type Measured, PARTS, type Part, type PartName, writeFigures } from './figures.ts';
import { tableOf } from './table.ts';

/** Each part loads only what it needs: a browser is started for one of them alone. */
const MEASURE: Readonly<Record<PartName, () => Promise<Measured>>> = {
  quick: async () => (await import('./quick/quick.ts')).quick(),
  browser: async () => (await import('./browser/browser.ts')).browser(),
  build: async () => (await import('./build/build.ts')).builds(),
  growth: async () => (await import('./growth/growth.ts')).growth(),
};

/** The machine, and how many programs wanted it when a part began: what is measured on a busy one is to be measured again. */
const machine = (): string =>
  `${cpus()[0]?.model.trim() ?? 'unknown'}, ${cpus().length} cores, load ${loadavg()[0]?.toFixed(1)}, Node ${process.versions.node}`;

const measured = async (name: PartName): Promise<Part> => {
  const on = { on: new Date().toISOString().slice(0, 10), machine: machine() };
  const began = performance.now();
  const found = await MEASURE[name]();
  const took = Math.round((performance.now() - began) / 1000);
  return { ...on, took, ...found };
};

const words = process.argv.slice(2).filter((word) => !word.startsWith('--'));
const unknown = words.filter((word) => word !== 'all' && !PARTS.some((name) => name === word));
if (unknown.length) throw new Error(`no part "${unknown[0]}": ${PARTS.join(', ')}, all`);
const wanted = words.includes('all')
  ? PARTS
  : PARTS.filter((name) => (words.length ? words : ['quick']).includes(name));

let figures: Figures = {};
for (const name of wanted) figures = { ...figures, [name]: await measured(name) };
if (process.argv.includes('--write')) writeFigures(figures);
console.log(process.argv.includes('--json') ? JSON.stringify(figures, undefined, 2) : tableOf(figures));
