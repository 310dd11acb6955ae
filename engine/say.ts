import type { Issue } from './issue.ts';
import { HAZARDS } from './model/hazard.ts';
import { FOLDERS } from './model/index.ts';

const list = (names: readonly string[]): string =>
  names.slice(0, 24).join(', ') + (names.length > 24 ? ', …' : '');
const maybe = (name: string | undefined): string => (name ? `did you mean "${name}"?` : '');

/** What is wrong, and how the author mends it, without the place. */
const words = (issue: Issue): [what: string, mend: string] => {
  switch (issue.code) {
    case 'bad-yaml':
      return issue.mend
        ? [issue.message, issue.mend]
        : [`the front matter is not valid YAML: ${issue.message}`, 'mend the YAML on this line'];
    case 'no-front-matter':
      return ['there is no front matter', 'begin the file with a block of YAML between two lines of ---'];
    case 'bad-id':
      return [`"${issue.id}" is not a usable id`, 'name the file in lower-case words joined by hyphens'];
    case 'unknown-key':
      return [
        `there is no key "${issue.key}" here`,
        maybe(issue.nearest) || (issue.allowed.length ? `use one of ${list(issue.allowed)}` : 'remove it'),
      ];
    case 'missing-key':
      return [`"${issue.key}" is missing`, `add ${issue.key}: …`];
    case 'bad-value':
      return [`the value at ${issue.at} does not fit: ${issue.message}`, 'change the value'];
    case 'bad-branch':
      return [
        `a branch needs exactly one of ask, remedy, defect, leave; this one has ${issue.keys.length ? list(issue.keys) : 'none'}`,
        'write one of { ask: …, yes: …, no: … }, { remedy: … }, { defect: … }, { leave: … }',
      ];
    case 'dead-link':
      return [
        `there is no ${issue.kind} "${issue.id}"`,
        maybe(issue.nearest) || `write content/${FOLDERS[issue.kind]}/${issue.id}.mdx or link another`,
      ];
    case 'unknown-name':
      return [
        `there is no ${issue.what} "${issue.name}" in ${issue.in}`,
        maybe(issue.nearest) || `add it there, or write it out here`,
      ];
    case 'left-over':
      return [`"${issue.text}" is what the template left`, 'put your own words in its place'];
    case 'still-there':
      return [
        `the ${issue.kind} "${issue.id}" is retired here and still there`,
        `delete content/${FOLDERS[issue.kind]}/${issue.id}.mdx, or this line`,
      ];
    case 'near-name':
      return [
        `the ${issue.kind} "${issue.id}" is named almost like "${issue.other}"`,
        'use that one, or name this one by what tells it apart',
      ];
    case 'needs-quotes':
      return [
        issue.why === 'colon'
          ? `the text "${issue.text}" holds a colon, which begins a new field in YAML`
          : `a comma cut this text in two: "${issue.text}" was read as a field of its own`,
        "put the whole text between quotes: '…'",
      ];
    case 'bad-choice':
      return [
        `"${issue.value}" can not stand at ${issue.at}`,
        maybe(issue.nearest) || `use one of ${list(issue.allowed)}`,
      ];
    case 'unused-name':
      return [`nothing uses the ${issue.what} "${issue.name}"`, 'write its name in a remedy, or remove it'];
    case 'retired-link':
      return [`the ${issue.kind} "${issue.id}" was retired`, `link "${issue.now}" instead`];
    case 'no-source':
      return [
        `the claim "${issue.says}" is ${issue.grade} but names no source`,
        'add source: with the id of a file in content/sources',
      ];
    case 'unknown-fact':
      return [
        `there is no fact or question "${issue.fact}"`,
        maybe(issue.nearest) || 'use a fact of engine/model/facts.ts or the id of a question',
      ];
    case 'bad-fact-value':
      return [`"${issue.value}" is no value of "${issue.fact}"`, `use one of ${list(issue.allowed)}`];
    case 'see-cycle':
      return [`these trees hand over in a circle: ${issue.path.join(' → ')}`, 'end one of them in a remedy'];
    case 'asked-twice':
      return [
        `"${issue.question}" is asked twice on one path`,
        'remove the lower one; its answer is known there',
      ];
    case 'known-already':
      return [
        `the answers above already make "${issue.question}" ${issue.answer}`,
        `put its ${issue.answer} branch here instead`,
      ];
    case 'same-both-ways':
      return [`both answers of "${issue.question}" lead to the same end`, 'remove the question'];
    case 'orphan':
      return [`nothing leads to the ${issue.kind} "${issue.id}"`, 'link it from a tree, or delete the file'];
    case 'look-alike-same':
      return [
        `no sign separates "${issue.defect}" from its look-alike "${issue.other}"`,
        'give one question the sign yes in one of them and no in the other',
      ];
    case 'touches-setting':
      return [
        `at the stage ${issue.stage} this remedy says "${issue.doing}"`,
        `a film at this stage allows only ${list(issue.allowed)}`,
      ];
    case 'touch-ordered':
      return [
        `"${issue.order}" orders a touch ${issue.where}`,
        'say what the film does by itself and when to look again; what hands do then goes under steps:',
      ];
    case 'times-differ':
      return [
        `at the stage ${issue.stage} what is said does not go with "${issue.again}"`,
        'give the act an "again" of its own that names the same time',
      ];
    case 'step-order':
      return [`the step "${issue.step}" comes before what it needs`, issue.needs];
    case 'against-told':
      return [
        `the step "${issue.step}" is still told where ${issue.told} is told: ${issue.why}`,
        'give it a when: that shuts this out, or say by: hand or by: spray, or word it for both',
      ];
    case 'no-caution':
      return [
        `no rule gives a ${issue.lacks} before the step "${issue.step}", which ${HAZARDS[issue.hazard]} (${issue.in})`,
        `add a rule with hazards: [${issue.hazard}], or let one fire in this case`,
      ];
    case 'comes-off-untold':
      return [
        `the step "${issue.step}" takes off what may be soft ("${issue.word}"), and nothing tells that cloth or paper then heats up by itself`,
        'add of: same for her finish, of: oil for drying oil, of: base-color for the color below',
      ];
    case 'look-lays':
      return [
        `the step "${issue.step}" is of kind ${issue.kind}, and says "${issue.word}"`,
        'give what lays a coat or opens a can a step of its own: coat, mix or test-patch',
      ];
    case 'hazard-untold':
      return [
        `the step "${issue.step}" says "${issue.word}", but nothing tells that it ${HAZARDS[issue.hazard]}`,
        `choose the kind, with, product or tries that it uses, or add does: [${issue.hazard}]`,
      ];
    case 'check-cuts':
      return [
        `the check "${issue.text}" says "${issue.word}": a question is shown alone, with no stop on old layers before it`,
        'let it be answered by looking, or say what to do over layers of unknown age',
      ];
    case 'check-touches':
      return [
        `the check "${issue.text}" says "${issue.word}" while the film may be wet`,
        'let it be answered by looking, above an uncoated part or once it is dry, or give it a later safe-from',
      ];
    case 'over-limit':
      return [
        `this step takes ${issue.what} to ${issue.percent} %`,
        `the rule "${issue.rule}" allows ${issue.most} % at most`,
      ];
    case 'sign-unasked':
      return [
        `the tree asks "${issue.question}", but the defect gives no sign for it`,
        `add it to signs: yes, no or either`,
      ];
    case 'needless-sign':
      return [
        `"${issue.question}" is ${issue.sign} for every flaw that says nothing of it`,
        'remove this line, or write what this flaw shows instead',
      ];
    case 'mark-untold':
      return [
        `"${issue.question}" is yes, but no words here tell of it (${issue.ask})`,
        'say under looks: how it shows, or under also: how people put it, or mend the sign; content/hear/questions.yaml has the words that are understood',
      ];
    case 'too-hard':
      return [
        `"${issue.text}" reads at US grade ${issue.grade.toFixed(1)}`,
        `use shorter words and sentences (grade ${issue.most} at most)`,
      ];
    case 'unreachable-defect':
      return [
        `"${issue.defect}" can not be reached ${issue.by}`,
        'sharpen its signs, its other names, or the look-alikes of its neighbors',
      ];
    case 'no-board':
      return [
        `the ${issue.kind} "${issue.id}" has no board`,
        issue.kind === 'defect'
          ? 'add its recipe under boards:'
          : 'add its pair under boards:, or say why it has none under no-boards:',
      ];
    case 'off-the-board':
      return [
        `"${issue.kind}" is laid at ${list(issue.at.map(String))} mm, off a piece ${issue.wide} mm wide and ${issue.high} mm high`,
        'give an at: within it, from the left and top edge, or leave at: out',
      ];
    case 'not-shown':
      return [
        `"${issue.kind}" has ${issue.field} ${issue.mm} on a piece ${issue.wide} mm wide: ` +
          (issue.why === 'large' ? 'it is larger than the piece' : 'it is too fine to be seen'),
        `change the size, or give the board ${issue.why === 'large' ? 'more' : 'less'} width-mm`,
      ];
    case 'size-differs': {
      const [least, most] = issue.drawn;
      return [
        `the text says ${issue.said}, and the board draws ${issue.field} ${least === most ? least : `${least} to ${most}`}`,
        'draw it as it is said, or mend the text',
      ];
    }
    case 'against-the-trade':
      return [issue.what, issue.mend];
    case 'sign-differs':
      return [`"${issue.question}" is ${issue.sign}, and ${issue.says}`, 'mend the one that is wrong'];
    case 'stray-file':
      return ['nothing reads this file', `name it ${issue.should}, or delete it`];
    case 'lost-address':
      return [
        `${issue.address} was published and must answer for ever, but there is no ${issue.kind} "${issue.id}"`,
        `bring content/${FOLDERS[issue.kind]}/${issue.id}.mdx back, or say in content/retired.yaml what stands for it: ${issue.kind}/${issue.id}: ${issue.nearest ?? 'new-id'}`,
      ];
    case 'word-twice':
      return [`"${issue.word}" stands twice in a row`, 'remove one of them'];
    case 'misspelt':
      return [
        `"${issue.word}" is in no American dictionary`,
        `${maybe(issue.nearest)} If it is right, add it under spelled: in content/wording.yaml`.trim(),
      ];
    case 'other-word':
      return [`this site does not write "${issue.word}"`, `write "${issue.write}"`];
    case 'past-the-reader':
      return [`"${issue.word}" speaks past the reader`, 'speak to the reader: you, your'];
    case 'one-system':
      return [
        `"${issue.figure}" stands in one system of units alone`,
        `write "${issue.figure} (${issue.wants})"`,
      ];
    case 'figures-differ':
      return [
        `"${issue.figure}" and "${issue.beside}" are not the same`,
        `${issue.figure} is ${issue.is}; mend the one that is wrong`,
      ];
    case 'figure-unclaimed':
      return [
        `no claim holds the figure "${issue.figure}"`,
        'add a claim that says it and how we know it, or use a figure that one has',
      ];
    case 'bare-figure':
      return [`"${issue.figure}" holds a figure without its unit`, 'write the unit behind it'];
    case 'needless-exception':
      return [`the exception for ${issue.of} is no longer needed`, 'remove it'];
    default:
      issue satisfies never;
      throw new Error(`no words for the issue ${JSON.stringify(issue)}`);
  }
};

/** One line: `file:line: what; what to do`. */
export const say = (issue: Issue): string => {
  const [what, mend] = words(issue);
  return `${issue.file}:${issue.line}: ${what}; ${mend}`;
};
