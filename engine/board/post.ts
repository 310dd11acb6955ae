import type { BoardRecipe } from '../model/board.ts';
import type { LightChoice } from './light.ts';
import type { Pixels } from './pixels.ts';
import { renderBoard } from './render.ts';
import { drawScaleBar } from './scale-bar.ts';

/** Sizes that posts are shown in, pixels (common practice, no source). */
const POST_SIZE = {
  square: { width: 1080, height: 1080 },
  upright: { width: 1080, height: 1350 },
  wide: { width: 1200, height: 628 },
} as const;
export type PostShape = keyof typeof POST_SIZE;

/** A place in the picture, pixels from its top left corner. */
export type PostPlace = { left: number; top: number; width: number; height: number };

/** One board in one light; `wet` shows it as it looks while the film is wet. */
export type PostView = { recipe: BoardRecipe; light: LightChoice; wet?: boolean };

/** Where everything lies, and the size of it all. */
export type PostPlaces = {
  width: number;
  height: number;
  /** Where each board lies, for a word in its corner ("Wet", "Low light"). */
  boards: readonly PostPlace[];
  /** Where the line of text and the short link go. */
  line: PostPlace;
  link: PostPlace;
};

const PAPER = [248, 247, 244, 255] as const;
const MARGIN = 36;
/** Share of the height that the words take, and how much of that is the link's. */
const WORDS = 0.2;
const LINK = 0.34;
/** A board is drawn four to three. */
const SHAPE = 4 / 3;

/** How much of a 4:3 board a place shows that it fills, 0–1. */
const shown = ({ width, height }: PostPlace): number => {
  const shape = width / height;
  return shape > SHAPE ? SHAPE / shape : shape / SHAPE;
};

const split = (area: PostPlace, count: number, beside: boolean): PostPlace[] =>
  Array.from({ length: count }, (_, n) => {
    const gap = MARGIN / 2;
    const width = beside ? Math.floor((area.width - gap * (count - 1)) / count) : area.width;
    const height = beside ? area.height : Math.floor((area.height - gap * (count - 1)) / count);
    return {
      left: area.left + (beside ? n * (width + gap) : 0),
      top: area.top + (beside ? 0 : n * (height + gap)),
      width,
      height,
    };
  });

/** Draws a board so large that it fills the place, and cuts off what stands over on either side. */
const fill = ({ recipe, light, wet }: PostView, place: PostPlace): Pixels => {
  const width = Math.max(place.width, Math.ceil(place.height * SHAPE));
  const height = Math.max(place.height, Math.ceil(place.width / SHAPE));
  const whole = renderBoard(wet === undefined ? recipe : { ...recipe, wet }, { light, width, height });
  const cut = {
    width: place.width,
    height: place.height,
    data: new Uint8ClampedArray(place.width * place.height * 4),
  };
  const left = (width - place.width) >> 1;
  const top = (height - place.height) >> 1;
  for (let row = 0; row < place.height; row++) {
    const from = ((row + top) * width + left) * 4;
    cut.data.set(whole.data.subarray(from, from + place.width * 4), row * place.width * 4);
  }
  drawScaleBar(cut, (recipe['width-mm'] * place.width) / width);
  return cut;
};

/** Lays one board or two, above or beside each other so that most of each is seen, and the words below them. */
export const postPlaces = (shape: PostShape, count: 1 | 2): PostPlaces => {
  const { width, height } = POST_SIZE[shape];
  const words = Math.round(height * WORDS);
  const area = {
    left: MARGIN,
    top: MARGIN,
    width: width - 2 * MARGIN,
    height: height - words - 1.5 * MARGIN,
  };
  const [across, down] = [split(area, count, true), split(area, count, false)];
  const link = Math.round(words * LINK);
  return {
    width,
    height,
    boards: shown(across[0]!) > shown(down[0]!) ? across : down,
    line: { left: MARGIN, top: height - words, width: area.width, height: words - link },
    link: { left: MARGIN, top: height - link, width: area.width, height: link },
  };
};

/**
 * Draws one board, or a pair (wet and dry, two lights, two look-alikes), into the size of a post on plain paper.
 * The words are left to whoever has letters: `postPlaces` tells where they go.
 */
export const drawPost = (
  shape: PostShape,
  views: readonly [PostView] | readonly [PostView, PostView],
): Pixels => {
  const { width, height, boards } = postPlaces(shape, views.length);
  const data = new Uint8ClampedArray(width * height * 4);
  // One pixel of paper, then as much again each time.
  data.set(PAPER);
  for (let done = 4; done < data.length; done *= 2) data.copyWithin(done, 0, done);
  views.forEach((view, n) => {
    const place = boards[n]!;
    const board = fill(view, place);
    for (let row = 0; row < place.height; row++)
      data.set(
        board.data.subarray(row * place.width * 4, (row + 1) * place.width * 4),
        ((place.top + row) * width + place.left) * 4,
      );
  });
  return { width, height, data };
};
