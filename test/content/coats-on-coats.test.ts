/** What a layer needs of the one below, what a film bears, and what a step must be marked with: each broken once. */
import { expect, it } from 'vitest';
import { CLOTH, COAT, SAND, told, VACUUM, WAIT } from './broken-repair.ts';

const COLOR = '{ kind: coat, product: base-color, say: Touch the color in. }';
const SPOT = '{ kind: sand, grit: 320, say: Sand the spot with the grain. }';
const PANEL = '{ kind: coat, product: same, say: Lay one thin coat over the whole panel. }';
const PRIMER = '{ kind: coat, product: shellac-primer, say: Lay one thin coat of primer. }';
const days = (least: number, most: number, more = ''): string =>
  `{ kind: wait, until: recoatable, hours: [${least}, ${most}], ${more}say: Let it dry as long as that. }`;

const TRIED = '{ kind: test-patch, tries: same, hours: [24, 24], say: Try it on a hidden painted spot. }';
const overColor = (wait: string, ...more: readonly string[]) =>
  told([WAIT, SAND, VACUUM, CLOTH, COLOR, wait, ...more, COAT, WAIT]);

it('tells a coat on oil paint that is not hard yet, under any top coat that minds', () => {
  const mend =
    'right below that step, add the shared step, on a line of its own: - color-dries-a-day (it gives oil paint its days, up to a week)';
  const early = (under: string, days: string) =>
    `broken.mdx:15: ${under} comes on the oil paint of "Touch the color in." before ${days} passed; ${mend}`;
  expect(overColor(days(4, 23), TRIED)).toEqual([early('a coat that is water-based', 'three days have')]);
  expect(overColor(days(24, 72), TRIED)).toEqual([early('a coat of shellac', 'a week has')]);
  expect(overColor(days(24, 168), TRIED)).toEqual([]);
});

it('tells lacquer that goes on fresh paint untried', () => {
  expect(overColor(days(24, 168))).toEqual([
    'broken.mdx:15: lacquer comes on the fresh paint of "Touch the color in.", and nobody tried it; below the wait for the color, add the shared step, on a line of its own: - lacquer-on-paint-is-tried',
  ]);
});

it('tells alcohol on a young water-based coat', () => {
  const lay = (...waits: readonly string[]) => told([...waits, SAND, VACUUM, CLOTH, PRIMER, WAIT]);
  expect(lay(WAIT)).toEqual([
    'broken.mdx:15: "Lay one thin coat of primer." lays alcohol on a water-based coat that may be a day old, which softens it; above it, add the shared step, on a line of its own: - a-week-below-alcohol',
  ]);
  expect(lay(WAIT, days(168, 240, 'when: { family: [water-based, water-lacquer] }, '))).toEqual([]);
  const some = "{ kind: wait, hours: [168, 336], say: 'If filler is new, give it a week.' }";
  expect(lay(WAIT, some)).toHaveLength(1);
});

it('tells a panel that is coated where only a place was sanded', () => {
  expect(told([WAIT, SPOT, VACUUM, CLOTH, PANEL, WAIT])).toEqual([
    'broken.mdx:15: "Lay one thin coat over the whole panel." coats more than was sanded: a coat lets go of what still shines; say in a sanding before it that the whole panel is scuffed until it is dull',
  ]);
  const scuffed = '{ kind: sand, grit: 400, say: Scuff the whole panel. }';
  expect(told([WAIT, SPOT, scuffed, VACUUM, CLOTH, PANEL, WAIT])).toEqual([]);
});

it('tells a thinning past what the trade gives to that kind of top coat', () => {
  const thin = (family: string, most: number, say = 'Thin it as the label allows.') =>
    told([
      WAIT,
      `{ kind: mix, what: thin, percent: [5, ${most}], when: { family: ${family} }, say: '${say}' }`,
      COAT,
      WAIT,
    ]);
  const over = (percent: number, most: number, coat = 'oil-based') => [
    `broken.mdx:12: this step thins up to ${percent} %, and a top coat that is ${coat} bears ${most} % at most; write ${most} or less as the second number after "percent:"`,
  ];
  expect(thin('oil-based', 20)).toEqual(over(20, 10));
  expect(thin('oil-based', 25, 'Thin it for the last coat.')).toEqual([]);
  expect(thin('lacquer', 20)).toEqual([]);
  expect(thin('[lacquer, water-based]', 20)).toEqual(over(20, 10, 'water-based'));
  const extended = '{ kind: mix, what: extender, percent: [5, 20], say: Stir extender in. }';
  expect(told([WAIT, extended, COAT, WAIT])).toEqual([
    'broken.mdx:12: this step adds extender up to 20 %, and a top coat bears 15 % at most; write 15 or less as the second number after "percent:"',
  ]);
});

it('tells soap where water spoils what is below', () => {
  const steps = (wash: string, rub: string) => [
    WAIT,
    `{ kind: wipe, with: soapy-water, say: '${wash}' }`,
    `{ kind: sand, grit: 1000, say: '${rub}' }`,
    CLOTH,
  ];
  expect(
    told(steps('Wash it, rinse it and let it dry.', 'Rub it with soapy water.'), 'against-told'),
  ).toEqual([
    'broken.mdx:12: the step "Wash it, rinse it and let it dry." washes with running water what may be chalk or milk paint laid open, which water lifts at any age, but it is shown as well to those with base: chalk-paint or milk-paint; say in the step that such paint takes only a wrung-out cloth, or add a when: that shuts this out',
    'broken.mdx:13: the step "Rub it with soapy water." wets shellac with soapy water, which whitens it, but it is shown as well to those with family: shellac; say in the step what wets the paper on shellac (mineral oil), or add a when: that shuts this out',
  ]);
  const drop = steps('Wash it with a wrung-out cloth and dry it.', 'Rub it with water and a drop of soap.');
  expect(told(drop, 'against-told')).toHaveLength(1);
  expect(
    told(
      steps(
        'Wash it with a wrung-out cloth, rinse it and let it dry.',
        'Rub it with soapy water, shellac with mineral oil.',
      ),
      'against-told',
    ),
  ).toEqual([]);
});

it('tells a test with paper that stands before every word of old paint', () => {
  const test = (does = '') =>
    `{ kind: wait, until: recoatable, ${does}say: Wait until it sands to dry powder. }`;
  const rest = [SAND, VACUUM, CLOTH, COAT, WAIT];
  expect(told([test(), ...rest], 'hazard-untold')).toEqual([
    'broken.mdx:11: "Wait until it sands to dry powder." says "sands to dry powder", but the line is not marked as one that sands finely, where the paper can reach an old layer at an edge, and no caution would stand before it; write , does: [old-film-in-reach] before the } that ends it',
  ]);
  const aLineEach = 'kind: wait\n    until: recoatable\n    say: Wait until it sands to dry powder.';
  expect(told([aLineEach, ...rest], 'hazard-untold')).toEqual([
    expect.stringMatching(
      /^broken\.mdx:11: .+; write below it, set in like its other lines: does: \[old-film-in-reach\]$/,
    ),
  ]);
  expect(told([test('does: [old-film-in-reach], '), ...rest], 'hazard-untold')).toEqual([]);
});

it('tells a coat that is marked by hand though only its details are', () => {
  const lay = (say: string) =>
    told(
      [WAIT, SAND, VACUUM, CLOTH, `{ kind: coat, by: hand, product: same, say: '${say}' }`, WAIT],
      'against-told',
    );
  expect(lay('Lay one thin coat, in details with an almost dry brush.')).toEqual([
    'broken.mdx:15: the step "Lay one thin coat, in details with an almost dry brush." has by: hand and names no tool for the whole coat, but it is shown as well to those with applicator: spray-gun or aerosol; name that tool (with a soft brush), or delete by: hand and say nothing of a tool',
  ]);
  expect(lay('Lay one thin coat with a soft brush, in details almost dry.')).toEqual([]);
});

it('tells a trial of the thinner that lays a patch of finish as well', () => {
  const rub = (say: string) =>
    told(
      [WAIT, `{ kind: test-patch, tries: thinner, hours: [1, 2], say: '${say}' }`, SAND, VACUUM, COAT, WAIT],
      'look-lays',
    );
  expect(rub('Rub a hidden spot with thinner. If it holds, coat a small patch.')).toEqual([
    'broken.mdx:12: the step "Rub a hidden spot with thinner. If it holds, coat a small patch." says "coat a small patch", but has tries: thinner, which lays nothing and opens no can; give that a step of its own, with kind: coat, mix or test-patch',
  ]);
  expect(rub('Rub a hidden spot with thinner and look at the rag.')).toEqual([]);
});

it('tells drawers that stand open, whose chest tips over', () => {
  const air = (say: string) =>
    told([WAIT, `{ kind: wait, hours: [24, 48], say: ${say} }`, SAND, VACUUM, COAT, WAIT]);
  expect(air('Let it dry with the drawers open.')).toEqual([
    'broken.mdx:12: "Let it dry with the drawers open." has drawers stand open: a chest with all of them pulled tips over; say that the drawers are taken out, or stand a finger wide open',
  ]);
  expect(air('Let it dry with everything open.')).toHaveLength(1);
  expect(air('Let it dry with the drawers out and the doors open.')).toEqual([]);
  expect(air('Let it dry with the drawers a finger wide open.')).toEqual([]);
});

it('tells oil that would lie behind a stop, between the spreading and the paper', () => {
  const rub = (does = '') =>
    told(
      [
        WAIT,
        `{ kind: wipe, with: fresh-oil, ${does}say: Spread the same oil thinly. }`,
        '{ kind: sand, of: oil, grit: 800, say: Rub it wet along the grain. }',
        CLOTH,
      ],
      'hazard-untold',
    );
  expect(rub()).toEqual([
    'broken.mdx:12: the oil of "Spread the same oil thinly." is rubbed in with paper in the next step, so the warning of old layers must come before it; write , does: [old-film-in-reach] before the } that ends it',
  ]);
  expect(rub('does: [old-film-in-reach], ')).toEqual([]);
});
