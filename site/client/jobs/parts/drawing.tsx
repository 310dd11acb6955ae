import { withFilmIn } from '#engine/calc/say-film.ts';
import { layersOf, sectionOf } from '#engine/jobs.ts';
import type { JobCard } from '#engine/model/job-card.ts';
import { lower } from '#engine/plain/text.ts';
import { clockWords } from '../../../shared/clock-words.ts';
import { sourceUrl } from '../../../shared/urls.ts';
import { plainId } from '../../shared/plain-id.ts';
import type { JobsData } from './data.ts';
import './film-look.ts';

/** Room beside the film for the warning's line. */
const PAD = 2;
/** Height of a line of writing. */
const LETTER = 17;

/** The base, and above it each coat, as high as its line is read at arm's length; many share the room of a few. */
const BASE = 60;
const COAT = 42;
const MOST_ROOM = 240;
const sizeOf = (coats: number) => {
  const height = Math.min(MOST_ROOM, BASE + coats * COAT);
  return { width: 320, height, base: BASE / height, least: 22 };
};

type Props = { readonly card: JobCard; readonly data: JobsData; readonly us: boolean };

/** The film as a drawn section with what it allows, in words that tell the same as the drawing. */
export const FilmSection = ({ card, data, us }: Props) => {
  const units = us ? 'us' : 'metric';
  const layers = layersOf(card, data.products);
  const bare = !layers.layers.length;
  const { width, height, rects, warn, inProportion, advice, says } = sectionOf(
    card,
    layers,
    { ...data, words: clockWords },
    sizeOf(layers.layers.length),
    units,
  );
  return (
    <section class="layers">
      <h2>The film</h2>
      <svg
        class="film"
        viewBox={`${-PAD} ${-PAD} ${width + 2 * PAD} ${height + 2 * PAD}`}
        role="img"
        aria-label={`Section of the film. ${says}`}
      >
        {rects.map(({ kind, x, y, width: wide, height: tall, label, known }) => (
          <g key={`${kind} ${y}`}>
            <rect
              class={kind === 'base' ? `base ${card.tone}` : known ? 'coat' : 'coat unknown'}
              x={x}
              y={y}
              width={wide}
              height={tall}
            />
            <text class={kind} x={x + 10} y={y + tall / 2 + 5.5}>
              {label}
            </text>
          </g>
        ))}
        {warn && (
          <>
            <path class="warn" d={`M0 ${warn.y}h${width}`} />
            <text
              class="warn"
              x={width - 8}
              y={warn.y < LETTER ? warn.y + LETTER : warn.y - 5}
              text-anchor="end"
            >
              {warn.says}
            </text>
          </>
        )}
      </svg>
      <p>{bare ? clockWords.film.none : says}</p>
      {!inProportion && <p class="small">A thin coat is drawn thicker than it is, so that it can be seen.</p>}
      <p class="advice">
        {withFilmIn(advice.says, units)}
        <span class="small">
          {advice.grounds
            .flatMap(({ source }) => source ?? [])
            .map((source, index) => (
              <>
                {index ? ', ' : ' From: '}
                <a href={sourceUrl(source)}>{lower(data.sources[source] ?? plainId(source))}</a>
              </>
            ))}
        </span>
      </p>
    </section>
  );
};
