import { readCases } from '../cases/case-file.ts';
import { known, rawContent, retired } from '../content/real/knowledge.ts';
import { guardsOf } from './caught.ts';
import { mutantsOf } from './mutants.ts';
const want = process.argv[2] === 'signs' ? /flip a sign/ : /swap yes|remove a branch/;
const all = [...mutantsOf(rawContent)].filter((m) => want.test(m.slip));
const g = guardsOf(rawContent, retired, readCases('test/cases').filter((one) => known.has('defect', one.defect)));
let n = 0; const c: Record<string, number> = {};
for (const m of all) { const by = g(m); c[by ?? 'none'] = (c[by ?? 'none'] ?? 0) + 1; if (!by) console.log(m.slip, '|', m.what); }
console.log(all.length, c);
