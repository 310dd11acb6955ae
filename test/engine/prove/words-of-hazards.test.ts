/**
 * Proofs of what the words of steps tell of harm, a slip and beside it the same said right. Sentences of our own; what each
 * step does is common practice, no source.
 */
import { describe, expect, it } from 'vitest';
import { nearRules } from '#engine/prove/near-rules.ts';
import { stepsTellWhatTheyDo } from '#engine/prove/steps-tell-what-they-do.ts';
import { whatComesOffIsTold } from '#engine/prove/what-comes-off-is-told.ts';
import { wordsOrderNoTouch } from '#engine/prove/words-order-no-touch.ts';
import { proved } from './proved.ts';
import { remedy, type Step, step } from './sentences.ts';

const flaw = (more: object = {}) => ({
  id: 'spot',
  tree: { remedy: 'mend' },
  families: ['lacquer'],
  ...more,
});

describe('what comes off', () => {
  const told = (families: readonly string[], one: Step, isFlat = false) =>
    proved(
      whatComesOffIsTold,
      { defects: [flaw({ families })], remedies: [remedy([step('look', 'Look.'), one])] },
      isFlat,
    );
  it('of oil or wax alone is told by every cloth and paper that takes it up', () => {
    for (const by of ['dry-cloth', 'mineral-spirits', 'naphtha']) {
      expect(told(['oil', 'wax'], step('wipe', 'Wipe it.', { with: by }))).toEqual([
        {
          file: 'mend.mdx',
          at: 'steps.1',
          code: 'comes-off-untold',
          step: 'Wipe it.',
          isMix: false,
          word: 'oil, wax',
          isOneLine: false,
        },
      ]);
      expect(told(['oil', 'lacquer'], step('wipe', 'Wipe it.', { with: by }))).toEqual([]);
      expect(told(['oil'], step('wipe', 'Wipe it.', { with: by, of: 'oil' }))).toEqual([]);
    }
    expect(told(['oil'], step('sand', 'Sand it.', { grit: 320 }))).toHaveLength(1);
    expect(told(['oil'], step('sand', 'Sand it.', { grit: 320 }), true)[0]?.['isOneLine']).toBe(true);
    expect(told(['lacquer'], step('sand', 'Sand it.', { grit: 320 }))).toEqual([]);
    expect(told(['oil'], step('wipe', 'Wipe it.', { with: 'vacuum' }))).toEqual([]);
    expect(told(['oil'], step('scrape', 'Scrape it.', { tool: 'razor' }))).toEqual([]);
  });
  it.each([
    ['Rub it to a slurry.', 'slurry'],
    ['Wipe the soft oil off.', 'soft oil'],
    ['Wipe the soft film off.', 'soft film'],
    ['It rolls up soft.', 'rolls up soft'],
    ['Wipe what is sticky.', 'sticky'],
    ['Wipe the wax off.', 'wax off'],
    ['Take the skin out.', 'skin out'],
    ['Keep the oiled rag.', 'oiled rag'],
    ['Wipe it free of wax.', 'free of wax'],
  ])('that is soft is told by its words: %s', (say, word) => {
    for (const kind of ['wipe', 'sand', 'mix']) {
      const [found] = told(['lacquer'], step(kind, say, { with: 'damp-cloth', grit: 320, what: 'stir' }));
      expect(found).toMatchObject({ code: 'comes-off-untold', word, isMix: kind === 'mix' });
    }
    expect(told(['lacquer'], step('look', say))).toEqual([]);
    expect(told(['lacquer'], step('wipe', `Never mind. No ${say}`, { with: 'damp-cloth' }))).toEqual([]);
    expect(told(['lacquer'], step('wipe', say, { with: 'damp-cloth', does: ['oily-cloth'] }))).toEqual([]);
  });
});

describe('words of a hazard', () => {
  const told = (steps: readonly Step[], more: object = {}, others: readonly object[] = []) =>
    proved(stepsTellWhatTheyDo, { remedies: [remedy(steps, more), ...(others as never[])] }).map(
      ({ at, of, hazards, word }) => [at, of, (hazards as string[]).join(' '), word],
    );
  it('have a mark, or a kind or means that has it', () => {
    expect(told([step('look', 'Take a razor.')])).toEqual([['steps.0', 'step', 'blade', 'razor']]);
    expect(told([step('look', 'Take a razor.', { does: ['blade'] })])).toEqual([]);
    expect(told([step('scrape', 'Take a razor.', { tool: 'razor' })])).toEqual([]);
    expect(told([step('look', 'Wipe with naphtha.')])).toEqual([
      ['steps.0', 'step', 'vapor solvent-on-skin', 'naphtha'],
    ]);
    expect(told([step('wipe', 'Wipe with naphtha.', { with: 'naphtha' })])).toEqual([]);
    expect(told([step('look', 'Take no razor.')])).toEqual([]);
  });
  it('of spraying stand with a step that surely sprays', () => {
    expect(told([step('coat', 'Outdoors, spray thin.', { product: 'same' })])).toEqual([
      ['steps.0', 'step', 'mist', 'Outdoors, spray'],
    ]);
    expect(
      told([step('coat', 'Brush, spray or pad thin.', { product: 'same' })]).map(([, , hazard]) => hazard),
    ).toEqual(['mist']);
    expect(told([step('coat', 'Outdoors, spray thin.', { product: 'same', by: 'spray' })])).toEqual([]);
    expect(told([step('coat', 'Lay it thin.', { product: 'same' })])).toEqual([]);
    expect(told([step('coat', 'Do not spray thin.', { product: 'same' })])).toEqual([]);
  });
  it('of an act before the repair, and of what is tried after it, have theirs too', () => {
    const act = {
      now: {
        wet: { do: 'lift', say: 'Lift it with a razor.' },
        cured: { do: 'repair', say: 'Take a razor.' },
      },
    };
    expect(told([], act)).toEqual([['now.wet.say', 'act', 'blade', 'razor']]);
    expect(told([], { 'if-not': { say: 'Take a razor.' } })).toEqual([
      ['if-not.say', 'if-not', 'blade', 'razor'],
    ]);
    expect(
      told([step('scrape', 'Take a razor.', { tool: 'razor' })], { 'if-not': { say: 'Take a razor.' } }),
    ).toEqual([]);
    const next = { ...remedy([step('scrape', 'Take a razor.', { tool: 'razor' })]), id: 'next' };
    expect(told([], { 'if-not': { say: 'Take a razor.', remedy: 'next' } }, [next])).toEqual([]);
  });
  it('of a test with paper reach an old layer, unless a step before it does', () => {
    const test = (more: object = {}) =>
      step('wait', 'Wait until it sands to powder.', { until: 'cured', ...more });
    const found = (steps: readonly Step[]) =>
      told(steps).filter(([, , hazard]) => hazard === 'old-film-in-reach');
    expect(found([test()])).toEqual([['steps.0', 'step', 'old-film-in-reach', 'sands to powder']]);
    expect(found([step('wait', 'Wait until it makes dry powder.', { until: 'cured' })])).toHaveLength(1);
    expect(found([test({ does: ['old-film-in-reach'] })])).toEqual([]);
    const sand = step('sand', 'Rub it down.', { grit: 320 });
    expect(found([sand, test()])).toEqual([]);
    expect(found([test(), sand])).toHaveLength(1);
    expect(found([step('look', 'See that it sands to powder.')])).toEqual([]);
  });
  it('of oil that is rubbed in with paper stand before the oil', () => {
    const sand = step('sand', 'Rub it in.', { grit: 320 });
    const found = (steps: readonly Step[]) => told(steps).filter(([, of]) => of === 'laid');
    for (const [laid, word] of [
      [step('wipe', 'Lay it.', { with: 'fresh-oil' }), 'oil'],
      [step('wipe', 'Lay it.', { with: 'fresh-wax' }), 'wax'],
      [step('coat', 'Lay it.', { product: 'oil' }), 'oil'],
      [step('coat', 'Lay it.', { product: 'wax' }), 'wax'],
    ] as const) {
      expect(found([laid, sand])).toEqual([['steps.0', 'laid', 'old-film-in-reach', word]]);
      expect(found([laid, step('look', 'Look.'), sand])).toEqual([]);
      expect(found([sand, laid, sand])).toEqual([]);
      expect(found([{ ...laid, does: ['old-film-in-reach'] }, sand])).toEqual([]);
    }
    expect(found([step('wipe', 'Wet it.', { with: 'damp-cloth' }), sand])).toEqual([]);
  });
});

describe('hands off', () => {
  const told = (lists: object) =>
    proved(wordsOrderNoTouch, lists).map(({ file, at, order, becomes, where }) => [
      file,
      at,
      order,
      becomes,
      where,
    ]);
  const acts = (stage: string, act: object, families = ['lacquer']) =>
    told({
      defects: [flaw({ families })],
      remedies: [remedy([], { now: { [stage]: { do: 'leave', say: 'Leave it.', not: 'No.', ...act } } })],
    });
  it('no word of an act orders a touch while the film marks', () => {
    for (const stage of ['wet', 'setting', 'dry-to-touch', 'overdue']) {
      const where = `where "do: leave" leaves it alone (${stage})`;
      expect(acts(stage, { say: 'Press it flat.' })).toEqual([
        ['mend.mdx', `now.${stage}.say`, 'Press it flat', 'steps', where],
      ]);
      expect(acts(stage, { not: 'Press it flat.' })).toEqual([
        ['mend.mdx', `now.${stage}.not`, 'Press it flat', 'not', where],
      ]);
      expect(acts(stage, { again: 'Press it flat.' })).toEqual([
        ['mend.mdx', `now.${stage}.again`, 'Press it flat', 'steps', where],
      ]);
      expect(acts(stage, { again: 'Press it tomorrow.' })).toEqual([]);
      for (const doing of ['wait', 'accept', 'stop'])
        expect(acts(stage, { do: doing, say: 'Press it flat.' })).toHaveLength(1);
      for (const doing of ['lift', 'wick', 'repair'])
        expect(acts(stage, { do: doing, say: 'Press it flat.' })).toEqual([]);
    }
    for (const stage of ['recoatable', 'cured']) expect(acts(stage, { say: 'Press it flat.' })).toEqual([]);
  });
  it('a cloth on open oil, and a blotted spill on what is dry to the touch, are borne', () => {
    expect(acts('wet', { say: 'Wipe it off.' }, ['oil'])).toEqual([]);
    expect(acts('setting', { say: 'Wipe it off.' }, ['oil'])).toHaveLength(1);
    expect(acts('dry-to-touch', { say: 'Blot it up.' })).toEqual([]);
    expect(acts('overdue', { say: 'Blot it up.' })).toEqual([]);
    expect(acts('wet', { say: 'Blot it up.' })).toHaveLength(1);
  });
  it('nor what is said of a flaw, nor where it is left', () => {
    const of = (more: object) => told({ defects: [flaw({ tree: { leave: 'Fine.' }, ...more })] });
    expect(of({ 'while-wet': 'Press it flat.' })).toEqual([
      ['spot.mdx', 'while-wet', 'Press it flat', 'remedy', 'while it is wet or setting'],
    ]);
    expect(of({ 'while-setting': 'Press it flat.' })).toEqual([
      ['spot.mdx', 'while-setting', 'Press it flat', 'remedy', 'while it sets'],
    ]);
    expect(of({ 'while-wet': 'Wipe it off.', families: ['oil', 'wax'] })).toEqual([]);
    expect(of({ 'while-setting': 'Wipe it off.', families: ['oil', 'wax'] })).toHaveLength(1);
    expect(of({ tree: { ask: 'q', yes: { leave: 'Press it flat.' }, no: { remedy: 'x' } } })).toEqual([
      ['spot.mdx', 'tree.yes.leave', 'Press it flat', 'leave', 'after "leave:", where it is left alone'],
    ]);
  });
  it('nor a verdict that leaves it alone', () => {
    const of = (id: string, more: object) =>
      told({ doings: [{ id, verdict: 'V', say: 'Fine.', not: 'No.', ...more }] });
    for (const id of ['leave', 'wait', 'unsure']) {
      expect(of(id, { say: 'Press it flat.' })).toEqual([
        [`${id}.mdx`, 'say', 'Press it flat', 'remedy', 'under the verdict "V"'],
      ]);
      expect(of(id, { not: 'Press it flat.' })[0]?.[3]).toBe('not');
      expect(of(id, { say: 'Blot it up.' })).toHaveLength(1);
    }
    for (const id of ['repair', 'lift', 'stop', 'accept'])
      expect(of(id, { say: 'Press it flat.' })).toEqual([]);
  });
});

describe('rules to begin with', () => {
  const rule = (id: string, more: object = {}) => ({
    id,
    kind: 'caution',
    level: 'care',
    hazards: [],
    ...more,
  });
  const near = (...rules: readonly object[]) => nearRules(rules as never, 'dust', 'care');
  it('one that warns of the same on a condition, and one of the weight without any', () => {
    const some = rule('some', {
      hazards: ['dust'],
      when: { age: 'unknown', any: [{ base: ['stain', 'wax'] }] },
    });
    const sure = rule('sure', { hazards: ['dust'], sure: 'yes' });
    expect(near(some, rule('plain'))).toEqual({
      rule: { id: 'some', only: 'when: { age: unknown, any: [{ base: [stain, wax] }] }' },
      like: 'plain',
    });
    expect(near(sure).rule).toEqual({ id: 'sure', only: 'sure: yes' });
    expect(near({ ...some, sure: 'maybe' }).rule?.only).toMatch(/^when: \{.*\} and sure: maybe$/);
    expect(near(some).like).toBe('some');
    expect(near(rule('always', { hazards: ['dust'] }))).toEqual({ rule: undefined, like: 'always' });
    expect(near(rule('other', { hazards: ['heat'], sure: 'yes' })).rule).toBeUndefined();
    expect(near({ ...some, kind: 'stop' })).toEqual({ rule: undefined, like: undefined });
    expect(near()).toEqual({ rule: undefined, like: undefined });
  });
});
