/** A setting film is never touched: every node of every tree, at every stage, for every kind of top coat. */
import { describe, expect, it } from 'vitest';
import { type Case, nodesOf, STANDINGS, type Stage, type Walked, walk } from '#engine/index.ts';
import { ordersIn, TOUCHING, WORKING } from './imperative.ts';
import { known } from './knowledge.ts';
import { told } from './told.ts';

type Reached = { readonly defect: string; readonly told: string; readonly on: Case; readonly walked: Walked };

const FLAGSHIPS = ['cloudy-film', 'bubbles', 'hairs-and-dust', 'pools', 'lap-marks'];
/** Moves that an open film allows; wiping back is for wax and oils, which are wiped on. */
const OPEN = ['leave', 'lift', 'tip-off', 'wick', 'wash-off', 'stop'];
const WIPED = ['wax', 'oil', 'hardwax-oil', 'wipe-on'];

/** Every node that can be reached from what is told, through all hand-overs. */
function* reachedFrom(defect: string, facts: Record<string, string | number>): Generator<Reached> {
  function* below(on: Case): Generator<Reached> {
    const walked = walk(known, on, defect);
    yield { defect, told: Object.values(facts).join(' '), on, walked };
    if (walked.kind === 'question')
      for (const value of ['yes', 'no', 'unsure'])
        yield* below({ ...on, [walked.question]: { value, how: 'answered' } });
  }
  yield* below(told(facts));
}

const everywhere = (stage: Stage, more: Record<string, string | number> = {}): Reached[] =>
  known.defects.flatMap((defect) =>
    defect.families.flatMap((family) => [...reachedFrom(defect.id, { stage, family, ...more })]),
  );

const place = (one: Reached) =>
  `${one.defect} (${one.told}) ${Object.entries(one.on)
    .filter(([, fact]) => fact.how === 'answered')
    .map(([question, fact]) => `${question}=${fact.value}`)
    .join(' ')}`;

const actions = (reached: readonly Reached[]) =>
  reached.flatMap((one) => (one.walked.kind === 'outcome' ? [{ one, action: one.walked.action }] : []));

const doingsOtherThan = (reached: readonly Reached[], allowed: (family: string) => readonly string[]) =>
  actions(reached)
    .filter(({ one, action }) => !allowed(String(one.on['family']?.value ?? '')).includes(action.do))
    .map(({ one, action }) => `${place(one)}: ${action.do}`);

const orders = (reached: readonly Reached[], verbs: string, doings: readonly string[]) => [
  ...new Set(
    actions(reached)
      .filter(({ action }) => doings.includes(action.do))
      .flatMap(({ one, action }) =>
        ordersIn(`${action.verdict}. ${action.say} ${action.again}`, verbs).map(
          (clause) => `${one.defect}: "${clause}" in "${action.say}"`,
        ),
      ),
  ),
];

const setting = everywhere('setting');
const wet = everywhere('wet');
const dryToTouch = everywhere('dry-to-touch');

describe('the check for orders', () => {
  it('hears an order, and not what is put off or forbidden', () => {
    expect(ordersIn('Wipe it off. Then leave it.', TOUCHING)).toEqual(['Wipe it off.']);
    expect(ordersIn('It clings, so wipe it now.', TOUCHING)).toEqual(['so wipe it now.']);
    expect(ordersIn('The film is open; lay it off and brush it out.', TOUCHING)).toHaveLength(2);
    expect(ordersIn('Leave it until it is dry, then sand it.', TOUCHING)).toEqual([]);
    expect(ordersIn('Do not brush, wipe or heat it.', TOUCHING)).toEqual([]);
    expect(ordersIn('Air it out, then warm the room.', TOUCHING)).toEqual([]);
    expect(ordersIn('Brush marks are left alone. A coat this thin dries soon.', TOUCHING)).toEqual([]);
  });
});

describe('hands off', () => {
  it('covers every page, stage and family', () => {
    const nodes = known.defects.flatMap((defect) => [...nodesOf(known, defect.id)]);
    console.log(
      `${known.defects.length} defects, ${nodes.length} pages of answers; by family ${wet.length} wet, ` +
        `${setting.length} setting, ${dryToTouch.length} dry to the touch`,
    );
    expect(new Set(nodes.map((node) => node.stage))).toEqual(new Set([undefined, ...STANDINGS]));
    expect(new Set(setting.map((one) => one.on['family']?.value)).size).toBe(
      new Set(known.defects.flatMap((defect) => defect.families)).size,
    );
  });

  it('never asks a hand to touch a setting film', () => {
    expect(doingsOtherThan(setting, () => ['leave', 'stop'])).toEqual([]);
    expect(orders(setting, TOUCHING, ['leave', 'stop'])).toEqual([]);
  });

  it('says the same on every page of a setting film without a family', () => {
    const pages = known.defects.flatMap((defect) =>
      [...nodesOf(known, defect.id)]
        .filter((node) => node.stage === 'setting')
        .map((node) => ({ defect, node })),
    );
    const wrong = pages.filter(
      ({ node }) => node.walked.kind === 'outcome' && !['leave', 'stop'].includes(node.walked.action.do),
    );
    expect(wrong.map(({ defect, node }) => `${defect.id}/${node.address.join('/')}`)).toEqual([]);
  });

  it('allows a wet film only its moves, and orders no work where it says leave it', () => {
    expect(
      doingsOtherThan(wet, (family) => (WIPED.includes(family) ? [...OPEN, 'wipe-back'] : OPEN)),
    ).toEqual([]);
    expect(orders(wet, TOUCHING, ['leave', 'stop'])).toEqual([]);
    expect(orders(wet, WORKING, [...OPEN, 'wipe-back'])).toEqual([]);
  });

  it('orders no work on a film that is dry on top and soft below', () => {
    expect(
      doingsOtherThan(dryToTouch, (family) =>
        WIPED.includes(family)
          ? ['leave', 'wait', 'accept', 'stop', 'wipe-back']
          : ['leave', 'wait', 'accept', 'stop'],
      ),
    ).toEqual([]);
    expect(orders(dryToTouch, WORKING, ['leave', 'wait', 'accept', 'stop'])).toEqual([]);
  });

  // Flexner, 'Getting a do-over', about 2016: fast finishes can not be washed off.
  it('never washes off shellac or lacquer', () => {
    const fast = wet.filter((one) => ['shellac', 'lacquer'].includes(String(one.on['family']?.value)));
    expect(fast.length).toBeGreaterThan(50);
    expect(doingsOtherThan(fast, () => OPEN.filter((doing) => doing !== 'wash-off'))).toEqual([]);
  });

  // A paint maker's questions and answers: color of unsealed chalk-type paint lifts with water.
  it('never washes a first coat off raw chalk paint, milk paint or stain', () => {
    const over = ['chalk-paint', 'milk-paint', 'stain'].flatMap((base) =>
      everywhere('wet', { base, 'coat-number': 1 }).filter((one) =>
        ['water-based', 'water-lacquer'].includes(String(one.on['family']?.value)),
      ),
    );
    expect(over.length).toBeGreaterThan(100);
    expect(doingsOtherThan(over, () => OPEN.filter((doing) => doing !== 'wash-off'))).toEqual([]);
  });
});

describe('the five common troubles while the film is wet', () => {
  /** What she may come to be told to do: to be told that a check must decide is not to be told hands off. */
  const verdictsAfter = (on: Case, defect: string): string[] => {
    const walked = walk(known, on, defect);
    if (walked.kind === 'outcome') return [walked.action.verdict];
    if (walked.kind !== 'question') return [walked.kind];
    const answers = ['yes', 'no'] as const;
    return [
      ...new Set(
        answers.flatMap((value) =>
          verdictsAfter({ ...on, [walked.question]: { value, how: 'answered' } }, defect),
        ),
      ),
    ].sort();
  };

  for (const defect of FLAGSHIPS) {
    it(`${defect}: a setting film gets its action without a question`, () => {
      const walked = walk(known, told({ stage: 'setting' }), defect);
      expect(walked.kind).toBe('outcome');
    });

    it(`${defect}: a wet film is asked only what changes what to do now`, () => {
      const idle: string[] = [];
      for (const one of reachedFrom(defect, { stage: 'wet' })) {
        if (one.walked.kind !== 'question') continue;
        const { question } = one.walked;
        const [yes, no] = (['yes', 'no'] as const).map((value) =>
          verdictsAfter({ ...one.on, [question]: { value, how: 'answered' } }, defect).join('; '),
        );
        // Where both answers leave several actions open, the next question tells them apart.
        if (yes === no && !yes?.includes(';')) idle.push(`${place(one)} asks ${question}: ${yes} both ways`);
      }
      expect(idle).toEqual([]);
    });
  }
});
