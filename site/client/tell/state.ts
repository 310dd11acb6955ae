/**
 * What the page that listens knows: the words, what was told by a tap, and what was heard but is not so. It stands whole
 * in the address after `#`, so that a link to it can be sent and nothing is lost by going back.
 */
export type TellState = {
  readonly text: string;
  readonly told: Readonly<Record<string, string>>;
  /** Names of facts, questions and dangers that were heard wrongly. */
  readonly off: readonly string[];
};

/** As much as an address is asked to hold. */
export const HELD = 20_000;
const NAME = /^[a-z][a-z0-9-]{0,60}$/;

export const NOTHING_TOLD: TellState = { text: '', told: {}, off: [] };

export const readState = (hash: string): TellState => {
  const given = new URLSearchParams(hash.replace(/^#/, ''));
  const told = Object.fromEntries(
    (given.get('told') ?? '')
      .split('.')
      .map((pair) => pair.split('_'))
      .filter(
        (pair): pair is [string, string] =>
          pair.length === 2 && pair.every((part) => NAME.test(part) && part !== 'constructor'),
      ),
  );
  return {
    text: (given.get('say') ?? '').slice(0, HELD),
    told,
    off: (given.get('off') ?? '').split('.').filter((name) => NAME.test(name)),
  };
};

export const writeState = ({ text, told, off }: TellState): string => {
  const parts = new URLSearchParams();
  if (text) parts.set('say', text);
  const pairs = Object.entries(told).map((pair) => pair.join('_'));
  if (pairs.length) parts.set('told', pairs.join('.'));
  if (off.length) parts.set('off', off.join('.'));
  return parts.toString();
};
