import { useState } from 'preact/hooks';
import * as v from 'valibot';
import { counted } from '../shared/counted.ts';
import { mergedDecks } from '../shared/decks.ts';
import { saveFile } from '../shared/save-file.ts';
import { DECK, type Deck } from '../shared/storage.ts';

/** Larger than any deck of ours. */
const MOST_BYTES = 2_000_000;

const readDeck = (text: string): Deck | undefined => {
  try {
    const read = v.safeParse(DECK, JSON.parse(text));
    return read.success ? read.output : undefined;
  } catch (error) {
    if (error instanceof SyntaxError) return undefined;
    throw error;
  }
};

type Props = { readonly deck: Deck; readonly onDeck: (deck: Deck) => void };

/** Progress to a file and back: it lies on this device alone. */
export const DeckFile = ({ deck, onDeck }: Props) => {
  const [said, setSaid] = useState('');
  const bring = async (file: File | undefined) => {
    if (!file) return;
    const found = file.size <= MOST_BYTES ? readDeck(await file.text()) : undefined;
    if (found) onDeck(mergedDecks(deck, found));
    setSaid(
      found
        ? `Brought in: ${counted(Object.keys(found.cards).length, 'flaw')} practiced.`
        : 'This is no file of practice. Nothing was changed.',
    );
  };
  return (
    <details class="fold deck">
      <summary>Keep what you have learned</summary>
      <p>It lies on this device alone. Save it to a file, and bring it in on another device.</p>
      <p class="acts">
        <button
          type="button"
          class="quiet"
          onClick={() => saveFile('halfdry-practice.json', 'application/json', JSON.stringify(deck, null, 1))}
        >
          <b>Save to a file</b>
        </button>
        <label class="quiet">
          <b>Bring in a file</b>
          <input
            type="file"
            accept=".json,application/json"
            onChange={({ currentTarget }) => void bring(currentTarget.files?.[0])}
          />
        </label>
      </p>
      <p role="status">{said}</p>
    </details>
  );
};
