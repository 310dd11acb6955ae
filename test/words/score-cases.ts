/**
 * `npm run score:cases -- open|sealed [--unfilled] [--list]`: walks the cases of a part and tells how many reach acceptable
 * advice and the cause that the source names. `--unfilled` leaves out what the source leaves open. What a case forbids is
 * no harm as a step of a repair that the case itself accepts (a last coat after the sanding). The sealed part is scored
 * once, at the end.
 */
import { fileURLToPath } from 'node:url';
import { provenKnowledge } from '../../content/tools/knowledge.ts';
import { advise, caseOf, forbiddenIn, isAcceptable, namesTheCause, told } from '../cases/advise.ts';
import type { TroubleCase } from '../cases/case-file.ts';
import { type Part, readTroubles, type Trouble } from './words.ts';

/** Such a case as the cases beside the walk have it; `unfilled` without what the source leaves open. */
const asCase = (one: Trouble, unfilled: boolean): TroubleCase => {
  const open = unfilled ? (one.filled ?? []) : [];
  const kept = (ids: readonly string[]) => ids.filter((id) => !open.includes(id));
  return { ...one, yes: kept(one.yes), no: kept(one.no), source: 'words', file: one.id } as TroubleCase;
};

const share = (part: number, all: number): string =>
  `${part} of ${all} (${((100 * part) / all).toFixed(1)} %)`;

const [part = 'open', ...flags] = process.argv.slice(2);
if (part !== 'open' && part !== 'sealed') throw new Error('say open or sealed');
const { known, issues } = provenKnowledge(fileURLToPath(new URL('../..', import.meta.url)));
if (!known) throw new Error(`the content has ${issues.length} faults: npm run check`);

const judged = readTroubles(part as Part).map((trouble) => {
  const one = asCase(trouble, flags.includes('--unfilled'));
  const advice = advise(known, one, one.defect, caseOf(one));
  const right = isAcceptable(known, advice, one.acceptable, one.stops);
  return {
    trouble,
    advice,
    right,
    cause: namesTheCause(known, one),
    harm: right ? [] : forbiddenIn(known, advice, one.forbidden, one.stops),
  };
});

const withCause = judged.filter(({ trouble }) => trouble.cause);
const real = judged.filter(({ trouble }) => !trouble.invented);
const lines = [
  `advice acceptable ${share(judged.filter(({ right }) => right).length, judged.length)}`,
  `of those not invented ${share(real.filter(({ right }) => right).length, real.length)}`,
  `cause as the source has it ${share(withCause.filter(({ cause }) => cause).length, withCause.length)}`,
  `what the case forbids advised in ${share(judged.filter(({ harm }) => harm.length).length, judged.length)}`,
];
console.log(lines.join('\n'));
if (flags.includes('--list'))
  for (const { trouble, advice, right, cause, harm } of judged)
    if (!right || !cause || harm.length)
      console.log(
        `\n${trouble.id} ${trouble.title}\n  source: ${trouble.says}\n  wants: ${trouble.acceptable.join(', ')}${trouble.cause ? `; cause /${trouble.cause}/` : ''}; stops ${trouble.stops}` +
          `\n  got: ${right ? 'acceptable ' : 'DIFFERS '}${cause ? '' : 'CAUSE '}${harm.length ? `HARM ${harm} ` : ''}${told(advice)}`,
      );
