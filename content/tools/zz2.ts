import { link } from '#engine/link.ts'; import { readContent } from './read.ts'; import { matrixOf } from '#engine/see/matrix.ts';
const l = link(readContent('.')); if(!l.ok) process.exit(1);
const m=matrixOf(l.value);
for (const [i,q] of m.questions.entries()){ const s=m.signs[i]!; const w=(c:string)=>m.prior.reduce((a,p,j)=>a+(s[j]===c?p:0),0); const ei=m.defects.filter((_,j)=>s[j]==='2'); if(ei.length) console.log(q,'Y',w('1').toFixed(2),'N',w('0').toFixed(2),'E',w('2').toFixed(2),'|',ei.join(' ')) }
