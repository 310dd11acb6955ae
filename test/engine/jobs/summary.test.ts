import { describe, expect, it } from 'vitest';
import { summaryOf } from '#engine/jobs.ts';
import { card, coat, START } from './cards.ts';

const state = (more: Parameters<typeof card>[0]) => summaryOf(card(more)).state;

describe('a card in the list', () => {
  it('goes from planned over under way and curing to handed over', () => {
    expect(state({ coats: [] })).toBe('planned');
    expect(state({})).toBe('under-way');
    expect(state({ finishedAt: START + 1 })).toBe('curing');
    expect(state({ finishedAt: START + 1, handedOverAt: START + 2 })).toBe('handed-over');
  });

  it('is under way again when a coat is laid after the last', () => {
    expect(state({ finishedAt: START - 1 })).toBe('under-way');
  });

  it('shows the last coat by time and counts open flaws only', () => {
    const flaw = { foundAt: START, defect: 'bubbles', answers: [] };
    const summary = summaryOf(
      card({
        coats: [coat({ id: 'late', laidAt: START + 9, product: 'shellac' }), coat()],
        flaws: [
          { ...flaw, id: 'open' },
          { ...flaw, id: 'done', settledAt: START + 1 },
        ],
      }),
    );
    expect(summary).toMatchObject({
      coats: 2,
      openFlaws: 1,
      lastCoat: { laidAt: START + 9, product: 'shellac' },
    });
  });
});
