/** Every stop of a tree has an address that leads back to it, for ever; small invented trees, and real ones beside them. */
import { describe, expect, it } from 'vitest';
import {
  addressOf,
  answersOverdue,
  emptyCase,
  nodesOf,
  possible,
  readAddress,
  STAGES,
  STANDINGS,
  type TreeNode,
  visits,
  walk,
  withAnswer,
  withStanding,
} from '#engine/index.ts';
import { ASKED } from '#engine/knowledge/known-questions.ts';
import { signOf } from '#engine/knowledge/sign.ts';
import { isHandover } from '#engine/knowledge/tree.ts';
import { known as real } from '../../content/real/knowledge.ts';
import { act, defect, known, question, remedy } from '../small.ts';

const small = known(
  question('one'),
  question('two-words'),
  remedy('a'),
  remedy('late', { overdue: act('repair') }),
  defect('flaw', { ask: 'one', yes: { defect: 'other' }, no: { remedy: 'a' } }),
  defect('other', { ask: 'two-words', yes: { remedy: 'a' }, no: { leave: 'It is good as it is.' } }),
  defect('soft', { remedy: 'late' }),
);

describe('an address', () => {
  it('begins with the stage, or with its cause where nothing is told', () => {
    expect(addressOf(undefined, [])).toEqual(['cause']);
    expect(addressOf('wet', [])).toEqual(['stage-wet']);
    expect(addressOf('overdue', [['one', 'unsure']])).toEqual(['stage-overdue', 'one-unsure']);
    expect(
      addressOf(undefined, [
        ['one', 'yes'],
        ['two-words', 'no'],
      ]),
    ).toEqual(['one-yes', 'two-words-no']);
  });

  it('is read as far as the knowledge still knows it', () => {
    const read = (...segments: string[]) => readAddress(small, segments);
    expect(read('cause')).toEqual({ stage: undefined, answers: [] });
    expect(read('stage-dry-to-touch', 'one-yes', 'two-words-unsure')).toEqual({
      stage: 'dry-to-touch',
      answers: [
        ['one', 'yes'],
        ['two-words', 'unsure'],
      ],
    });
    expect(
      read('gone-yes', 'one-perhaps', 'one', 'one-', '-yes', 'stage-moist', 'stage', 'two-words-no'),
    ).toEqual({
      stage: undefined,
      answers: [['two-words', 'no']],
    });
    expect(read('stage-overdue').stage).toBe('overdue');
    expect(read()).toEqual({ stage: undefined, answers: [] });
  });
});

describe('the stops of a small tree', () => {
  const nodes = [...nodesOf(small, 'flaw')];
  it('are the way to the cause, then each stage', () => {
    expect(nodes[0]).toMatchObject({
      address: ['cause'],
      stage: undefined,
      walked: { kind: 'question', question: 'one' },
    });
    const stages = new Set(nodes.map(({ stage }) => stage));
    expect([...stages]).toEqual([undefined, ...STAGES]);
    expect([...new Set([...nodesOf(small, 'soft')].map(({ stage }) => stage))]).toEqual([
      undefined,
      ...STANDINGS,
    ]);
  });

  it('end at a hand-over, which names the other flaw', () => {
    const over = nodes.find(({ address }) => address.join('/') === 'one-yes');
    expect(over).toMatchObject({ handover: 'other', walked: { kind: 'question', question: 'two-words' } });
    expect(nodes.some(({ address }) => address.join('/').startsWith('one-yes/'))).toBe(false);
    expect(nodes.filter(({ handover }) => handover === undefined).length).toBeGreaterThan(5);
    // A doubt keeps both ways, so that the walk is still in its own tree, and on the way to the cause it ends there.
    expect(nodes.find(({ address }) => address.join('/') === 'one-unsure')).toMatchObject({
      handover: undefined,
      walked: { kind: 'cause' },
    });
  });

  it('ask for the cause only where no stage is told', () => {
    for (const { stage, walked } of nodes) {
      expect(walked.kind).not.toBe('stage');
      if (stage !== undefined) expect(walked.kind).not.toBe('cause');
    }
    expect(nodes.some(({ walked }) => walked.kind === 'cause')).toBe(true);
    expect(nodes.find(({ address }) => address.join() === 'stage-setting')?.walked.kind).toBe('outcome');
  });
});

describe('the stops of the real trees', () => {
  // Every fifth flaw: they are alike.
  const some = real.defects.filter((_, at) => at % 5 === 0);
  it.each(some.map(({ id }) => id))('%s: each has its own, which reads back to the same case', (id) => {
    const seen = new Map<string, TreeNode>();
    for (const node of nodesOf(real, id)) {
      const { address, stage, on, walked, handover } = node;
      const key = address.join('/');
      expect([key, seen.has(key)]).toEqual([key, false]);
      seen.set(key, node);
      if (seen.size % 4) continue;
      const read = readAddress(real, address);
      expect(read.stage).toBe(stage);
      expect(addressOf(read.stage, read.answers)).toEqual(address);
      const start = stage ? withStanding(emptyCase(), stage, 'answered') : emptyCase();
      const again = read.answers.reduce((of, [asked, answer]) => withAnswer(of, asked, answer), start);
      expect(again).toEqual(on);
      const found = walk(real, again, id, { forCause: stage === undefined });
      expect(found.kind).toBe(walked.kind);
      expect(handover).toBe(found.kind === 'question' && found.of !== id ? found.of : undefined);
    }
    // A question that is asked leads on by each answer; all else is an end.
    for (const [key, { walked, handover, stage, address }] of seen) {
      const bare = address[0] === 'cause' ? '' : `${key}/`;
      if (walked.kind === 'question' && !handover)
        for (const answer of ['yes', 'no', 'unsure'])
          expect(seen.has(`${bare}${walked.question}-${answer}`), `${key} ${answer}`).toBe(true);
      else if (address[0] !== 'cause')
        expect(
          [...seen.keys()].filter((other) => other.startsWith(`${key}/`)),
          `${key} ${stage}`,
        ).toEqual([]);
    }
  });
});

describe('a film that is overdue', () => {
  it('is asked for where some cause answers it, or a flaw that the tree leads over to is still tacky', () => {
    const tacky = (sign: 'yes' | 'no' | undefined) =>
      known(
        question(ASKED.stillTacky),
        question('one'),
        remedy('a'),
        defect('flaw', { ask: 'one', yes: { defect: 'other' }, no: { remedy: 'a' } }),
        defect('other', { remedy: 'a' }, { signs: sign ? { [ASKED.stillTacky]: sign } : {} }),
      );
    expect(answersOverdue(tacky('yes'), 'flaw')).toBe(true);
    expect(answersOverdue(tacky('no'), 'flaw')).toBe(false);
    expect(answersOverdue(tacky(undefined), 'flaw')).toBe(false);
    expect(answersOverdue(small, 'soft')).toBe(true);
    expect(answersOverdue(small, 'other')).toBe(false);
  });

  it('is asked for of each real flaw by that rule', () => {
    const asked = real.defects.map(({ id, tree }) => {
      const wanted = [...visits(tree)].some(({ branch }) => {
        if (isHandover(branch)) return signOf(real.get('defect', branch.defect), ASKED.stillTacky) === 'yes';
        return 'remedy' in branch && real.get('remedy', branch.remedy).now.overdue !== undefined;
      });
      expect([id, answersOverdue(real, id)]).toEqual([id, wanted]);
      return wanted;
    });
    expect(new Set(asked)).toEqual(new Set([true, false]));
  });

  it('is dry to the touch and not dry inside; any other standing takes that back', () => {
    const late = withStanding(emptyCase(), 'overdue', 'computed');
    expect(late).toEqual({
      stage: { value: 'dry-to-touch', how: 'computed' },
      overdue: { value: 'yes', how: 'computed' },
    });
    expect(withStanding(late, 'recoatable')).toEqual({ stage: { value: 'recoatable', how: 'told' } });
    expect(withStanding(emptyCase(), 'overdue').overdue).toEqual({ value: 'yes', how: 'told' });
  });
});

it('a flaw that nobody knows has no tree, and is named', () => {
  expect(() => possible(small, emptyCase(), 'nobody')).toThrow(/nobody/);
  expect(() => walk(small, emptyCase(), 'nobody')).toThrow(/nobody/);
});
