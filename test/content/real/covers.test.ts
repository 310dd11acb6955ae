/** Every flaw of the two registers that the knowledge was written from has a page, its own or a named merge. */
import { describe, expect, it } from 'vitest';
import { known } from './knowledge.ts';

const FILM =
  'wet-milky-cast cloudy-flatting cloudy-trapped-water blushing incompatible-haze sanding-scratches bubbles-foam damp-applicator-bubbles pinholes outgassing-pop craters-fisheyes wax-under-finish crawling-beading dust-nibs hair-static lint-applicator foam-breakdown can-bits runs-sags-drips pooling-details fat-edges ambering tannin-knot-bleed dye-ink-smoke-bleed lap-marks brush-marks roller-stipple orange-peel flashing dull-spots burnished-spots holidays streaks dry-spray raised-grain tacky-never-dries wrinkling-lifting cracking-crazing peeling-delamination sand-through witness-lines print-blocking white-water-rings heat-marks soft-easily-scratched colour-drag telegraphing surfactant-bloom rust-specks oil-bleed-back product-gone-off'.split(
    ' ',
  );
const WAX =
  'wax-streaks-smears wax-cloudy-bloom wax-sticky-not-hardening wax-patchy-sheen wax-will-not-buff wax-white-in-grain wax-fingerprints wax-dark-blotches wax-under-film-failure wax-water-spots wax-lifts-paint oil-bleed-back oil-sticky-gummy oil-dull-dry-patches oil-blotching oil-rough-grain oil-smell-lingers oil-wrinkles oil-tung-frosting oil-water-marks shellac-blush shellac-white-rings shellac-crazing shellac-will-not-dry shellac-drag-lap-marks shellac-alcohol-damage padding-sticks-curdles padding-oil-sweat lacquer-blush lacquer-orange-peel lacquer-cobwebbing lacquer-dry-spray lacquer-solvent-pop lacquer-fisheyes lacquer-lifting-wrinkling lacquer-runs-sags lacquer-cold-check lacquer-print-plasticiser waterlacquer-milky-foam aerosol-stripes-spatter'.split(
    ' ',
  );
const REGISTERS = [...FILM.map((id) => `film/${id}`), ...WAX.map((id) => `wax/${id}`)];

describe('the catalogue', () => {
  it('answers for all 51 film flaws and all 40 of wax, oil, shellac and lacquer', () => {
    expect([FILM.length, WAX.length]).toEqual([51, 40]);
    const covered = known.defects.flatMap((defect) => defect.covers);
    expect(REGISTERS.filter((id) => !covered.includes(id))).toEqual([]);
  });

  it('names no flaw twice', () => {
    const covered = known.defects.flatMap((defect) => defect.covers);
    expect(covered.filter((id, index) => covered.indexOf(id) !== index)).toEqual([]);
  });
});
