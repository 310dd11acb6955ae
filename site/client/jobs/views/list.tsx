import { useLayoutEffect, useMemo, useRef } from 'preact/hooks';
import { counted } from '../../shared/counted.ts';
import { partIn } from '../../shared/element.ts';
import { copiesLackRoom } from '../../shared/second-copy.ts';
import { forget, recall } from '../../shared/storage.ts';
import { exportAll } from '../files/export.ts';
import { cardsApart } from '../parts/apart.ts';
import { countCards } from '../store/index.ts';
import { REMIND_AFTER, readMarks } from '../store/marks.ts';
import { CardRow } from './card-row.tsx';
import '../parts/film-look.ts';
import { Act, Adopted } from './controls.tsx';
import { type JobsFrame, useFrame } from './frame.ts';
import { useCardList } from './list-state.ts';
import { AsideList } from './set-aside.tsx';
import { useVerdicts } from './use-verdicts.ts';

/** From here on there is a field to find a card by its name. */
const FIND_FROM = 8;
const saveAll = async (photos: boolean, say: JobsFrame['say']): Promise<void> => {
  const { cards, unreadable } = await exportAll(photos);
  say(
    `Handed to your downloads: ${counted(cards, 'card')}.${unreadable ? ` What could not be read is in a second file, as it lies here (${unreadable}).` : ''}`,
  );
};

/** What is worth saying once the list stands: cards that were lost, or come back; and changes that no file holds. */
const lookAfter = async (say: JobsFrame['say']): Promise<void> => {
  const before = readMarks();
  const cards = await countCards();
  const back = recall('cards-back');
  if (back) {
    forget('cards-back');
    const lost = back.photosLost ? `, without ${counted(back.photosLost, 'photo')} that had no copy` : '';
    say(
      `This browser had lost its store; ${counted(back.cards, 'card')} ${back.cards === 1 ? 'was' : 'were'} put back from the second copy${lost}. Look whether all is there, and save all as a file.`,
    );
  } else if (!cards && before.cards)
    say(
      `This browser held ${counted(before.cards, 'card')}, and they are gone: its storage was cleared. If you saved them as a file, bring it in below.`,
    );
  else if (cards && copiesLackRoom())
    say(
      <>
        The storage of this browser has no room for a second copy of all cards and photos.{' '}
        <Act class="plain" act={() => saveAll(true, say)}>
          Save all as a file
        </Act>
      </>,
    );
  else if (cards && before.changes >= REMIND_AFTER)
    say(
      <>
        {before.changes} changes are in no file yet. A lost phone takes them along.{' '}
        <Act class="plain" act={() => saveAll(true, say)}>
          Save all as a file
        </Act>
      </>,
    );
};

/** All cards of this browser, the last changed on top. */
export const ListView = () => {
  const frame = useFrame();
  const { count, found, shown, wanted, find, more, aside, tried, read } = useCardList(frame.trouble);
  const { broken, nows } = useVerdicts(shown, frame.trouble);
  const end = useRef<HTMLParagraphElement>(null);

  useLayoutEffect(() => {
    frame.title('Job cards');
    read()
      .then(() => {
        frame.shown();
        return lookAfter(frame.say);
      })
      .catch(frame.trouble);
    frame.onOthers(() => void read().catch(frame.trouble));
  }, []);

  useLayoutEffect(() => {
    if (!end.current || count === undefined) return undefined;
    const watch = new IntersectionObserver(([seen]) => seen?.isIntersecting && more(), {
      rootMargin: '600px',
    });
    watch.observe(end.current);
    return () => watch.disconnect();
    // Anew once rows wait again: an end that stays in sight is told no second time.
  }, [count === undefined, shown.length < found.length]);

  const cards = count ?? 0;
  const apart = useMemo(() => cardsApart(found), [found]);
  /** Nobody's first card yet: shown is what one is for, and what one looks like. */
  const empty = tried && count === 0 && !aside.length;
  const example = useMemo(() => exampleIn(frame.host), []);
  return (
    <>
      <p class="lead">
        One card for each piece: what lies on it, what went wrong, what mended it. Kept on this device alone.
      </p>
      <a class="go" href="#new">
        New job card
      </a>
      {cards >= FIND_FROM && (
        <div class="fit find">
          <label for="job-find">Find a card by its name</label>
          <input
            type="search"
            id="job-find"
            autocomplete="off"
            onInput={({ currentTarget }) => find(currentTarget.value)}
          />
        </div>
      )}
      <p class="small" role="status">
        {wanted.trim() ? `${found.length} of ${cards}` : cards > FIND_FROM ? `${cards} cards` : ''}
      </p>
      <ul class="cards">
        {shown.map((listed) => (
          <CardRow
            key={listed.id}
            listed={listed}
            broken={broken.has(listed.id)}
            now={nows.get(listed.id)}
            apart={apart.get(listed.id)}
          />
        ))}
      </ul>
      <p class="end" ref={end} />
      {empty && example && <Adopted element={example} />}
      {empty && (
        <ul class="gains">
          <li>The clock, the sanding and every repair then know your piece.</li>
          <li>A photo of today stands beside one of next week.</li>
          <li>At the end it writes the care card for the buyer.</li>
        </ul>
      )}
      <AsideList all={aside} again={read} />
      {tried && (
        <section class="acts">
          {cards > 0 && (
            <>
              <Act act={() => saveAll(true, frame.say)}>Save all as a file, with photos</Act>
              <Act act={() => saveAll(false, frame.say)}>Save all as a file, without photos</Act>
            </>
          )}
          <label class="quiet file">
            Bring cards in from a file
            <input
              type="file"
              accept=".json,application/json"
              class="unseen"
              onChange={({ currentTarget }) => {
                const [file] = currentTarget.files ?? [];
                if (file) void bring(file, frame, read).catch(frame.trouble);
                currentTarget.value = '';
              }}
            />
          </label>
        </section>
      )}
    </>
  );
};

/** A copy of the example that the page brought with it. */
const exampleIn = (host: HTMLElement): HTMLElement | undefined => {
  const kept = partIn(host, 'example');
  const copy =
    kept instanceof HTMLTemplateElement ? kept.content.firstElementChild?.cloneNode(true) : undefined;
  return copy instanceof HTMLElement ? copy : undefined;
};

const bring = async (file: File, frame: JobsFrame, done: () => Promise<void>): Promise<void> => {
  const { previewFile } = await import('../files/import-preview.tsx');
  await previewFile(file, frame, done);
};
