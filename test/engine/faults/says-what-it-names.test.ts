/**
 * Every sentence to an author, by a law: it begins with the place, names all that it was given to name, says what is wrong
 * and then what to do, and holds no hole. Invented faults; the marks in braces are what must stand in the sentence.
 */
import { describe, expect, it } from 'vitest';
import type { Fault } from '#engine/faults/issue.ts';
import { say } from '#engine/faults/say.ts';

const told = (fault: Fault): { readonly whole: string; readonly what: string; readonly mend: string } => {
  const whole = say({ file: 'content/x/page.mdx', line: 41, ...fault });
  const at = whole.indexOf('; ');
  return { whole, what: whole.slice('content/x/page.mdx:41: '.length, at), mend: whole.slice(at + 2) };
};

/** What an author is told to do. */
const ORDER =
  /\b(?:write|rename|did you mean|use|remove|add|copy|keep|put|take|change|make|move|delete|give|bring|tell|say|spell|speak|mend|name|wipe|answer|write it)\b/;

type Case = readonly [fault: Fault, inWhat: readonly string[], inMend: readonly string[]];
const near = { nearest: 'qnear' };
const far = { nearest: undefined };

const CASES: readonly Case[] = [
  [{ code: 'bad-id', id: 'Run_And Sag' }, ['"Run_And Sag"'], ['run-and-sag.mdx']],
  [{ code: 'bad-id', id: '__' }, ['"__"'], ['new-name.mdx']],
  [{ code: 'bad-id', id: '-A--b-' }, ['"-A--b-"'], ['to a-b.mdx']],
  [
    { code: 'unknown-key', key: 'qkey', ...near, allowed: ['a1'] },
    ['no field', '"qkey"'],
    ['did you mean "qnear"?'],
  ],
  [{ code: 'unknown-key', key: 'qkey', ...far, allowed: ['a1', 'b2'] }, ['"qkey"'], ['one of a1, b2']],
  [{ code: 'unknown-key', key: 'qkey', ...far, allowed: [] }, ['"qkey"'], ['remove it']],
  [
    { code: 'missing-key', key: 'qkey', about: 'What it is. ', write: 'qkey: qq' },
    ['"qkey" is missing'],
    ['above', '---', 'qkey: qq'],
  ],
  [
    { code: 'missing-key', key: 'qkey', about: 'What it is.' },
    ['"qkey" is missing'],
    ['qkey: …', 'what it is'],
  ],
  [{ code: 'missing-key', key: 'qkey', about: undefined }, ['"qkey" is missing'], ['qkey: …']],
  [
    { code: 'bad-value', at: ['steps', 1, 'grit'], what: 'qwhat', wants: 'write qwants' },
    ['qwhat', 'after "grit:" in step 2'],
    ['write qwants'],
  ],
  [{ code: 'bad-name', name: 'qname', ...near, wants: 'write qw' }, ['"qname"'], ['did you mean "qnear"?']],
  [{ code: 'bad-name', name: 'qname', ...far, wants: 'write qw' }, ['"qname"'], ['write qw']],
  [
    { code: 'bad-branch', keys: ['ask', 'leave', 'yes'] },
    ['ask and leave and yes', 'one of ask, remedy, defect and leave'],
    ['keep one of ask and leave,'],
  ],
  [{ code: 'bad-branch', keys: ['yes'] }, ['holds yes,'], ['{ ask: …, yes: …, no: … }', '{ leave: … }']],
  [{ code: 'bad-branch', keys: [] }, ['branch', 'wanted here'], ['{ remedy: … }', '{ defect: … }']],
  [{ code: 'dead-link', kind: 'remedy', id: 'qid', ...near }, ['no remedy "qid"'], ['"qnear"']],
  [
    { code: 'dead-link', kind: 'remedy', id: 'qid', ...far },
    ['no remedy "qid"'],
    ['content/remedies', 'content/remedies/qid.mdx'],
  ],
  [
    { code: 'dead-link', kind: 'source', id: 'qid', ...near, title: 'qtitle' },
    ['no source "qid"'],
    ['"qnear" (qtitle)', 'content/sources'],
  ],
  [{ code: 'dead-link', kind: 'source', id: 'qid', ...near }, ['no source "qid"'], ['"qnear";']],
  [
    { code: 'dead-link', kind: 'source', id: 'qid', ...far },
    ['no source "qid"'],
    ['content/sources/qid.mdx'],
  ],
  [
    { code: 'unknown-name', what: 'shared step', name: 'qname', ...near, in: 'content/steps.yaml' },
    ['no shared step "qname"'],
    ['"qnear"', 'content/steps.yaml'],
  ],
  [
    { code: 'unknown-name', what: 'shared step', name: 'qname', ...far, in: 'content/steps.yaml' },
    ['"qname"'],
    ['add it to content/steps.yaml'],
  ],
  [{ code: 'left-over', text: 'qtext' }, ['"qtext"', 'template'], ['your own words']],
  [
    { code: 'still-there', kind: 'defect', id: 'qid' },
    ['defect "qid" is retired', 'content/defects/qid.mdx'],
    ['delete this line', 'delete that file'],
  ],
  [
    {
      code: 'near-name',
      kind: 'term',
      id: 'qid',
      name: 'qn',
      other: { id: 'qother', name: 'qothername' },
      isNew: true,
    },
    ['term', '"qother" (qothername)'],
    ['delete this file', 'rename this file'],
  ],
  [
    {
      code: 'near-name',
      kind: 'term',
      id: 'qid',
      name: 'qn',
      other: { id: 'qother', name: 'qothername' },
      isNew: false,
    },
    ['term "qid"', '"qother" (qothername)'],
    ['keep the older', 'rename it'],
  ],
  [
    { code: 'needs-quotes', why: 'colon', text: 'qtext', write: 'a: "q"' },
    ['"qtext" holds a colon'],
    ['between quotes: a: "q"'],
  ],
  [
    { code: 'needs-quotes', why: 'comma', text: 'qtext', write: undefined },
    ['a comma', '"qtext"'],
    ['between quotes: "…"'],
  ],
  [
    { code: 'bad-choice', at: ['often'], value: 'qvalue', ...near, allowed: ['a'] },
    ['"qvalue"', 'after "often:"'],
    ['"qnear"'],
  ],
  [
    { code: 'bad-choice', at: ['often'], value: 'qvalue', ...far, allowed: ['a', 'b'] },
    ['"qvalue"'],
    ['write a or b'],
  ],
  [
    { code: 'bad-choice', at: ['often'], value: 'qvalue', ...far, allowed: ['a', 'b', 'c'] },
    ['"qvalue"'],
    ['write one of a, b, c'],
  ],
  [
    { code: 'unused-name', what: 'shared step', name: 'qname', ...far },
    ['shared step "qname"'],
    ['- qname under "steps:"', 'delete this entry'],
  ],
  [
    { code: 'unused-name', what: 'kind of repair', name: 'qname', ...far },
    ['kind of repair "qname"'],
    ['as: qname below "now:"', 'delete this entry'],
  ],
  [
    { code: 'unused-name', what: 'kind of repair', name: 'qname', ...near },
    ['"qname"'],
    ['"qnear"', 'as: qname'],
  ],
  [
    { code: 'retired-link', kind: 'rule', id: 'qid', now: 'qnow' },
    ['rule "qid" was retired'],
    ['write "qnow"'],
  ],
  [
    { code: 'no-source', says: 'qsays', grade: 'published' },
    ['"qsays"', 'grade: published', 'no source'],
    ['"source:"', 'content/sources', 'common-practice'],
  ],
  [{ code: 'unknown-fact', fact: 'qfact', ...near }, ['no fact or question "qfact"'], ['"qnear"']],
  [
    { code: 'unknown-fact', fact: 'qfact', ...far },
    ['"qfact"'],
    ['write one of', 'family', 'stage', 'the name of a question'],
  ],
  [
    { code: 'bad-fact-value', fact: 'qfact', value: 'qvalue', ...near, allowed: [] },
    ['"qvalue"', 'after "qfact:"'],
    ['"qnear"'],
  ],
  [
    { code: 'bad-fact-value', fact: 'qfact', value: 'qvalue', ...far, allowed: ['a', 'b', 'c'] },
    ['"qvalue"', 'after "qfact:"'],
    ['one of a, b, c'],
  ],
  [{ code: 'see-cycle', path: ['one', 'two', 'one'] }, ['in a circle', 'one → two → one'], ['"remedy:"']],
  [{ code: 'see-cycle', path: ['one', 'one'] }, ['back to itself'], ['"remedy:"', '"defect:"']],
  [
    { code: 'asked-twice', question: 'qq', answer: 'yes' },
    ['"qq" was asked already', 'here: yes'],
    ['under its "yes:"'],
  ],
  [{ code: 'known-already', question: 'qq', answer: 'no' }, ['"qq"', 'answered no'], ['under its "no:"']],
  [
    { code: 'same-both-ways', question: 'qq' },
    ['both answers of "qq"', 'same end'],
    ['take the question out'],
  ],
  [
    { code: 'orphan', kind: 'question', id: 'qid' },
    ['no flaw asks', '"qid"'],
    ['ask: qid, yes: …, no: …', 'under "tree:"', 'delete this file'],
  ],
  [{ code: 'orphan', kind: 'source', id: 'qid' }, ['no claim', '"qid"'], ['source: qid', 'delete this file']],
  [
    { code: 'orphan', kind: 'remedy', id: 'qid' },
    ['no flaw leads to the remedy "qid"'],
    ['{ remedy: qid }', 'delete this file'],
  ],
  [
    { code: 'look-alike-same', defect: 'qone', other: 'qtwo' },
    ['"qone"', '"qtwo"', 'not be told apart'],
    ['"signs:"', 'yes', 'no'],
  ],
  [
    { code: 'touches-setting', stage: 'qstage', doing: 'repair', allowed: ['leave', 'wick', 'stop'] },
    ['"do: repair"', '"qstage"'],
    ['do: leave (hands off), do: wick or do: stop (end all work)', 'after "say:"'],
  ],
  [
    { code: 'touches-setting', stage: 'qstage', doing: 'repair', allowed: ['wait', 'accept'] },
    ['"do: repair"'],
    ['do: wait (leave it to dry) or do: accept (it is good as it is)'],
  ],
  [
    { code: 'touch-ordered', order: 'qorder', where: 'qwhere', becomes: 'steps' },
    ['"qorder"', 'a hand to the film qwhere'],
    ['by itself', 'under "steps:"'],
  ],
  [
    { code: 'touch-ordered', order: 'qorder', where: 'qwhere', becomes: 'remedy' },
    ['"qorder"', 'qwhere'],
    ['belongs in a remedy', '"steps:"'],
  ],
  [
    { code: 'touch-ordered', order: 'qorder', where: 'qwhere', becomes: 'leave' },
    ['"qorder"', 'qwhere'],
    ['remedy:', 'in place of leave:'],
  ],
  [
    { code: 'touch-ordered', order: 'Pull it off very slowly', where: 'qwhere', becomes: 'not' },
    ['after "not:"', '"Pull it off very slowly"', 'qwhere'],
    ['Do not pull it off'],
  ],
  [
    { code: 'touch-ordered', order: 'Wipe it, gently', where: 'qwhere', becomes: 'not' },
    ['"Wipe it, gently"'],
    ['Do not wipe it'],
  ],
  [
    { code: 'times-differ', again: 'qagain', isOwn: true, days: 'qdays', isOneLine: true },
    ['"qdays" after "say:"', 'after "again:"', '"qagain"'],
    ['again: Look again after qdays.'],
  ],
  [
    { code: 'times-differ', again: 'qagain', isOwn: false, days: 'qdays', isOneLine: true },
    ['"qdays"', 'usual words, "qagain"'],
    ['again: Look again after qdays.', 'before the }'],
  ],
  [
    { code: 'times-differ', again: 'qagain', isOwn: true, days: undefined, isOneLine: true },
    ['as dry already', '"qagain"'],
    ['another time', 'again: Look again in a week.'],
  ],
  [
    { code: 'times-differ', again: 'qagain', isOwn: false, days: undefined, isOneLine: false },
    ['usual words, "qagain"', 'as dry as that'],
    ['again: Look again in a week.', 'below it', 'right time'],
  ],
  [
    { code: 'step-order', step: 'qstep', what: 'qwhat', mend: 'write qmend' },
    ['the step "qstep" qwhat'],
    ['write qmend'],
  ],
  [
    {
      code: 'against-told',
      step: 'qstep',
      fact: 'qfact',
      told: ['a', 'b'],
      why: 'qwhy',
      mend: 'write qmend',
    },
    ['"qstep" qwhy', 'qfact: a or b'],
    ['write qmend'],
  ],
  [
    {
      code: 'no-caution',
      of: 'step',
      step: 'qstep',
      hazard: 'dust',
      lacks: 'care',
      in: 'any case',
      rule: undefined,
      like: undefined,
    },
    ['no caution', 'the step "qstep", which'],
    ['make a file in content/rules', 'kind: caution, level: care', 'hazards: [dust]'],
  ],
  [
    {
      code: 'no-caution',
      of: 'step',
      step: 'qstep',
      hazard: 'waste',
      lacks: 'note',
      in: 'qcase',
      rule: undefined,
      like: 'qlike',
    },
    ['no note', '"qstep"', 'in this case: qcase'],
    ['copy content/rules/qlike.mdx', 'kind: caution, level: note', 'hazards: [waste]', 'your own words'],
  ],
  [
    {
      code: 'no-caution',
      of: 'step',
      step: 'qstep',
      hazard: 'tint',
      lacks: 'limit',
      in: 'any case',
      rule: { id: 'qrule', only: 'qonly' },
      like: 'qlike',
    },
    ['no limit'],
    ['content/rules/qrule.mdx', 'only with qonly', 'holds here too'],
  ],
  [
    {
      code: 'no-caution',
      of: 'step',
      step: 'qstep',
      hazard: 'stripper',
      lacks: 'stop',
      in: 'qcase',
      rule: { id: 'qrule', only: 'qonly' },
      like: undefined,
    },
    ['no warning that stops people', 'in this case: qcase'],
    ['holds in this case too'],
  ],
  [
    {
      code: 'no-caution',
      of: 'lesson',
      step: 'qlesson',
      hazard: 'stripper',
      lacks: 'stop',
      in: 'any case',
      rule: { id: 'qrule', only: 'qonly' },
      like: undefined,
    },
    ['the lesson "qlesson"'],
    ['add qrule under "rules:"'],
  ],
  [
    {
      code: 'no-caution',
      of: 'lesson',
      step: 'qlesson',
      hazard: 'stripper',
      lacks: 'stop',
      in: 'any case',
      rule: undefined,
      like: undefined,
    },
    ['the lesson "qlesson"'],
    ['kind: stop', 'hazards: [stripper]', 'add its name under "rules:"'],
  ],
  [
    {
      code: 'hazard-untold',
      of: 'step',
      step: 'qstep',
      isOneLine: true,
      hazards: ['dust', 'blade'],
      word: 'qword',
    },
    ['"qstep" says "qword"', 'not marked', ' and '],
    ['does: [dust, blade]', 'before the }'],
  ],
  [
    { code: 'hazard-untold', of: 'act', step: 'qstep', isOneLine: false, hazards: ['dust'], word: 'qword' },
    ['"qstep" says "qword"'],
    ['does: [dust]', 'below it'],
  ],
  [
    {
      code: 'hazard-untold',
      of: 'if-not',
      step: 'qstep',
      isOneLine: false,
      hazards: ['dust', 'blade'],
      word: 'qword',
    },
    ['"qstep" says "qword"', 'no caution stands before', ' and '],
    ['under "steps:"', 'if-not: { say: …, remedy:'],
  ],
  [
    {
      code: 'hazard-untold',
      of: 'laid',
      step: 'qstep',
      isOneLine: true,
      hazards: ['old-film-in-reach'],
      word: 'qword',
    },
    ['the qword of "qstep"', 'rubbed in with paper', 'old layers'],
    ['does: [old-film-in-reach]'],
  ],
  [
    { code: 'comes-off-untold', step: 'qstep', isMix: false, word: 'qword', isOneLine: true },
    ['"qstep" takes off finish', '"qword"', 'catch fire'],
    ['of: same', 'of: oil', 'of: base-color', 'before the }'],
  ],
  [
    { code: 'comes-off-untold', step: 'qstep', isMix: true, word: 'qword', isOneLine: false },
    ['"qstep" handles finish', 'in the can', 'catch fire'],
    ['of: same', 'below it'],
  ],
  [
    { code: 'look-lays', step: 'qstep', field: 'kind: look', word: 'qword' },
    ['"qstep" says "qword"', 'has kind: look', 'lays nothing'],
    ['a step of its own', 'kind: coat, mix or test-patch'],
  ],
  [
    { code: 'check-cuts', text: 'qtext', word: 'qword' },
    ['"qtext" says "qword"', 'lead'],
    ['without that', 'do not sand or scrape'],
  ],
  [
    { code: 'check-touches', text: 'qtext', word: 'qword' },
    ['"qtext" says "qword"', 'while the film is wet'],
    ['without a touch', 'safe-from: dry-to-touch'],
  ],
  [
    { code: 'over-limit', what: 'qwhat', percent: 12, most: 10, rule: 'qrule' },
    ['qwhat to 12 %', '"qrule" allows 10 %'],
    ['write 10 or less'],
  ],
  [
    { code: 'sign-unasked', question: 'qq' },
    ['asks "qq"', 'under "signs:"'],
    ['qq: yes', 'qq: no', 'qq: either'],
  ],
  [
    { code: 'needless-sign', question: 'qq', sign: 'mostly-no' },
    ['"qq" is mostly-no for every flaw'],
    ['remove this line'],
  ],
  [
    { code: 'mark-untold', question: 'qq', ask: 'qask', say: ['s1', 's2'] },
    ['"qq" is yes', '(qask)'],
    ['s1, s2', '"looks:"', '"also:"', 'sign to no'],
  ],
  [
    { code: 'mark-untold', question: 'qq', ask: 'qask', say: [] },
    ['"qq" is yes', '(qask)'],
    ['after "looks:"', 'sign to no'],
  ],
  [
    { code: 'too-hard', text: 'qtext', grade: 9.26, most: 7 },
    ['"qtext"', 'grade 9.3'],
    ['shorter', 'grade 7 at most'],
  ],
  [
    { code: 'unreachable-defect', by: 'signs', defect: 'qd', other: 'qo' },
    ['does not come to "qd"', '"qo" comes first'],
    ['"signs:"', '"qd" yes', '"qo" no'],
  ],
  [
    { code: 'unreachable-defect', by: 'signs', defect: 'qd', other: undefined },
    ['does not come to "qd"'],
    ['"signs:"', 'otherwise than other flaws'],
  ],
  [
    { code: 'unreachable-defect', by: 'look-alike', defect: 'qd', other: 'qo' },
    ['look like "qd"'],
    ['"look-alikes:"', 'for example qo'],
  ],
  [
    { code: 'unreachable-defect', by: 'look-alike', defect: 'qd', other: undefined },
    ['look like "qd"'],
    ['"look-alikes:"'],
  ],
  [
    { code: 'unreachable-defect', by: 'name', typed: 'qt', found: ['p1', 'p2'] },
    ['types "qt"', 'p1, p2'],
    ['this page alone'],
  ],
  [
    { code: 'unreachable-defect', by: 'other name', typed: 'qt', found: [] },
    ['types "qt"', 'first three'],
    ['this page alone', 'take it out'],
  ],
  [
    { code: 'no-board', kind: 'defect', id: 'qid' },
    ['no picture', '"qid"'],
    ['boards: [{ base: { wood: oak }, features: [], alt: … }]', 'npm run board'],
  ],
  [
    { code: 'no-board', kind: 'question', id: 'qid' },
    ['no picture', '"qid"'],
    ['boards: { yes: { base: { wood: oak }, features: [], alt: … }, no: {', 'no-boards:'],
  ],
  [
    { code: 'off-the-board', kind: 'qkind', at: [51, 7], wide: 50, high: 37.5 },
    ['"qkind" is laid at 51, 7 mm', '50 mm wide and 37.5 mm high'],
    ['at:'],
  ],
  [
    {
      code: 'not-shown',
      kind: 'qkind',
      field: 'qf',
      mm: 400,
      wide: 50,
      why: 'large',
      bound: 50,
      board: undefined,
    },
    ['"qkind" has qf 400', 'larger', '50 mm wide'],
    ['write 50 or less'],
  ],
  [
    { code: 'not-shown', kind: 'qkind', field: 'qf', mm: 90, wide: 50, why: 'large', bound: 50, board: 90 },
    ['"qkind" has qf 90'],
    ['write 50 or less', 'width-mm: 90 or more'],
  ],
  [
    {
      code: 'not-shown',
      kind: 'qkind',
      field: 'qf',
      mm: 0.1,
      wide: 300,
      why: 'fine',
      bound: 0.63,
      board: 48,
    },
    ['qf 0.1', 'too fine', '300 mm wide'],
    ['write 0.63 or more', 'width-mm: 48 or less'],
  ],
  [
    { code: 'size-differs', said: '3 mm', in: 'looks', field: 'qf', drawn: [1, 2] },
    ['"looks:" say 3 mm', 'qf is 1 to 2'],
    ['the same measure'],
  ],
  [
    { code: 'size-differs', said: '3 mm', in: 'alt', field: 'qf', drawn: [2, 2] },
    ['"alt:" say 3 mm', 'qf is 2'],
    ['the same measure'],
  ],
  [{ code: 'against-the-trade', what: 'qwhat', mend: 'write qmend' }, ['qwhat'], ['write qmend']],
  [
    { code: 'sign-differs', by: 'families', question: 'qq', sign: 'no', tell: 'yes' },
    ['qq: no', '"families:" tell yes'],
    ['change the sign, or the families'],
  ],
  [
    { code: 'sign-differs', by: 'handover', question: 'qq', sign: 'no', to: 'qto', answer: 'yes' },
    ['"qto" has qq: no', '"qq" with yes'],
    ['the "no:" side', 'content/defects/qto.mdx'],
  ],
  [
    { code: 'sign-differs', by: 'others', question: 'qq', sign: 'yes', why: 'alone', ask: 'qask' },
    ['qq: yes (qask)', 'says the opposite'],
    ['sign to no', 'under looks'],
  ],
  [
    { code: 'sign-differs', by: 'others', question: 'qq', sign: 'yes', why: 'asked', ask: 'qask' },
    ['qq: yes (qask)', 'no words here tell'],
    ['sign to no'],
  ],
  [
    { code: 'sign-differs', by: 'others', question: 'qq', sign: 'no', why: 'words', ask: 'qask' },
    ['qq: no (qask)', 'the words here tell that it is so'],
    ['sign to yes', 'mostly-no'],
  ],
  [{ code: 'stray-file', should: 'qshould' }, ['nothing reads this file'], ['name it qshould', 'delete it']],
  [
    { code: 'lost-address', address: '/qa/', kind: 'term', id: 'qid', ...near },
    ['/qa/', 'no term "qid"'],
    ['content/terms/qid.mdx', 'content/retired.yaml', 'term/qid: qnear'],
  ],
  [
    { code: 'lost-address', address: '/qa/', kind: 'term', id: 'qid', ...far },
    ['/qa/'],
    ['term/qid: the-name-of-its-file'],
  ],
  [{ code: 'word-twice', word: 'qword' }, ['"qword" stands twice'], ['remove one']],
  [
    { code: 'misspelt', word: 'qword', ...near },
    ['"qword"', 'dictionary'],
    ['"qnear"', 'content/house-style.yaml'],
  ],
  [
    { code: 'misspelt', word: 'qword', ...far },
    ['"qword"'],
    ['spell it otherwise', 'content/house-style.yaml'],
  ],
  [{ code: 'other-word', word: 'qword', write: 'qwrite' }, ['"qword"'], ['write "qwrite"']],
  [{ code: 'past-the-reader', word: 'qword' }, ['"qword"', 'reader'], ['you, your']],
  [
    { code: 'one-system', figure: 'qfig', wants: 'qwants' },
    ['"qfig"', 'one system of units'],
    ['"qfig (qwants)"'],
  ],
  [
    { code: 'figures-differ', figure: 'qfig', beside: 'qbeside', is: 'qis' },
    ['"qfig" and "qbeside"', 'not the same'],
    ['qfig is qis'],
  ],
  [{ code: 'figure-unclaimed', figure: 'qfig' }, ['no claim', '"qfig"'], ['add a claim']],
  [{ code: 'bare-figure', figure: 'qfig' }, ['"qfig"', 'without its unit'], ['write the unit']],
  [{ code: 'needless-exception', what: 'qwhat', mend: 'remove qmend' }, ['qwhat'], ['remove qmend']],
  [{ code: 'no-front-matter', why: 'dashes', first: '--' }, ['first line is "--"'], ['three hyphens', '---']],
  [{ code: 'no-front-matter', why: 'open', first: '' }, ['have no end'], ['a line of three hyphens', '---']],
  [{ code: 'no-front-matter', why: 'closed', first: 'qfirst' }, ['first line', '---'], ['above "qfirst"']],
  [
    { code: 'no-front-matter', why: 'above', first: 'qfirst' },
    ['first line', '---'],
    ['delete what stands above', '"qfirst"'],
  ],
  [
    { code: 'no-front-matter', why: 'above', first: '---' },
    ['first line', '---'],
    ['delete the empty lines above'],
  ],
  [
    { code: 'no-front-matter', why: 'empty', first: '' },
    ['no fields at the top'],
    ['copy', 'your own words'],
  ],
  [
    { code: 'no-front-matter', why: 'none', first: 'qfirst' } as unknown as Fault,
    ['first line', '---'],
    ['above "qfirst"', 'below the last field'],
  ],
];

describe.each(CASES)('%o', (fault, inWhat, inMend) => {
  const { whole, what, mend } = told(fault);
  it('names what it speaks of, and what to do', () => {
    expect(whole).toMatch(/^content\/x\/page\.mdx:41: \S.*\S; \S.*\S$/);
    for (const one of inWhat) expect(what).toContain(one);
    for (const one of inMend) expect(mend).toContain(one);
    expect(mend).toMatch(ORDER);
  });
  it('has no hole in it', () => {
    expect(whole).not.toMatch(/undefined|NaN|\[object|Something was here| {2}|""|: ;/);
    if ('nearest' in fault && fault.nearest === undefined) expect(whole).not.toContain('did you mean');
  });
});

it('two sentences of one code differ wherever their faults do', () => {
  const all = CASES.map(([fault]) => told(fault).whole);
  expect(new Set(all).size).toBe(all.length);
});

it('a long list of choices is cut after two dozen', () => {
  const names = (count: number) => Array.from({ length: count }, (_, at) => `n${at}`);
  const of = (count: number) =>
    told({ code: 'bad-choice', at: ['a'], value: 'v', nearest: undefined, allowed: names(count) }).mend;
  expect(of(24)).toContain('n23');
  expect(of(24)).not.toContain('…');
  expect(of(25)).toContain('n23, …');
  expect(of(25)).not.toContain('n24');
});
