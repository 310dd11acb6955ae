/** No caution can be lost unseen: a rule dropped, a mark dropped, a hazard taken from a rule, what is rinsed put after. */
import { expect, it } from 'vitest';
import { link } from '#engine/link.ts';
import type { RawEntry } from '#engine/model/knowledge.ts';
import { hazardsAreCautioned } from '#engine/prove/hazards-are-cautioned.ts';
import { lessonsAreCautioned } from '#engine/prove/lessons-are-cautioned.ts';
import { stepsAreInOrder } from '#engine/prove/steps-are-in-order.ts';
import { stepsTellWhatTheyDo } from '#engine/prove/steps-tell-what-they-do.ts';
import { tintsStayWithinLimits } from '#engine/prove/tints-stay-within-limits.ts';
import { rawContent, retired } from '../content/real/knowledge.ts';

type Data = { hazards?: string[]; kind?: string; level?: string; steps?: Record<string, unknown>[] };

const faultsOf = (entries: readonly RawEntry[]): number => {
  const linked = link(entries, retired);
  if (!linked.ok) return linked.issues.length;
  const proofs = [
    hazardsAreCautioned,
    lessonsAreCautioned,
    stepsTellWhatTheyDo,
    stepsAreInOrder,
    tintsStayWithinLimits,
  ];
  return proofs.reduce((sum, proof) => sum + [...proof(linked.value)].length, 0);
};

const changed = (entry: RawEntry, change: (data: Data) => void): readonly RawEntry[] => {
  const data = structuredClone(entry.data) as Data;
  change(data);
  return rawContent.map((one) => (one === entry ? { ...entry, data } : one));
};

/** These say more of a hazard that another rule guards already; without them a page says less, and nothing is unguarded. */
const SECOND = [
  'aerosol-can',
  'asbestos',
  'lead-test-limits',
  'lead-work-wet',
  'not-sanded-before-full-cure',
  'not-sprayed-at-home',
  'old-paint-in-reach',
  'solvent-limits',
  'sparks',
  'spray-room',
];
/** Nothing lays lye or peroxide on yet. */
const IDLE = ['caustic'];

const rules = rawContent.filter(({ kind }) => kind === 'rule');
const guarding = rules.filter(
  ({ id, data }) => (data as Data).hazards?.length && ![...SECOND, ...IDLE].includes(id),
);

it('finds every rule that is dropped', () => {
  expect(faultsOf(rawContent)).toBe(0);
  const unseen = guarding.filter((entry) => faultsOf(rawContent.filter((one) => one !== entry)) === 0);
  expect(unseen.map(({ id }) => id)).toEqual([]);
  expect(guarding.length).toBeGreaterThan(20);
});

it('finds every hazard that is taken from a rule', () => {
  const unseen = guarding.flatMap((entry) =>
    ((entry.data as Data).hazards ?? [])
      .filter((hazard) => {
        const left = changed(entry, (data) => {
          data.hazards = (data.hazards ?? []).filter((one) => one !== hazard);
        });
        return faultsOf(left) === 0;
      })
      .map((hazard) => `${entry.id}: ${hazard}`),
  );
  expect(unseen).toEqual([]);
});

it('finds every mark that is dropped from a step', () => {
  const remedies = rawContent.filter(({ kind }) => kind === 'remedy');
  let marks = 0;
  const unseen = remedies.flatMap((entry) =>
    ((entry.data as Data).steps ?? []).flatMap((step, at) => {
      const keys = ['does', ...(step['by'] === 'spray' ? ['by'] : [])].filter((key) => step[key]);
      marks += keys.length;
      return keys
        .filter((key) => faultsOf(changed(entry, (data) => void delete data.steps?.[at]?.[key])) === 0)
        .map((key) => `${entry.id}, step ${at + 1}: ${key}`);
    }),
  );
  expect(marks).toBeGreaterThan(30);
  expect(unseen).toEqual([]);
});

it('finds what makes safe put after what it makes safe', () => {
  let swaps = 0;
  const unseen = rawContent.flatMap((entry) => {
    const steps = (entry.data as Data).steps ?? [];
    return steps.flatMap((step, at) => {
      const rinses =
        step['kind'] === 'wipe' &&
        ['damp-cloth', 'soapy-water'].includes(String(step['with'])) &&
        steps.slice(0, at).some((one) => one['with'] === 'wood-bleach');
      const next = steps.findIndex(
        (one, index) => index > at && (one['kind'] === 'sand' || one['kind'] === 'coat'),
      );
      if (
        entry.kind !== 'remedy' ||
        !rinses ||
        next < 0 ||
        steps
          .slice(0, at)
          .some(
            (one, i) =>
              i > steps.findIndex((s) => s['with'] === 'wood-bleach') && one['with'] === 'damp-cloth',
          )
      )
        return [];
      swaps++;
      const swapped = changed(entry, (data) => {
        const list = data.steps ?? [];
        const [a, b] = [list[at], list[next]];
        if (a && b) [list[at], list[next]] = [b, a];
      });
      return faultsOf(swapped) === 0 ? [`${entry.id}, step ${at + 1}`] : [];
    });
  });
  expect(swaps).toBeGreaterThan(3);
  expect(unseen).toEqual([]);
});
