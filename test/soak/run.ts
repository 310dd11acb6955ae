/**
 * A user of chance on the built site, in a real browser, on a clock that jumps by hours.
 *
 *   npm run soak                  two minutes, seed 1
 *   npm run soak -- 20 7          twenty minutes, seed 7
 *   npm run soak -- replay        the last fault once more, and the fewest acts that bring it about
 *
 * A fault ends the run; what was done lies in `reports/soak/fault.json`, what was measured in `reports/soak/SEED.json`.
 */
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { fewest } from './replay.ts';
import { type Fault, grown, type Soaked, soak, spanOf } from './soak.ts';

const FOLDER = 'reports/soak';
const FAULT = `${FOLDER}/fault.json`;
const SHRINK_MINUTES = 5;
const LAST = 10;

const round = (value: number): string =>
  Number.isFinite(value) ? String(Math.round(value * 100) / 100) : '–';

const tell = ({ seed, counts, hours, growth, stored, fault }: Soaked): void => {
  console.log(
    `seed ${seed}: ${counts.done} acts done over ${Math.round(hours)} hours of the clock; ` +
      `${counts.nothing} had nothing to do, ${counts.missed} missed`,
  );
  for (const { where, bytes, nodes, listeners, held } of growth)
    console.log(
      `  ${where}: ${round(bytes.slope)} bytes an act (${round(bytes.least)} to ${round(bytes.most)}), ` +
        `nodes ${round(nodes.slope)} (${round(nodes.least)} to ${round(nodes.most)}), ` +
        `listeners ${round(listeners.slope)}; measured ${held.length} times, last ${round((held.at(-1)?.heap ?? 0) / 1e6)} MB`,
    );
  console.log(
    `  storage: ${round((stored.last - stored.first) / 1e6)} MB more, notes of ${stored.notes} letters`,
  );
  if (!fault) return;
  console.log(`  fault at act ${fault.at}:`);
  for (const says of fault.says) console.log(`    ${says}`);
  for (const [name, dice] of fault.acts.slice(-LAST)) console.log(`      ${name} (${dice})`);
  console.log('  npm run soak -- replay');
};

if (!existsSync('dist/index.html')) throw new Error('There is no site to soak: npm run build');
mkdirSync(FOLDER, { recursive: true });
const [first = '2', second = '1'] = process.argv.slice(2);
if (first === 'replay') {
  const { acts } = JSON.parse(readFileSync(FAULT, 'utf8')) as Fault;
  const found = await fewest(acts, SHRINK_MINUTES);
  if (!found) console.log('It did not go wrong again.');
  for (const says of found?.says ?? []) console.log(says);
  for (const [name, dice] of found?.acts ?? []) console.log(`  ${name} (${dice})`);
} else {
  const soaked = await soak(spanOf(Number(first)), Number(second));
  tell(soaked);
  writeFileSync(`${FOLDER}/${second}.json`, JSON.stringify(soaked.growth, undefined, 1));
  if (soaked.fault) writeFileSync(FAULT, JSON.stringify(soaked.fault));
  const wrong = grown(soaked);
  for (const says of wrong) console.error(says);
  if (soaked.fault || wrong.length) process.exitCode = 1;
}
