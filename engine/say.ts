import { either } from './either.ts';
import { keysOf } from './entry-of.ts';
import type { Issue } from './issue.ts';
import { FACTS } from './model/facts.ts';
import { HAZARDS } from './model/hazard.ts';
import { FOLDERS } from './model/index.ts';
import { placeOf } from './place.ts';
import type { Weight } from './prove/needs.ts';

const list = (names: readonly string[]): string =>
  names.slice(0, 24).join(', ') + (names.length > 24 ? ', …' : '');
/** A sentence of its own as it stands behind a colon. */
const asClause = (sentence: string): string =>
  sentence.replace(/^[A-Z](?=[a-z ])/, (first) => first.toLowerCase()).replace(/\.$/, '');
const maybe = (name: string | undefined): string => (name ? `did you mean "${name}"?` : '');

/** How a rule of each weight is written, and what it is called. */
const RULE: Readonly<Record<Weight, readonly [called: string, written: string]>> = {
  stop: ['warning that stops people', 'kind: stop'],
  care: ['caution', 'kind: caution, level: care'],
  note: ['note', 'kind: caution, level: note'],
  limit: ['limit', 'kind: adjustment'],
};

/** Where the mark goes that tells what a line does. */
const MARKED = {
  step: (mark: string) =>
    `add ${mark} to this line, or choose the "kind:", "with:", "product:" or "tries:" that it uses`,
  act: (mark: string) => `add ${mark} to this line`,
  'if-not': () => 'make it a step under "steps:", or name after "remedy:" the repair that has such a step',
} as const;

const unreached = (kind: string, id: string): [what: string, mend: string] => {
  const drop = 'or delete this file';
  if (kind === 'question')
    return [
      `no flaw asks the question "${id}"`,
      `add ask: ${id} under "tree:" in a file in content/defects, ${drop}`,
    ];
  if (kind === 'source')
    return [`no claim rests on the source "${id}"`, `add source: ${id} to a claim that it tells, ${drop}`];
  return [
    `no flaw leads to the ${kind} "${id}"`,
    `add ${kind}: ${id} under "tree:" in a file in content/defects, ${drop}`,
  ];
};

/** What is wrong, and how the author mends it, without the place. */
const words = (issue: Issue): [what: string, mend: string] => {
  switch (issue.code) {
    case 'bad-yaml':
      return [issue.what, issue.mend];
    case 'no-front-matter':
      if (issue.why === 'dashes')
        return [`the first line is "${issue.first}"`, 'write three hyphens there and nothing else: ---'];
      if (issue.why === 'open')
        return [
          'the fields at the top of this file have no end',
          'write a line of three hyphens, ---, below the last of them',
        ];
      return [
        'the fields at the top of this file are missing',
        'begin with a line ---, then the fields, a line each, then a line --- again; copy the top of another file of the same folder',
      ];
    case 'bad-id':
      return [`"${issue.id}" is not a usable id`, 'name the file in lower-case words joined by hyphens'];
    case 'unknown-key':
      return [
        `there is no field "${issue.key}" here`,
        maybe(issue.nearest) || (issue.allowed.length ? `use one of ${list(issue.allowed)}` : 'remove it'),
      ];
    case 'missing-key':
      return [
        `the field "${issue.key}" is missing`,
        `add a line ${issue.key}: …${issue.about ? ` and write in place of the dots: ${asClause(issue.about)}` : ''}`,
      ];
    case 'bad-value':
      return [`${issue.what} ${placeOf(issue.at)}`, issue.wants];
    case 'bad-name':
      return [`"${issue.name}" can not stand here as a name`, maybe(issue.nearest) || issue.wants];
    case 'bad-branch':
      return [
        issue.keys.length
          ? `this branch holds ${issue.keys.join(' and ')}, where one of ask, remedy, defect and leave is wanted`
          : 'a branch is wanted here, with one of ask, remedy, defect and leave',
        'write { ask: …, yes: …, no: … }, { remedy: … }, { defect: … } or { leave: … }',
      ];
    case 'dead-link':
      return [
        `there is no ${issue.kind} "${issue.id}"`,
        maybe(issue.nearest) ||
          `write the name of a file in content/${FOLDERS[issue.kind]} here (without .mdx), or make a new file content/${FOLDERS[issue.kind]}/${issue.id}.mdx`,
      ];
    case 'unknown-name':
      return [
        `there is no ${issue.what} "${issue.name}"`,
        maybe(issue.nearest)
          ? `${maybe(issue.nearest)} Change it here (${issue.in} has them all)`
          : `write it out here, or add it to ${issue.in}`,
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
          ? `the text "${issue.text}" holds a colon, which begins a new field`
          : `a comma cut this text in two: "${issue.text}" was read as a field of its own`,
        `put the whole text between quotes: ${issue.write ?? '"…"'}`,
      ];
    case 'bad-choice':
      return [
        `"${issue.value}" can not stand ${placeOf(issue.at)}`,
        maybe(issue.nearest) || `write one of ${list(issue.allowed)}`,
      ];
    case 'unused-name':
      return [
        `nothing uses the ${issue.what} "${issue.name}"`,
        issue.nearest
          ? `did you mean "${issue.nearest}", which a remedy asks for? If it is a new one, write its name in a remedy`
          : 'write its name in a remedy, or remove it',
      ];
    case 'retired-link':
      return [`the ${issue.kind} "${issue.id}" was retired`, `link "${issue.now}" instead`];
    case 'no-source':
      return [
        `"${issue.says}" is marked grade: ${issue.grade}, but names no source`,
        'add "source:" with the name of a file in content/sources (without .mdx), or write another grade, such as common-practice',
      ];
    case 'unknown-fact':
      return [
        `there is no fact or question "${issue.fact}"`,
        maybe(issue.nearest) || `write one of ${list(keysOf(FACTS))}, or the name of a question`,
      ];
    case 'bad-fact-value':
      return [
        `"${issue.value}" is no value of "${issue.fact}"`,
        maybe(issue.nearest) || `write one of ${list(issue.allowed)}`,
      ];
    case 'see-cycle':
      return [
        issue.path.length > 2
          ? `these flaws send people on in a circle, and no repair is reached: ${issue.path.join(' → ')}`
          : 'this flaw sends people back to itself, and no repair is reached',
        'write "remedy:" with the name of a repair in place of "defect:" on this line',
      ];
    case 'asked-twice':
      return [
        `"${issue.question}" was asked already higher up, so its answer is known here: ${issue.answer}`,
        `take this question out, and keep here only what stands under its "${issue.answer}:"`,
      ];
    case 'known-already':
      return [
        `after the answers above, "${issue.question}" can only be answered ${issue.answer}`,
        `take this question out, and keep here only what stands under its "${issue.answer}:"`,
      ];
    case 'same-both-ways':
      return [
        `both answers of "${issue.question}" lead to the same end`,
        'take the question out, and keep that end',
      ];
    case 'orphan':
      return unreached(issue.kind, issue.id);
    case 'look-alike-same':
      return [
        `by their signs "${issue.defect}" and its look-alike "${issue.other}" can not be told apart`,
        'under "signs:" give one question yes in one of the two files and no in the other',
      ];
    case 'touches-setting':
      return [
        `"do: ${issue.doing}" is more than a film at the stage "${issue.stage}" bears`,
        `write ${either(issue.allowed.map((one) => `do: ${one}`))}, and change the sentence after "say:" to match`,
      ];
    case 'touch-ordered':
      return [
        `"${issue.order}" sends a hand to the film ${issue.where}`,
        'say what the film does by itself and when to look again; what hands do then goes under "steps:"',
      ];
    case 'times-differ':
      return issue.days === undefined
        ? [
            `at the stage "${issue.stage}" the film is as dry as "${issue.again}" waits for`,
            'add "again:" with the time to look again to this line, for example again: Look again when that time is over.',
          ]
        : [
            `the sentence after "say:" speaks of "${issue.days}", but people are told as well: "${issue.again}"`,
            'add "again:" with the same time to this line, for example again: Look again when that time is over.',
          ];
    case 'step-order':
      return [`the step "${issue.step}" ${issue.what}`, issue.mend];
    case 'against-told':
      return [
        `the step "${issue.step}" ${issue.why}, but it is shown as well to those with ${issue.fact}: ${either(issue.told)}`,
        issue.mend,
      ];
    case 'no-caution': {
      const [called, written] = RULE[issue.lacks];
      const rule = `in content/rules with ${written} and hazards: [${issue.hazard}]`;
      const where = issue.in === 'any case' ? '' : ` in this case: ${issue.in}`;
      return [
        `the ${issue.of} "${issue.step}" ${HAZARDS[issue.hazard]}, but no ${called} is shown before it${where}`,
        issue.of === 'lesson'
          ? `add under "rules:" the name of a file ${rule}`
          : `make a file ${rule}, or widen the "when:" of one that is there`,
      ];
    }
    case 'comes-off-untold':
      return [
        `the step "${issue.step}" takes off what may be soft ("${issue.word}"), but is not marked with what that is, so nobody would hear that cloth or paper then heats up by itself`,
        'add of: same for her finish, of: oil for drying oil, or of: base-color for the color below',
      ];
    case 'look-lays':
      return [
        `the step "${issue.step}" says "${issue.word}", but has kind: ${issue.kind}, which lays nothing and opens no can`,
        'give that a step of its own, with kind: coat, mix or test-patch',
      ];
    case 'hazard-untold':
      return [
        `"${issue.step}" says "${issue.word}", but the line is not marked as one that ${issue.hazards.map((one) => HAZARDS[one]).join(' and ')}, and no caution would stand before it`,
        MARKED[issue.of](`does: [${issue.hazards.join(', ')}]`),
      ];
    case 'check-cuts':
      return [
        `the check "${issue.text}" says "${issue.word}", and no warning of old paint, which may hold lead, is shown before a question`,
        'let it be answered by looking, or say in it what to do over layers of unknown age',
      ];
    case 'check-touches':
      return [
        `the check "${issue.text}" says "${issue.word}", but it may be asked while the film is wet`,
        'let it be answered by looking, or write after "safe-from:" the first stage at which touching does no harm, for example safe-from: dry-to-touch',
      ];
    case 'over-limit':
      return [
        `this step takes ${issue.what} to ${issue.percent} %, and the rule "${issue.rule}" allows ${issue.most} % at most`,
        `write ${issue.most} or less`,
      ];
    case 'sign-unasked':
      return [
        `this file asks "${issue.question}", but "${issue.question}" does not stand under "signs:"`,
        `add there a line ${issue.question}: yes (or ${issue.question}: no, or ${issue.question}: either)`,
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
        `no picture is described for "${issue.id}"`,
        issue.kind === 'defect'
          ? 'add a part "boards:" that says what to draw; copy one from another file in content/defects and change it'
          : 'add a part "boards:" with a "yes:" and a "no:" to draw, as other files in content/questions have it, or say after "no-boards:" why there is none',
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
        `the words after "${issue.in}:" say ${issue.said}, and here ${issue.field} is ${least === most ? least : `${least} to ${most}`}`,
        'write the same measure in both',
      ];
    }
    case 'against-the-trade':
      return [issue.what, issue.mend];
    case 'sign-differs':
      return issue.by === 'families'
        ? [
            `under "signs:" stands ${issue.question}: ${issue.sign}, but the kinds of top coat under "families:" tell ${issue.tell}`,
            'change the sign, or the families',
          ]
        : [
            `by its signs, "${issue.to}" has ${issue.question}: ${issue.sign}, but this line sends people to it who answered "${issue.question}" with ${issue.answer}`,
            `move the line to the "${issue.sign}:" side of that question, or change the sign in content/${FOLDERS.defect}/${issue.to}.mdx`,
          ];
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
