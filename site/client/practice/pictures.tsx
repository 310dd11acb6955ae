import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { signOf } from '#engine/knowledge/sign.ts';
import type { BoardRecipe } from '#engine/model/board.ts';
import { isKeyOf, keysOf } from '#engine/plain/entry-of.ts';
import { shortUrl } from '../../shared/urls.ts';
import { saveBlob } from '../shared/save-file.ts';
import { Choice } from './choice.tsx';
import { FlawOptions } from './flaw-options.tsx';
import type { Dealer } from './load.ts';
import { drawPost, faceCame, POST_SIZES, type Post, type PostPicture, type PostSize } from './post.ts';
import { LongTextLine } from './text-line.tsx';

const LONGEST_LINE = 110;

/** What can be put into a post: a board, two lights, wet and dry, or a flaw beside one that it is mistaken for. */
const choicesOf = (
  { known }: Dealer,
  id: string,
): readonly { says: string; line: string; pictures: readonly PostPicture[] }[] => {
  const flaw = known.get('defect', id);
  const [first] = flaw.boards;
  if (!first) return [];
  const plain = (recipe: BoardRecipe, label = ''): PostPicture => ({ recipe, light: 'raking', label });
  const wet = flaw.boards.find((board) => board.wet) ?? { ...first, wet: true };
  const freshFlaw = signOf(flaw, 'there-while-coating') !== 'no' && signOf(flaw, 'came-in-use') !== 'yes';
  return [
    {
      says: 'Two lights',
      line: `${flaw.name}, in two lights. Which one shows it?`,
      pictures: [plain(first, 'Low light'), { recipe: first, light: 'facing', label: 'Facing you' }],
    },
    ...(freshFlaw
      ? [
          {
            says: 'Wet and dry',
            line: `${flaw.name}: wet, then dry. Hands off in between.`,
            pictures: [plain(wet, 'Wet'), plain(first, 'Dry')],
          },
        ]
      : []),
    ...flaw.boards.map((board, index) => ({
      says: `Board ${index + 1}`,
      line: `${flaw.name}. Touch it, or not yet?`,
      pictures: [plain(board)],
    })),
    ...flaw['look-alikes'].flatMap((other) => {
      const twin = known.get('defect', other);
      const [board] = twin.boards;
      return board
        ? [
            {
              says: `Beside ${twin.name.toLowerCase()}`,
              line: `${flaw.name}, or ${twin.name.toLowerCase()}?`,
              pictures: [
                plain(first, flaw.name),
                plain({ ...board, 'width-mm': first['width-mm'] }, twin.name),
              ],
            },
          ]
        : [];
    }),
  ];
};

/** A board or a pair as a picture to save, with its line and its short link. Drawn here; nothing is sent. */
export const PicturesPage = ({ dealer }: { readonly dealer: Dealer }) => {
  const wanted = new URLSearchParams(location.hash.slice(1)).get('flaw') ?? '';
  const [flaw, setFlaw] = useState(dealer.known.has('defect', wanted) ? wanted : 'cloudy-film');
  const [which, setWhich] = useState(0);
  const [size, setSize] = useState<PostSize>('square');
  const [own, setOwn] = useState<string | undefined>(undefined);
  const [said, setSaid] = useState('');
  const canvas = useRef<HTMLCanvasElement>(null);
  const choices = useMemo(() => choicesOf(dealer, flaw), [dealer, flaw]);
  const choice = choices[Math.min(which, choices.length - 1)];
  const line = own ?? choice?.line ?? '';
  const link = new URL(shortUrl(flaw), location.origin).href.replace(/^https?:\/\//, '');
  useEffect(() => {
    if (!choice || !canvas.current) return;
    const post: Post = { size, pictures: choice.pictures, line, link, colors: dealer.colors };
    const on = canvas.current;
    // Typing goes first: the picture follows when the hand rests.
    let current = true;
    const timer = setTimeout(async () => {
      await faceCame();
      if (current) drawPost(on, post);
    }, 250);
    return () => {
      current = false;
      clearTimeout(timer);
    };
  }, [choice, size, line, link]);
  const save = () =>
    canvas.current?.toBlob((blob) => {
      if (!blob) return setSaid('This browser cannot make the picture.');
      saveBlob(`${flaw}-${size}.png`, blob);
      setSaid('Saved.');
    }, 'image/png');
  return (
    <div class="post-maker">
      <form class="choose" onSubmit={(event) => event.preventDefault()}>
        <Choice
          label="Flaw"
          value={flaw}
          choose={(id) => {
            setFlaw(id);
            setWhich(0);
            setOwn(undefined);
            history.replaceState(history.state, '', `#flaw=${id}`);
          }}
        >
          <FlawOptions of={dealer} />
        </Choice>
        <Choice
          label="What is on it"
          value={String(which)}
          choose={(index) => {
            setWhich(Number(index));
            setOwn(undefined);
          }}
          of={choices.map(({ says }, index) => [String(index), says])}
        />
        <Choice
          label="Size"
          value={size}
          choose={(name) => isKeyOf(POST_SIZES, name) && setSize(name)}
          of={keysOf(POST_SIZES).map((name) => [name, POST_SIZES[name].says])}
        />
        <LongTextLine label="Line of text" most={LONGEST_LINE} value={line} type={setOwn} />
      </form>
      <div class="preview">
        <canvas
          ref={canvas}
          // As it will be once it is drawn, so that nothing below it moves.
          width={POST_SIZES[size].width}
          height={POST_SIZES[size].height}
          role="img"
          aria-label={`${line} ${
            choice?.pictures
              .map(({ label }) => label)
              .filter(Boolean)
              .join(' and ') ?? ''
          }. ${link}`}
        />
        <button type="button" class="go" onClick={save}>
          Save the picture
        </button>
        <p role="status">{said}</p>
      </div>
    </div>
  );
};
