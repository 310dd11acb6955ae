import { useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks';
import { counted } from '../../shared/counted.ts';
import { partIn } from '../../shared/element.ts';
import { copiesLackRoom } from '../../shared/second-copy.ts';
import { forget, recall } from '../../shared/storage.ts';
import { exportAll } from '../files/export.ts';
import { cardsApart } from '../parts/apart.ts';
import { jobsData } from '../parts/data.ts';
import { cardVerdict } from '../parts/verdict.ts';
import { type CardList, countCards, JobsFault, listCards, readAside, readOne } from '../store/index.ts';
import type { Listed } from '../store/listed.ts';
import { REMIND_AFTER, readMarks } from '../store/marks.ts';
import type { SetAside } from '../store/records.ts';
import { CardRow } from './card-row.tsx';
import '../parts/film-look.ts';
import { Act, Adopted } from './controls.tsx';
import { type JobsFrame, useFrame } from './frame.ts';
import { AsideList } from './set-aside.tsx';

/** Rows that are made at once; more come as she scrolls, so that two thousand cards open like twenty. */
const ROWS = 40;
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
  const [list, setList] = useState<CardList>();
  /** What was found, or the beginning of the list. */
  const [found, setFound] = useState<readonly Listed[]>([]);
  const [rows, setRows] = useState(ROWS);
  const [wanted, setWanted] = useState('');
  const [tried, setTried] = useState(false);
  const [broken, setBroken] = useState<ReadonlySet<string>>(new Set());
  /** What may be done now with each piece, by its card. */
  const [nows, setNows] = useState<ReadonlyMap<string, string>>(new Map());
  const [aside, setAside] = useState<readonly SetAside[]>([]);
  const end = useRef<HTMLParagraphElement>(null);

  const read = async () => {
    try {
      const fresh = await listCards();
      setList(fresh);
      setFound(wanted ? await finding(fresh, wanted) : fresh.first);
      setAside(await readAside());
    } finally {
      setTried(true);
    }
  };
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

  const more = async () => {
    if (list && found === list.first && found.length < list.count) setFound(await list.all());
    setRows((count) => count + ROWS);
  };
  const latest = useRef(more);
  latest.current = more;
  useLayoutEffect(() => {
    if (!end.current || !list) return undefined;
    const watch = new IntersectionObserver(
      ([seen]) => seen?.isIntersecting && void latest.current().catch(frame.trouble),
      { rootMargin: '600px' },
    );
    watch.observe(end.current);
    return () => watch.disconnect();
  }, [list !== undefined, rows >= found.length && found === list?.first]);

  const shown = found.slice(0, rows);
  // A damaged card must not look sound in the list until it is opened; one that is sound says what may be done now.
  useLayoutEffect(() => {
    let on = true;
    const look = async () => {
      const data = await jobsData().catch(() => undefined);
      for (const { id } of shown) {
        if (!on) return;
        const one = await readOne(id);
        if (one.kind === 'unreadable') setBroken((before) => new Set([...before, id]));
        else if (
          one.kind === 'card' &&
          data &&
          one.card.coats.length &&
          one.card.handedOverAt === undefined
        ) {
          const { verdict } = cardVerdict(one.card, data, Date.now());
          setNows((before) => new Map([...before, [id, verdict]]));
        }
      }
    };
    const timer = setTimeout(
      () => void look().catch((error) => error instanceof JobsFault || frame.trouble(error)),
      300,
    );
    return () => {
      on = false;
      clearTimeout(timer);
    };
  }, [shown.map(({ id }) => id).join(' ')]);

  const find = async (text: string) => {
    setWanted(text);
    setRows(ROWS);
    if (list) setFound(text.trim() ? await finding(list, text) : list.first);
  };
  const count = list?.count ?? 0;
  const apart = useMemo(() => cardsApart(found), [found]);
  /** Nobody's first card yet: shown is what one is for, and what one looks like. */
  const empty = tried && list !== undefined && !count && !aside.length;
  const example = useMemo(() => exampleIn(frame.host), []);
  return (
    <>
      <p class="lead">
        One card for each piece: what lies on it, what went wrong, what mended it. Kept on this device alone.
      </p>
      <a class="go" href="#new">
        New job card
      </a>
      {count >= FIND_FROM && (
        <div class="fit find">
          <label for="job-find">Find a card by its name</label>
          <input
            type="search"
            id="job-find"
            autocomplete="off"
            onInput={({ currentTarget }) => void find(currentTarget.value).catch(frame.trouble)}
          />
        </div>
      )}
      <p class="small" role="status">
        {wanted.trim() ? `${found.length} of ${count}` : count > FIND_FROM ? `${count} cards` : ''}
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
          {count > 0 && (
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

const finding = async (list: CardList, text: string): Promise<readonly Listed[]> => {
  const wanted = text.trim().toLowerCase();
  return (await list.all()).filter(({ summary }) => summary?.name.toLowerCase().includes(wanted));
};

const bring = async (file: File, frame: JobsFrame, done: () => Promise<void>): Promise<void> => {
  const { previewFile } = await import('../files/import-preview.tsx');
  await previewFile(file, frame, done);
};
