/**
 * No word under a verdict of hands off sends a hand to the film. That a film which sets is torn by any touch is common
 * practice, no source; the orders below are invented.
 */
import { describe, expect, it } from 'vitest';
import { say } from '#engine/faults/say.ts';
import { link } from '#engine/link.ts';
import { prove } from '#engine/prove/prove.ts';
import { bornBy, touchAgain, touchOrdered } from '#engine/prove/touch-words.ts';
import { readContent } from '../../content/tools/read.ts';
import { sharedFaults } from '../../content/tools/shared.ts';

const root = process.cwd();
const textsWith = (file: string, text: string) => ({ folder: root, texts: new Map([[file, text]]) });

describe('the words of a touch', () => {
  for (const order of [
    'Press the lip flat with a finger.',
    'Wipe along the edge.',
    'Brush it smooth again.',
    'Pull the tape off slowly.',
    'Push the ridge down with a plastic card.',
    'Rub the mark.',
    'Pick the bit out.',
    'Scrape the drip.',
    'Shave it flush.',
    'Sand it a little.',
    'Dab it with a rag.',
    'Level the ridge.',
    'Smooth the lip.',
    'Roll over it once more.',
    'Leave it a moment. Then gently press it flat.',
    'Stop, and wipe it flat.',
    'If the lip is ragged, press it down.',
    'You can wipe it off.',
    'Take the hair out with tweezers.',
    'Press it flat until it holds.',
    'Never hurry: press it flat.',
    'Nudge the hair out.',
    'Give it a light wipe.',
    'Hold a cloth against it.',
    'Coax the lip down with a plastic card.',
  ])
    it(`are an order: ${order}`, () => expect(touchOrdered(order)).toBeTypeOf('string'));

  for (const order of [
    'Don’t wipe it.',
    "Don't wipe it.",
    'Never press it.',
    'Do not wipe, press or rub it.',
    'No cloth, brush, finger or heat.',
    'A rub now drags it into streaks.',
    'Pulling now takes the film with it.',
    'Dust on a wet film cannot be taken off, but it rubs off once dry.',
    'Leave it for a week, then sand it.',
    'Once it is dry, wipe it off.',
    'Air the vapor out and warm the room with house heat.',
    'Test it with a nail in some days.',
    'Do not test it with a nail.',
    'Leave the dots until they are hard enough to cut off.',
  ])
    it(`are none: ${order}`, () => expect(touchOrdered(order)).toBeUndefined());

  it('are none where it is told when to look again, and then', () => {
    expect(touchAgain('In two weeks press a nail into the fattest fold.')).toBeUndefined();
    expect(touchAgain('Press a nail into it.')).toBe('Press a nail into it');
  });

  it('are borne where a cloth may go: by open oil and wax, and for a spill on a film dry to the touch', () => {
    const wiped = 'Wipe off all that the wood has not drunk.';
    expect(touchOrdered(wiped, bornBy('wet', true))).toBeUndefined();
    expect(touchOrdered(wiped, bornBy('setting', true))).toBeDefined();
    expect(touchOrdered(wiped, bornBy('dry-to-touch', false))).toBeDefined();
    const blot = 'Blot it straight up.';
    expect(touchOrdered(blot, bornBy('dry-to-touch', false))).toBeUndefined();
    expect(touchOrdered(blot, bornBy('wet', false))).toBeDefined();
  });
});

const MEND =
  'say here only what the film does by itself and when to look again; what hands do belongs in a remedy, under "steps:"';

const entries = readContent(root);

describe('a touch is refused', () => {
  const spoiled = (id: string, change: (data: Record<string, unknown>) => object) => {
    const linked = link(
      entries.map((entry) =>
        entry.id === id ? { ...entry, data: change(entry.data as Record<string, unknown>) } : entry,
      ),
    );
    if (!linked.ok) throw new Error(linked.issues.map(say).join('\n'));
    return prove(linked.value)
      .filter(({ code }) => code === 'touch-ordered')
      .map(say);
  };

  it('in what is said of a coat that is wet or setting', () => {
    expect(
      spoiled('bubbles', (data) => ({
        ...data,
        'while-wet': 'Bubbles are usual in a coat that was stroked. Prick them now.',
      })),
    ).toEqual([
      `content/defects/bubbles.mdx:4: "Prick them now" sends a hand to the film while it is wet or setting; ${MEND}`,
    ]);
  });

  it('in what is said of an oil that sets, though it is wiped while it is wet', () => {
    const told = spoiled('sticky-oil', (data) => ({
      ...data,
      'while-setting': 'Oil that stands there stays sticky for weeks. Wipe it off the wood.',
    }));
    expect(told).toEqual([
      expect.stringMatching(/"Wipe it off the wood" sends a hand to the film while it sets/),
    ]);
  });

  it('in what is said of a film that may stay as it is', () => {
    const tree = { leave: 'It is only dust. Wipe it off and leave it.' };
    const told = spoiled('bubbles', (data) => ({ ...data, tree }));
    expect(told).toEqual([
      expect.stringMatching(
        /^content\/defects\/bubbles\.mdx:\d+: "Wipe it off" sends a hand to the film after "leave:", where it is left alone; take the words out, or write remedy: and the name of a repair that says it, in place of leave: and its words$/,
      ),
    ]);
  });

  it('in the words of a verdict that leaves it alone', () => {
    expect(spoiled('wait', (data) => ({ ...data, say: 'It is nearly dry. Press it flat now.' }))).toEqual([
      `content/doings/wait.mdx:3: "Press it flat now" sends a hand to the film under the verdict "Leave it to dry"; ${MEND}`,
    ]);
    expect(spoiled('wait', (data) => ({ ...data, verdict: 'Press it flat' }))).toEqual([
      expect.stringContaining(': "Press it flat" sends a hand to the film'),
    ]);
    expect(spoiled('wait', (data) => ({ ...data, again: 'Rub it down and look again.' }))).toEqual([
      expect.stringContaining(
        `: "Rub it down" sends a hand to the film under the verdict "Leave it to dry"; ${MEND}`,
      ),
    ]);
  });

  it('in a usual act, once and where it stands', () => {
    const acts = `film:
  wet: { do: leave, say: Leave it until it dries., not: Do not touch it. }
  setting:
    do: leave
    say: Press the lip flat with a finger.
    not: Peel it off.
  recoatable: { do: repair }
oil:
  wet: { do: wipe-back, say: Wipe it off until a cloth stays dry., not: Do not leave it. }
  setting: { do: leave, say: Wipe it off until a cloth stays dry., not: Do not leave it. }
wax:
  setting: { do: leave, say: Leave it until it dries., not: Do not touch it. }
`;
    expect(sharedFaults(textsWith('content/acts.yaml', acts)).map(say)).toEqual([
      `content/acts.yaml:5: "Press the lip flat with" sends a hand to the film where "do: leave" leaves it alone (setting); ${MEND}`,
      'content/acts.yaml:6: after "not:" stands an order to touch the film, "Peel it off", where "do: leave" leaves it alone (setting); write there what must not be done at all, beginning with Do not: Do not peel it off',
      `content/acts.yaml:10: "Wipe it off" sends a hand to the film where "do: leave" leaves it alone (setting); ${MEND}`,
    ]);
  });
});
