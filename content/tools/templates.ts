/** What a new file of each kind begins with. Everything in <angle brackets> is for the author to replace. */
const words = (id: string) => id.replaceAll('-', ' ').replace(/^./, (first) => first.toUpperCase());

export const templates = {
  question: (id: string) => `---
ask: <Is it ${id.replaceAll('-', ' ')}?>?
how: <One sentence - how a beginner checks this.>
by: look
safe-from: wet
yes: <What yes is like.>
no: <What no is like.>
sure: <The cheapest way to make certain.>
effort: 1
no-boards: <Why there is no pair of boards yet.>
---
`,
  remedy: (id: string, today: string) => `---
name: <${words(id)}>
summary: <One sentence - when this is the right thing to do.>
now:
  recoatable: { say: <What is done now and why.>, not: <The tempting mistake.> }
steps:
  - { kind: look, say: <What to look at first - and in which light.> }
worked: <How to know that it worked.>
if-not: { say: <What to do if it did not work.> }
prevent:
  - <What would have prevented it.>
claims:
  - { says: <A statement that this rests on.>, grade: common-practice }
changes:
  - { on: ${today} }
---
<Two to six sentences of hands' knowledge.>
`,
  defect: (id: string, today: string) => `---
name: <${words(id)}>
summary: <What it is, in one or two plain sentences.>
while-wet: <What she must hear while the coat is wet - is it normal, does it go, what makes it worse.>
while-wet-rests-on: { grade: invented }
also: [<what people type 1>, <what people type 2>, <what people type 3>, <what people type 4>]
often: occasional
families: [water-based]
looks: <What it looks and feels like - wet and dry and in low side light.>
shows: <When it shows.>
signs: {}
look-alikes: []
tree:
  leave: <Why it is good enough as it is, until the tree is written.>
prevent:
  - <What prevents it.>
claims:
  - { says: <A statement that this rests on.>, grade: common-practice }
changes:
  - { on: ${today} }
---
<How to recognize it and why it happens.>
`,
  source: (id: string) => `---
title: <${words(id)}>
kind: article
year: undated
read: <What was really read - the whole, an excerpt, or nothing (memory).>
---
`,
  rule: () => `---
kind: caution
level: care
title: <Short title>
say: <The caution, calm and short.>
why: <Why it matters, in one sentence.>
hazards: [dust]
defers: <Whose word wins - the label, the safety data sheet, local rules.>
claims:
  - { says: <A statement that this rests on.>, grade: common-practice }
---
`,
  term: (id: string) => `---
term: <${words(id)}>
means: <What it means, in one or two plain sentences.>
---
`,
} as const;
