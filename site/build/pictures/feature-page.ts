/** A page of the sheet of features, as satori takes it. Sizes are pixels of the page. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import sharp from 'sharp';
import { renderBoard } from '#engine/board/render.ts';
import { BoardRecipe } from '#engine/model/board/recipe.ts';
import { LIGHT } from '../colors.ts';
import type { FeatureSheet, WrittenBoard } from './feature-fields.ts';

const COLUMNS = 3;
const TILE = 560;
const GAP = 28;
const PICTURE = { width: 320, height: 240 } as const;

const require = createRequire(import.meta.url);
const face = (weight: 400 | 700) => ({
  name: 'Sheet',
  weight,
  style: 'normal' as const,
  data: readFileSync(require.resolve(`@fontsource/open-sans/files/open-sans-latin-${weight}-normal.woff`)),
});

type Node = { type: string; props: Record<string, unknown> };
const box = (style: Record<string, unknown>, children?: unknown): Node => ({
  type: 'div',
  props: { style: { display: 'flex', ...style }, ...(children === undefined ? {} : { children }) },
});

/** The picture of a feature: as a flaw shows it, or alone on navy paint where none does. */
const pictureOf = async (kind: string, shown: WrittenBoard | undefined): Promise<string> => {
  const alone = { base: { paint: 'navy' }, features: [{ kind }], alt: 'One feature alone.' };
  const recipe = shown?.recipe ?? BoardRecipe.parse(alone);
  const { data, width, height } = renderBoard(recipe, { light: 'raking', ...PICTURE, scaleBar: true });
  const jpeg = await sharp(Buffer.from(data.buffer), { raw: { width, height, channels: 4 } })
    .jpeg({ quality: 90 })
    .toBuffer();
  return `data:image/jpeg;base64,${jpeg.toString('base64')}`;
};

const tile = async ({ kind, what, fields }: FeatureSheet, shown: WrittenBoard | undefined): Promise<Node> => {
  const src = await pictureOf(kind, shown);
  return box({ flexDirection: 'column', width: TILE, marginBottom: GAP }, [
    { type: 'img', props: { src, ...PICTURE } },
    box({ fontSize: 26, fontWeight: 700, marginTop: 8 }, kind),
    box({ fontSize: 18 }, what),
    box(
      { fontSize: 15, color: LIGHT['ink-soft'], marginBottom: 4 },
      shown ? `shown as in ${shown.file}` : 'shown alone',
    ),
    ...fields.map(({ name, values, usually, what: means }) =>
      box({ flexDirection: 'column', marginTop: 5 }, [
        box({ fontSize: 17 }, [
          box({ fontWeight: 700, marginRight: 8 }, `${name}:`),
          box({ flexShrink: 1 }, `${values}${usually ? `; usually ${usually}` : ''}`),
        ]),
        box({ fontSize: 15, color: LIGHT['ink-soft'], paddingLeft: 14 }, means),
      ]),
    ),
  ]);
};

/** One page as PNG: a title, and for each feature its picture in low light, what it is, its fields, units and bounds. */
export const featurePage = async (
  title: string,
  features: readonly FeatureSheet[],
  shown: (kind: string) => WrittenBoard | undefined,
): Promise<Buffer> => {
  const tiles: Node[] = [];
  for (const feature of features) tiles.push(await tile(feature, shown(feature.kind)));
  const columns = Array.from({ length: COLUMNS }, (_, column) =>
    box(
      { flexDirection: 'column', marginRight: column === COLUMNS - 1 ? 0 : GAP },
      tiles.filter((_tile, index) => index % COLUMNS === column),
    ),
  );
  const { default: satori } = await import('satori');
  const page = box(
    {
      flexDirection: 'column',
      padding: 40,
      backgroundColor: LIGHT.paper,
      color: LIGHT.ink,
      fontFamily: 'Sheet',
    },
    [
      box({ fontSize: 36, fontWeight: 700, marginBottom: 20 }, title),
      box({ alignItems: 'flex-start' }, columns),
    ],
  );
  const width = COLUMNS * TILE + (COLUMNS - 1) * GAP + 80;
  const svg = await satori(page as Parameters<typeof satori>[0], {
    width,
    fonts: [face(400), face(700)],
  });
  return sharp(Buffer.from(svg)).png({ compressionLevel: 6 }).toBuffer();
};
