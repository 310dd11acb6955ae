/**
 * Proofs of what the words of steps and checks may say, a slip and beside it the same said right. Sentences of our own;
 * what each step does is common practice, no source; that open drawers tip a chest is told by the product safety commission.
 */
import { describe, expect, it } from 'vitest';
import { checksCutNothing } from '#engine/prove/checks-cut-nothing.ts';
import { checksTouchNoWetFilm } from '#engine/prove/checks-touch-no-wet-film.ts';
import { chestsStand } from '#engine/prove/chests-stand.ts';
import { looksChangeNothing } from '#engine/prove/looks-change-nothing.ts';
import { timesAgree } from '#engine/prove/times-agree.ts';
import { proved } from './proved.ts';
import { remedy, type Step, step } from './sentences.ts';

describe('a chest stands', () => {
  const told = (more: object, steps: readonly Step[] = []) =>
    proved(chestsStand, { remedies: [remedy(steps, more)] }).map(({ at }) => at);
  it.each([
    'Leave it with all drawers open.',
    'Open the drawers for a week.',
    'Air it, drawers wide open.',
    'Leave it opened, with its drawers in.',
    'Leave everything open.',
    'Wide drawers stand.',
    'Open the drawer for a week.',
    'Leave the drawer there, open.',
  ])('%s', (say) => {
    expect(told({}, [step('wait', say)])).toEqual(['steps.0']);
    expect(told({ prevent: ['Fine.', say] })).toEqual(['prevent.1']);
    expect(
      told({ now: { wet: { do: 'leave', say: 'Fine.' }, cured: { do: 'wait', say }, overdue: undefined } }),
    ).toEqual(['now.cured.say']);
  });
  it.each([
    'Take the drawers out and leave it open.',
    'Lift all the drawers right out, and leave it open.',
    'Leave the drawers open a finger wide.',
    'Leave the drawers out, the case open.',
    'Leave each drawer open a little.',
    'Open the window. Drawers stay in.',
    'Keep the drawers shut.',
  ])('%s: it stands', (say) => {
    expect(told({}, [step('wait', say)])).toEqual([]);
  });
});

describe('a look lays nothing', () => {
  const told = (one: Step) =>
    proved(looksChangeNothing, { remedies: [remedy([step('look', 'Look.'), one])] });
  it.each(['look', 'wait', 'ask-professional', 'sand', 'scrape'])('a step of kind %s', (kind) => {
    expect(told(step(kind, 'Brush on shellac.'))).toEqual([
      {
        file: 'mend.mdx',
        at: 'steps.1',
        code: 'look-lays',
        step: 'Brush on shellac.',
        field: `kind: ${kind}`,
        word: 'Brush on shellac',
      },
    ]);
    expect(told(step(kind, 'Look at it.'))).toEqual([]);
  });
  it.each(['coat', 'mix', 'strip'])('a step of kind %s may', (kind) => {
    expect(told(step(kind, 'Brush on shellac.'))).toEqual([]);
  });
  it('a wipe only where it is wet with what it lays', () => {
    for (const by of ['dry-cloth', 'damp-cloth', 'mineral-spirits', 'vacuum', 'thinner'])
      expect(told(step('wipe', 'Brush on shellac.', { with: by }))[0]?.['field']).toBe('kind: wipe');
    for (const by of ['fresh-oil', 'fresh-wax', 'clear-wax', 'lacquer-retarder', 'polish', 'alcohol'])
      expect(told(step('wipe', 'Brush on shellac.', { with: by }))).toEqual([]);
  });
  it('a trial where it leaves something behind', () => {
    for (const tries of ['mineral-spirits', 'naphtha', 'alcohol', 'thinner', 'tape'])
      expect(told(step('test-patch', 'Brush on shellac.', { tries }))[0]?.['field']).toBe(`tries: ${tries}`);
    for (const tries of ['same', 'stain', 'oil'])
      expect(told(step('test-patch', 'Brush on shellac.', { tries }))).toEqual([]);
  });
});

describe('a check', () => {
  const asks = (proof: Parameters<typeof proved>[0], more: object) =>
    proved(proof, { questions: [{ id: 'q', how: 'Look.', sure: 'Look.', 'safe-from': 'wet', ...more }] }).map(
      ({ at, word }) => [at, word],
    );
  it('cuts nothing, unless it says what to do over old layers', () => {
    for (const field of ['how', 'sure', 'on-the-piece']) {
      expect(asks(checksCutNothing, { [field]: 'Scrape a spot.' })).toEqual([[field, 'Scrape a']]);
      expect(
        asks(checksCutNothing, { [field]: 'Scrape a spot. Over layers of unknown age, do not.' }),
      ).toEqual([]);
    }
    for (const cuts of [
      'Sand it.',
      'shave one off',
      'slice the run',
      'scuff some',
      'chip off a bit',
      'cut it',
      'cut six lines',
      'cut through',
      'push a pin under it',
    ])
      expect(asks(checksCutNothing, { how: cuts })).toHaveLength(1);
    for (const sound of [
      'Never scrape it.',
      'Do not sand it.',
      'A sandy feel.',
      'Was it sanded?',
      'cut flowers',
      'push the table',
    ])
      expect(asks(checksCutNothing, { how: sound })).toEqual([]);
  });
  it('of a film that may be wet brings nothing onto it', () => {
    for (const field of ['how', 'sure', 'on-the-piece'])
      for (const from of ['wet', 'setting'])
        expect(asks(checksTouchNoWetFilm, { [field]: 'Press it with a finger.', 'safe-from': from })).toEqual(
          [[field, 'Press it with a finger']],
        );
    for (const from of ['dry-to-touch', 'recoatable', 'cured'])
      expect(asks(checksTouchNoWetFilm, { how: 'Press it with a finger.', 'safe-from': from })).toEqual([]);
  });
  it.each([
    'Lay a card on it.',
    'Look at it, and then draw a line.',
    'Put a coin there.',
    'Set a glass down.',
    'Measure it with a rule.',
    'Mark the edge.',
    'Cover one half.',
    'Feel along the edge.',
    'Warm the spot.',
    'Close a drawer.',
    'Look along it or rub it.',
    'Look at the can. Then wipe it.',
    'Look from the side: wipe it.',
    'Lay a ruler beside it.',
  ])('%s: it touches', (how) => {
    expect(asks(checksTouchNoWetFilm, { how })).toHaveLength(1);
  });
  it.each([
    'Look along it in low light.',
    'Hold a lamp beside it.',
    'Run a light over it.',
    'Fan it with a card.',
    'Think back: did you wipe it?',
    'Ask who wiped it.',
    'Did you wipe it?',
    'Was it sanded?',
    'Press an uncoated spot.',
    'Press a bare spot. Then wipe it.',
    'Press it where it is dry to the touch.',
    'Wipe a drop from the can.',
    'Wipe some on glass.',
    'Draw some on a sheet of white paper.',
    'Hold a card above the film, without touching it.',
    'Never press it.',
    'Rub the tool.',
  ])('%s: it does not', (how) => {
    expect(asks(checksTouchNoWetFilm, { how })).toEqual([]);
  });
});

describe('two times in one breath', () => {
  const told = (act: object, isFlat = false, stage = 'setting') =>
    proved(
      timesAgree,
      {
        doings: [{ id: 'leave', again: 'Look again tomorrow.' }],
        remedies: [remedy([], { now: { [stage]: { do: 'leave', say: 'Give it two weeks.', ...act } } })],
      },
      isFlat,
    );
  it('are told with whose words they are, and how the act is written', () => {
    expect(told({})).toEqual([
      {
        file: 'mend.mdx',
        at: 'now.setting',
        code: 'times-differ',
        again: 'Look again tomorrow.',
        isOwn: false,
        days: 'two weeks',
        isOneLine: false,
      },
    ]);
    expect(told({ again: 'Look again the next day.' })[0]).toMatchObject({
      isOwn: true,
      again: 'Look again the next day.',
    });
    expect(told({}, true)[0]?.['isOneLine']).toBe(true);
    expect(told({ again: 'Look again in two weeks.' })).toEqual([]);
    expect(told({}, false, 'overdue')).toHaveLength(1);
    expect(
      told({ say: 'Leave it.', again: 'Look again when it is dry to the touch.' }, false, 'overdue'),
    ).toEqual([]);
    expect(
      told({ say: 'Leave it.', again: 'Look again when it is dry to the touch.' }, false, 'cured')[0],
    ).toMatchObject({ days: undefined });
  });
});
