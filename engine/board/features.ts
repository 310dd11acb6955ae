import type { BoardFeature, FeatureKind, FeatureOf } from '../model/board.ts';
import { ambering } from './features/ambering.ts';
import { bleed } from './features/bleed.ts';
import { blush } from './features/blush.ts';
import { brushMarks } from './features/brush-marks.ts';
import { bubbles } from './features/bubbles.ts';
import { burnish } from './features/burnish.ts';
import { clouds } from './features/clouds.ts';
import { cobwebs } from './features/cobwebs.ts';
import { colorDrag } from './features/color-drag.ts';
import { cracks } from './features/cracks.ts';
import { craters } from './features/craters.ts';
import { crawling } from './features/crawling.ts';
import { crumbs } from './features/crumbs.ts';
import { darkBlotch } from './features/dark-blotch.ts';
import { drag } from './features/drag.ts';
import { drop } from './features/drop.ts';
import { drySpray } from './features/dry-spray.ts';
import { dullSpot } from './features/dull-spot.ts';
import { fatEdge } from './features/fat-edge.ts';
import { fibers } from './features/fibers.ts';
import { frosting } from './features/frosting.ts';
import { gel } from './features/gel.ts';
import { hair } from './features/hair.ts';
import { haze } from './features/haze.ts';
import { heatMark } from './features/heat-mark.ts';
import { holiday } from './features/holiday.ts';
import { lap } from './features/lap.ts';
import { milky } from './features/milky.ts';
import { nibs } from './features/nibs.ts';
import { oilBeads } from './features/oil-beads.ts';
import { oilPools } from './features/oil-pools.ts';
import { orangePeel } from './features/orange-peel.ts';
import { peel } from './features/peel.ts';
import { pinholes } from './features/pinholes.ts';
import { pool } from './features/pool.ts';
import { print } from './features/print.ts';
import { raisedGrain } from './features/raised-grain.ts';
import { runs } from './features/runs.ts';
import { rust } from './features/rust.ts';
import { sandThrough } from './features/sand-through.ts';
import { scratches } from './features/scratches.ts';
import { sheenPatches } from './features/sheen-patches.ts';
import { soapyStreaks } from './features/soapy-streaks.ts';
import { spatter } from './features/spatter.ts';
import { specks } from './features/specks.ts';
import { sprayBands } from './features/spray-bands.ts';
import { stipple } from './features/stipple.ts';
import { streaks } from './features/streaks.ts';
import { swipe } from './features/swipe.ts';
import { telegraphing } from './features/telegraphing.ts';
import { waxBloom } from './features/wax-bloom.ts';
import { waxInGrain } from './features/wax-in-grain.ts';
import { waxSmear } from './features/wax-smear.ts';
import { whiteRing } from './features/white-ring.ts';
import { witnessLines } from './features/witness-lines.ts';
import { wrinkles } from './features/wrinkles.ts';
import type { Board } from './field.ts';
import type { Steps } from './steps.ts';

type Drawn<K extends FeatureKind, Gives> = (board: Board, feature: FeatureOf<K>, from: number) => Gives;
/** Most are drawn in one go. */
type Draw<K extends FeatureKind> = Drawn<K, void> | Drawn<K, Steps>;

const DRAW: { readonly [K in FeatureKind]: Draw<K> } = {
  none: () => undefined,
  haze,
  milky,
  clouds,
  blush,
  specks,
  'wax-bloom': waxBloom,
  frosting,
  'white-ring': whiteRing,
  'heat-mark': heatMark,
  'wax-smear': waxSmear,
  swipe,
  'wax-in-grain': waxInGrain,
  ambering,
  bleed,
  'dark-blotch': darkBlotch,
  'color-drag': colorDrag,
  'oil-pools': oilPools,
  rust,
  'soapy-streaks': soapyStreaks,
  'sand-through': sandThrough,
  bubbles,
  pinholes,
  craters,
  crawling,
  runs,
  pool,
  'fat-edge': fatEdge,
  'brush-marks': brushMarks,
  stipple,
  'orange-peel': orangePeel,
  'raised-grain': raisedGrain,
  wrinkles,
  cracks,
  telegraphing,
  print,
  drag,
  lap,
  'spray-bands': sprayBands,
  'sheen-patches': sheenPatches,
  'dull-spot': dullSpot,
  burnish,
  holiday,
  streaks,
  scratches,
  'witness-lines': witnessLines,
  peel,
  nibs,
  hair,
  fibers,
  crumbs,
  gel,
  'oil-beads': oilBeads,
  'dry-spray': drySpray,
  spatter,
  cobwebs,
  drop,
};

/** Writes a feature into the maps of a board, in steps where it takes long; `from` starts its random numbers. */
export function* apply<K extends FeatureKind>(
  board: Board,
  feature: FeatureOf<K> & BoardFeature,
  from: number,
): Steps {
  const steps = (DRAW[feature.kind] as Draw<K>)(board, feature, from);
  if (steps) yield* steps;
}
