import { type RuleWords, toldWords } from '../shared/told-rule.ts';

/** A rule with nothing in it, to draw the models of boxes that a script fills. */
export const BLANK_RULE = { id: '', title: '', say: '', why: '', defers: '' };

const names = Object.keys(toldWords({ ...BLANK_RULE, kind: 'stop', level: 'stop' }));

/** Its words: the name of each in braces, in whose place the script puts the words of its rule. */
export const BLANK_WORDS = Object.fromEntries(names.map((name) => [name, `{${name}}`])) as RuleWords;
