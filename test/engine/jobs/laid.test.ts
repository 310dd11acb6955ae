/** Coats on the clock: one a piece, told by its card where it has one. */
import { describe, expect, it } from 'vitest';
import { adopted, emptyStore, type LaidCoat, readStore, withLaid } from '#engine/clock.ts';
import { laidCoatOf } from '#engine/jobs.ts';
import { card, coat } from './cards.ts';

const laid = (id: string, on?: string, piece = 'Chair'): LaidCoat => {
  const { card: _card, below: _below, ...bare } = laidCoatOf(card({ name: piece }), coat({ id }));
  return on === undefined ? bare : { ...bare, card: on };
};
const ids = (coats: readonly LaidCoat[]) => coats.map(({ id }) => id);

describe('a coat that is laid', () => {
  it('buries the coat below it on its own card, and none of another card of the same name', () => {
    const clock = [laid('1', 'one'), laid('2', 'two')];
    expect(ids(withLaid(clock, laid('3', 'one')))).toEqual(['3', '2']);
    expect(ids(withLaid(clock, laid('3', 'three')))).toEqual(['3', '1', '2']);
  });

  it('goes by the name where one of the two knows no card, as before', () => {
    expect(ids(withLaid([laid('1')], laid('2')))).toEqual(['2']);
    expect(ids(withLaid([laid('1')], laid('2', undefined, 'CHAIR')))).toEqual(['2']);
    expect(ids(withLaid([laid('1'), laid('9', undefined, 'Table')], laid('2', 'one')))).toEqual(['2', '9']);
    expect(withLaid([laid('1', 'one')], laid('2'))).toMatchObject([laid('2', 'one')]);
  });

  it('buries no coat of two cards that share its name', () => {
    expect(ids(withLaid([laid('1', 'one'), laid('2', 'two')], laid('3')))).toEqual(['3', '1', '2']);
  });

  it('keeps what it buries below it, the uppermost first', () => {
    const three = ['1', '2', '3'].reduce<readonly LaidCoat[]>(
      (clock, id) => withLaid(clock, laid(id, 'one')),
      [],
    );
    expect(three.map(({ below }) => ids(below ?? []))).toEqual([['2', '1']]);
  });

  it('is on the clock once', () => {
    expect(ids(withLaid([laid('1', 'one')], laid('1', 'one')))).toEqual(['1']);
  });
});

describe('what was kept before coats knew their card', () => {
  it('is read, and learns of the card that holds it', () => {
    const old = JSON.parse(JSON.stringify({ ...emptyStore(), coats: [laid('1'), laid('2')] }));
    const { store, lost } = readStore(old);
    expect([ids(store.coats), lost]).toEqual([['1', '2'], 0]);
    const coats = adopted(store.coats, 'one', [coat({ id: '2' })]);
    expect(coats.map(({ card: on }) => on)).toEqual([undefined, 'one']);
    expect(ids(withLaid(coats, laid('3', 'two')))).toEqual(['3', '2']);
  });

  it('is left out where its card is no text', () => {
    expect(readStore({ ...emptyStore(), coats: [{ ...laid('1'), card: 7 }] }).lost).toBe(1);
  });
});
