/** `npm run hazards`: which steps can do what, which rules stand before them, and how many cases were looked at. */

import { HAZARD_NAMES, HAZARDS } from '#engine/model/hazard.ts';
import { caseBook } from '#engine/prove/hazard-cases.ts';
import { familiesByRemedy } from '#engine/prove/hazards-are-cautioned.ts';
import { layingHazards } from '#engine/prove/laying-hazards.ts';
import { hazardsOfLesson, lackedByLesson, rulesBefore } from '#engine/prove/lessons-are-cautioned.ts';
import { weightOf } from '#engine/prove/needs.ts';
import { factsOfStep } from '#engine/rules/hazards.ts';
import { provenKnowledge } from './knowledge.ts';
import { readPlan } from './plan.ts';

const { known } = provenKnowledge(process.cwd());
if (!known) {
  console.error('The content does not link; npm run check tells why.');
  process.exit(1);
}

const lists = familiesByRemedy(known);
const book = caseBook(known);
const open = new Map<string, number>();
let steps = 0;
let ways = 0;
for (const remedy of known.remedies)
  for (const step of remedy.steps) {
    steps++;
    for (const families of lists.get(remedy.id) ?? [[]]) {
      ways++;
      for (const { hazard } of book.holesOf(step, families)) open.set(hazard, (open.get(hazard) ?? 0) + 1);
    }
  }

for (const hazard of HAZARD_NAMES) {
  const remedies = known.remedies.filter((remedy) =>
    remedy.steps.some((step) => factsOfStep(step).has(hazard)),
  );
  const at = remedies.flatMap((remedy) => remedy.steps.filter((step) => factsOfStep(step).has(hazard)));
  const rules = known.rules.filter((rule) => rule.hazards.includes(hazard));
  console.log(
    `${hazard.padEnd(18)} ${String(remedies.length).padStart(3)} repairs ${String(at.length).padStart(4)} steps ` +
      `${String(open.get(hazard) ?? 0).padStart(3)} holes  ${HAZARDS[hazard]}\n` +
      `${' '.repeat(19)}${rules.map((rule) => `${rule.id} (${weightOf(rule)})`).join(', ') || 'no rule'}`,
  );
}
console.log(
  `\n${known.remedies.length} repairs, ${steps} steps, by every flaw that leads to them ${ways}; ` +
    `${book.casesOfAStep.toLocaleString('en-US')} cases of each, ` +
    `${(ways * book.casesOfAStep).toLocaleString('en-US')} in all. ` +
    `Equal ones are looked at once: ${book.looked.toLocaleString('en-US')}.`,
);

console.log('\nLessons: what the practice can do, and the rules before it');
let lacked = 0;
for (const lesson of known.lessons) {
  const does = [...hazardsOfLesson(lesson)].map(([hazard, truth]) =>
    truth === 'yes' ? hazard : `${hazard}?`,
  );
  const lacks = lackedByLesson(known, lesson);
  lacked += lacks.length;
  console.log(
    `${lesson.id.padEnd(20)} ${String(lacks.length).padStart(3)} holes  ${does.join(', ') || 'nothing'}` +
      `\n${' '.repeat(21)}${
        rulesBefore(known, lesson)
          .map(({ id }) => id)
          .join(', ') || 'no rule'
      }`,
  );
}

const laid = layingHazards(known, readPlan(known, process.cwd()), book);
const faults = [...laid.untold, ...laid.silenced];
console.log(
  `\nPlan and clock: ${laid.coats.toLocaleString('en-US')} coats by product, base, tool, hardener and coat below, ` +
    `${laid.steps.toLocaleString('en-US')} steps, ${laid.cases.toLocaleString('en-US')} cases, ` +
    `${laid.holes.length} holes, ${faults.length} left out.`,
);
for (const fault of faults.slice(0, 20)) console.log(fault);
for (const { hazard, lacks, in: where } of laid.holes.slice(0, 20))
  console.log(`${hazard} lacks a ${lacks}: ${where}`);
if (open.size || lacked || laid.holes.length || faults.length) process.exitCode = 1;
