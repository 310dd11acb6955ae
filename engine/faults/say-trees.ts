/** What is told of trees and signs. */

import { FOLDERS } from '../model/index.ts';
import type { Of, Say, Told } from './told.ts';

/** How a sign that stands alone is told. */
const ALONE = {
  alone: 'and every other flaw that tells of it says the opposite',
  asked: 'but only other flaws ask that, and no words here tell of it',
  words: 'but the words here tell that it is so, and no other flaw shows it',
} as const;

const signDiffers = (issue: Of<'sign-differs'>): Told => {
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

export const OF_TREES: Say<
  | 'see-cycle'
  | 'asked-twice'
  | 'known-already'
  | 'same-both-ways'
  | 'look-alike-same'
  | 'sign-unasked'
  | 'needless-sign'
  | 'mark-untold'
  | 'sign-differs'
> = {
  'see-cycle': (issue) => [
    issue.path.length > 2
      ? `these flaws send people on in a circle, and no repair is reached: ${issue.path.join(' → ')}`
      : 'this flaw sends people back to itself, and no repair is reached',
    'write "remedy:" with the name of a repair in place of "defect:" on this line',
  ],
  'asked-twice': (issue) => [
    `"${issue.question}" was asked already higher up, so its answer is known here: ${issue.answer}`,
    `take this question out, and keep here only what stands under its "${issue.answer}:"`,
  ],
  'known-already': (issue) => [
    `after the answers above, "${issue.question}" can only be answered ${issue.answer}`,
    `take this question out, and keep here only what stands under its "${issue.answer}:"`,
  ],
  'same-both-ways': (issue) => [
    `both answers of "${issue.question}" lead to the same end`,
    'take the question out, and keep that end',
  ],
  'look-alike-same': (issue) => [
    `by their signs "${issue.defect}" and its look-alike "${issue.other}" cannot be told apart`,
    'under "signs:" give one question yes in one of the two files and no in the other',
  ],
  'sign-unasked': (issue) => [
    `this file asks "${issue.question}", but "${issue.question}" does not stand under "signs:"`,
    `add there a line ${issue.question}: yes (or ${issue.question}: no, or ${issue.question}: either)`,
  ],
  'needless-sign': (issue) => [
    `"${issue.question}" is ${issue.sign} for every flaw that says nothing of it`,
    'remove this line, or write what this flaw shows instead',
  ],
  'mark-untold': (issue) => [
    `"${issue.question}" is yes, but no words here tell of it (${issue.ask})`,
    issue.say.length
      ? `tell it after "looks:" or "also:" with one of these: ${issue.say.join(', ')}; or change the sign to no`
      : 'tell after "looks:" how it shows, or change the sign to no',
  ],
  'sign-differs': signDiffers,
};
