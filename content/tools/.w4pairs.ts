import { provenKnowledge } from '/work/main/content/tools/knowledge.ts';
import { separatedBy } from '/work/main/engine/prove/look-alikes-differ.ts';
const { known } = provenKnowledge('/work/main');
const mine = process.argv[2].split('|');
const out=[];
for (const a of known.defects) for (const b of known.defects) if (a.id<b.id && (mine.includes(a.id)||mine.includes(b.id))) {
  const s = separatedBy(a,b); if (s.length<2) out.push(`${a.id} ${b.id} ${s.map(x=>x.question)}`);
}
console.log(out.join('\n'));
for (const d of known.defects.filter(d=>mine.includes(d.id))) { let max=0; const depth=(b,n)=>{ if('ask' in b){depth(b.yes,n+1);depth(b.no,n+1)} else max=Math.max(max,n)}; depth(d.tree,0); console.log(d.id,max, Object.keys(d.signs).length, Object.values(d.signs).filter(x=>x==='either').length); }
