import { useMemo, useState } from 'preact/hooks';
import { flawOfSeed, PRACTICE_LEVELS, type PracticeKey, type PracticeLevel } from '#engine/practice.ts';
import { counted } from '../shared/counted.ts';
import { keep, recall } from '../shared/storage.ts';
import { answered, dueFlaws, EMPTY_DECK } from './deck.ts';
import { DeckFile } from './deck-file.tsx';
import { PracticeItemView } from './item.tsx';
import { canDeal, type Dealer, deal } from './load.ts';
import { newSeed } from './seed.ts';
import { writeLink } from './state.ts';

const LEVEL_WORDS: Readonly<Record<PracticeLevel, readonly [string, string]>> = {
  look: ['Look', 'What is it? By what you see.'],
  stage: ['Look and stage', 'What is it, and what do your hands do now?'],
  case: ['Whole cases', 'With weather and can: until when, and what mends it?'],
};

type Props = { readonly dealer: Dealer; readonly level: PracticeLevel };

/** Practice without end: what is due comes first, then new boards, each flaw as often as it is met. */
export const Practise = ({ dealer, level: first }: Props) => {
  const [level, setLevel] = useState(first);
  const [deck, setDeck] = useState(() => recall('practice') ?? EMPTY_DECK);
  const [kept, setKept] = useState(true);
  const [onward, setOnward] = useState(false);
  const next = (at: PracticeLevel, after?: string): PracticeKey => {
    let seed = newSeed();
    // The same flaw twice in a row teaches little; now and then chance would have it.
    for (let n = 0; n < 4 && flawOfSeed(dealer.known, at, seed) === after; n++) seed = newSeed();
    const [due] = dueFlaws(deck, at, Date.now(), (flaw) => canDeal(dealer, { level: at, flaw, seed }));
    return { level: at, seed, flaw: due ?? flawOfSeed(dealer.known, at, seed) };
  };
  const [key, setKey] = useState<PracticeKey>(() => next(first));
  const item = useMemo(() => deal(dealer, key), [dealer, key]);
  const waiting = dueFlaws(deck, level, Date.now(), (flaw) => canDeal(dealer, { ...key, flaw })).length;
  const go = (at: PracticeLevel) => {
    setLevel(at);
    setOnward(false);
    setKey(next(at));
    history.replaceState(history.state, '', `#${writeLink({ level: at })}`);
  };
  return (
    <>
      <fieldset class="pick levels">
        <legend>How hard?</legend>
        {PRACTICE_LEVELS.map((one) => (
          <label key={one}>
            <input type="radio" name="level" checked={one === level} onChange={() => go(one)} />
            <span>{LEVEL_WORDS[one][0]}</span>
          </label>
        ))}
        <p>{LEVEL_WORDS[level][1]}</p>
      </fieldset>
      <PracticeItemView
        key={item.id}
        item={item}
        onAnswered={(wrong) => {
          const after = answered(deck, key, wrong === undefined, Date.now());
          setDeck(after);
          setKept(keep('practice', after));
        }}
        onNext={() => {
          setOnward(true);
          setKey(next(level, key.flaw));
        }}
        nextSays="Next board"
        follows={onward ? 'A new board' : undefined}
      />
      <p class="small score">
        {deck.boards
          ? `${counted(deck.boards, 'board')} so far, ${deck.right} of them right at the first tap. ${waiting ? `${counted(waiting, 'flaw')} that you missed or met before will come next.` : 'What you missed comes back.'}`
          : 'One tap answers. What you miss comes back later on another board.'}
        {!kept && ' This browser keeps nothing, so it ends with this page.'}
      </p>
      <DeckFile
        deck={deck}
        onDeck={(merged) => {
          setDeck(merged);
          setKept(keep('practice', merged));
        }}
      />
    </>
  );
};
