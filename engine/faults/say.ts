import { FACTS } from '../model/facts.ts';
import { FOLDERS } from '../model/index.ts';
import { keysOf } from '../plain/entry-of.ts';
import { either } from './either.ts';
import { asClause } from './found.ts';
import type { Issue } from './issue.ts';
import { placeOf } from './place.ts';
import { deadLink, maybe, nearName, orphan, unreachable, unusedName } from './say-names.ts';
import {
  comesOffUntold,
  hazardUntold,
  noCaution,
  type Told,
  timesDiffer,
  touchOrdered,
} from './say-safety.ts';

const list = (names: readonly string[]): string =>
  names.slice(0, 24).join(', ') + (names.length > 24 ? ', …' : '');
/** A few are told as a choice, more as a list. */
const oneOf = (names: readonly string[]): string =>
  names.length > 2 ? `write one of ${list(names)}` : `write ${either(names)}`;

const A_BOARD = '{ base: { wood: oak }, features: [], alt: … }';

/** The ways on that a branch of a tree can take, of which it takes one. */
const waysOn = (keys: readonly string[]): readonly string[] =>
  keys.filter((key) => ['ask', 'remedy', 'defect', 'leave'].includes(key));

/** A name as files have it: `Bad_Id` is bad-id. */
const inSmallLetters = (name: string): string =>
  name
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, '-')
    .replaceAll(/^-+|-+$/g, '') || 'new-name';

/** What an act may be, for whoever has never chosen one. */
const MEANS: Readonly<Record<string, string>> = {
  leave: 'hands off',
  stop: 'end all work',
  wait: 'leave it to dry',
  accept: 'it is good as it is',
};
const asDoing = (one: string): string => `do: ${one}${one in MEANS ? ` (${MEANS[one]})` : ''}`;

/** How a sign that stands alone is told. */
const ALONE = {
  alone: 'and every other flaw that tells of it says the opposite',
  asked: 'but only other flaws ask that, and no words here tell of it',
  words: 'but the words here tell that it is so, and no other flaw shows it',
} as const;

/** What is told of a file that has no fields between two lines of hyphens at its top. */
const noFrontMatter = ({ why, first }: Extract<Issue, { code: 'no-front-matter' }>): Told => {
  const three = 'the first line must be three hyphens and nothing else: ---';
  switch (why) {
    case 'dashes':
      return [`the first line is "${first}"`, 'write three hyphens there and nothing else: ---'];
    case 'open':
      return [
        'the fields at the top of this file have no end',
        'write a line of three hyphens, ---, below the last of them',
      ];
    case 'closed':
      return [three, `write it above "${first}"`];
    case 'above':
      return [
        three,
        first === '---' ? 'delete the empty lines above it' : `delete what stands above it: "${first}"`,
      ];
    case 'empty':
      return [
        'there are no fields at the top of this file',
        'copy all that stands in another file of the same folder, and put your own words in',
      ];
    default:
      return [three, `write it above "${first}", and write the same line again below the last field`];
  }
};

/** What a board does not show, and how large it would be seen, or on how wide a board. */
const notShown = (issue: Extract<Issue, { code: 'not-shown' }>): Told => {
  const { kind, field, mm, wide, why, bound, board } = issue;
  const [than, size, width] =
    why === 'large'
      ? [`larger than the piece, which is ${wide} mm wide`, 'less', 'more']
      : [`too fine to be seen on a piece ${wide} mm wide`, 'more', 'less'];
  return [
    `"${kind}" has ${field} ${mm}, ${than}`,
    `write ${bound} or ${size}${board === undefined ? '' : `, or give the board width-mm: ${board} or ${width}`}`,
  ];
};

const signDiffers = (issue: Extract<Issue, { code: 'sign-differs' }>): Told => {
  switch (issue.by) {
    case 'families':
      return [
        `under "signs:" stands ${issue.question}: ${issue.sign}, but the kinds of top coat under "families:" tell ${issue.tell}`,
        'change the sign, or the families',
      ];
    case 'handover':
      return [
        `by its signs, "${issue.to}" has ${issue.question}: ${issue.sign}, but this line sends people to it who answered "${issue.question}" with ${issue.answer}`,
        `move the line to the "${issue.sign}:" side of that question, or change the sign in content/${FOLDERS.defect}/${issue.to}.mdx`,
      ];
    default:
      return [
        `under "signs:" stands ${issue.question}: ${issue.sign} (${issue.ask}), ${ALONE[issue.why]}`,
        issue.sign === 'yes'
          ? 'change the sign to no, or write under looks: how it shows'
          : 'change the sign to yes, or to mostly-no where it is met at times',
      ];
  }
};

/** What is wrong, and how the author mends it, without the place. */
const words = (issue: Issue): Told => {
  switch (issue.code) {
    case 'bad-yaml':
      return [issue.what, issue.mend];
    case 'no-front-matter':
      return noFrontMatter(issue);
    case 'bad-id':
      return [
        `the name of this file, "${issue.id}", is not made of words in small letters`,
        `rename the file to ${inSmallLetters(issue.id)}.mdx: small letters and figures, hyphens between words`,
      ];
    case 'unknown-key':
      return [
        `there is no field "${issue.key}" here`,
        maybe(issue.nearest) || (issue.allowed.length ? `use one of ${list(issue.allowed)}` : 'remove it'),
      ];
    case 'missing-key':
      return [
        `the field "${issue.key}" is missing`,
        issue.write
          ? `above the second line --- add: ${issue.write}`
          : `add a line ${issue.key}: …${issue.about ? ` and write in place of the dots ${asClause(issue.about)}` : ''}`,
      ];
    case 'bad-value':
      return [`${issue.what} ${placeOf(issue.at)}`, issue.wants];
    case 'bad-name':
      return [`"${issue.name}" can not stand here as a name`, maybe(issue.nearest) || issue.wants];
    case 'bad-branch':
      return [
        issue.keys.length
          ? `this branch of the tree holds ${issue.keys.join(' and ')}, where one of ask, remedy, defect and leave is wanted`
          : 'a branch of the tree is wanted here, with one of ask, remedy, defect and leave',
        waysOn(issue.keys).length > 1
          ? `keep one of ${waysOn(issue.keys).join(' and ')}, and take out the other with what stands after it`
          : 'write { ask: …, yes: …, no: … }, { remedy: … }, { defect: … } or { leave: … }',
      ];
    case 'dead-link':
      return deadLink(issue);
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
        `this line says that the ${issue.kind} "${issue.id}" is retired, but its file content/${FOLDERS[issue.kind]}/${issue.id}.mdx is still there`,
        'to keep it, delete this line; to retire it, delete that file',
      ];
    case 'near-name':
      return nearName(issue);
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
        maybe(issue.nearest) || oneOf(issue.allowed),
      ];
    case 'unused-name':
      return unusedName(issue);
    case 'retired-link':
      return [`the ${issue.kind} "${issue.id}" was retired`, `write "${issue.now}" instead`];
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
        `"${issue.value}" can not stand after "${issue.fact}:"`,
        maybe(issue.nearest) || oneOf(issue.allowed),
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
      return orphan(issue);
    case 'look-alike-same':
      return [
        `by their signs "${issue.defect}" and its look-alike "${issue.other}" can not be told apart`,
        'under "signs:" give one question yes in one of the two files and no in the other',
      ];
    case 'touches-setting':
      return [
        `"do: ${issue.doing}" is more than a film at the stage "${issue.stage}" bears`,
        `write ${either(issue.allowed.map(asDoing))}, and change the sentence after "say:" to match`,
      ];
    case 'touch-ordered':
      return touchOrdered(issue);
    case 'times-differ':
      return timesDiffer(issue);
    case 'step-order':
      return [`the step "${issue.step}" ${issue.what}`, issue.mend];
    case 'against-told':
      return [
        `the step "${issue.step}" ${issue.why}, but it is shown as well to those with ${issue.fact}: ${either(issue.told)}`,
        issue.mend,
      ];
    case 'no-caution':
      return noCaution(issue);
    case 'comes-off-untold':
      return comesOffUntold(issue);
    case 'look-lays':
      return [
        `the step "${issue.step}" says "${issue.word}", but has ${issue.field}, which lays nothing and opens no can`,
        'give that a step of its own, with kind: coat, mix or test-patch',
      ];
    case 'hazard-untold':
      return hazardUntold(issue);
    case 'check-cuts':
      return [
        `the check "${issue.text}" says "${issue.word}", and no warning of old paint, which may hold lead, is shown before a question`,
        'say how it is seen without that, or add a sentence to it such as: Over layers of unknown age, do not sand or scrape, and answer that you can not tell.',
      ];
    case 'check-touches':
      return [
        `the check "${issue.text}" says "${issue.word}", but it may be asked while the film is wet`,
        'say how it is seen without a touch, or write after "safe-from:" the first stage at which touching does no harm, for example safe-from: dry-to-touch',
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
        issue.say.length
          ? `tell it after "looks:" or "also:" with one of these: ${issue.say.join(', ')}; or change the sign to no`
          : 'tell after "looks:" how it shows, or change the sign to no',
      ];
    case 'too-hard':
      return [
        `"${issue.text}" reads at US grade ${issue.grade.toFixed(1)}`,
        `use shorter words and sentences (grade ${issue.most} at most)`,
      ];
    case 'unreachable-defect':
      return unreachable(issue);
    case 'no-board':
      return [
        `no picture is described for "${issue.id}"`,
        `write above the second line --- of this file: ${issue.kind === 'defect' ? `boards: [${A_BOARD}]` : `boards: { yes: ${A_BOARD}, no: ${A_BOARD} }`}, with what tells it apart in place of the dots, and between the [ ] of features: what npm run board -- --sheet shows that comes nearest${issue.kind === 'defect' ? '' : '; or a line no-boards: with the reason why there is nothing to draw'}`,
      ];
    case 'off-the-board':
      return [
        `"${issue.kind}" is laid at ${list(issue.at.map(String))} mm, off a piece ${issue.wide} mm wide and ${issue.high} mm high`,
        'give an at: within it, from the left and top edge, or leave at: out',
      ];
    case 'not-shown':
      return notShown(issue);
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
      return signDiffers(issue);
    case 'stray-file':
      return ['nothing reads this file', `name it ${issue.should}, or delete it`];
    case 'lost-address':
      return [
        `${issue.address} was published and must answer for ever, but there is no ${issue.kind} "${issue.id}"`,
        `bring content/${FOLDERS[issue.kind]}/${issue.id}.mdx back, or say in content/retired.yaml what stands for it: ${issue.kind}/${issue.id}: ${issue.nearest ?? 'the-name-of-its-file'}`,
      ];
    case 'word-twice':
      return [`"${issue.word}" stands twice in a row`, 'remove one of them'];
    case 'misspelt':
      return [
        `"${issue.word}" is in no American dictionary`,
        `${maybe(issue.nearest) || 'spell it otherwise.'} If it is right as it stands, add it after spelled: in content/house-style.yaml`,
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
      return [issue.what, issue.mend];
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
