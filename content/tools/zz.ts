import { link } from '#engine/link.ts'; import { readContent } from './read.ts';
import { matrixOf } from '#engine/see/matrix.ts'; import { survey } from '#engine/see/survey.ts'; import { nodesOf } from '#engine/index.ts'; import { seeNodes } from '#engine/see/nodes.ts';
const l = link(readContent('.')); if(!l.ok) process.exit(1);
const k=l.value; const m=matrixOf(k); console.log(m.defects.length,m.questions.length); let t=performance.now(); console.log(survey(m), performance.now()-t);
let n=0; for (const d of k.defects){const c=[...nodesOf(k,d.id)].length;n+=c} console.log('nodes',n);
t=performance.now(); console.log('see nodes',[...seeNodes(m)].length, performance.now()-t);
// missing signs per question
for (const [i,q] of m.questions.entries()){ const e=[...m.signs[i]!].filter(c=>c==='2').length; console.log(q.padEnd(34),'either',e,'explicit either', k.defects.filter(d=>(d.signs as any)[q]==='either').length) }
