/**
 * Which flaws show a thing for certain, by the evidence's *Looks*, *Shows* and *Tell apart* lines: no other flaw
 * may claim it with a plain yes, and none of these may deny it with a plain no.
 */

import type { QuestionId } from '#engine/model/ids.ts';
import type { Check } from './checks.ts';

const SHOWN_BY: Readonly<Record<string, readonly string[]>> = {
  'thread-shaped': ['hairs-and-dust', 'cobwebs'],
  'pebbled-all-over': ['orange-peel', 'roller-stipple'],
  'hangs-down': ['runs-and-sags'],
  wrinkled: ['wrinkling', 'wrinkled-oil'],
  cracked: ['cracking', 'shellac-crazing'],
  'comes-off-in-flakes': ['peeling'],
  'still-tacky': ['tacky-film', 'old-shellac', 'sticky-wax', 'sticky-oil'],
  'raised-rim': ['fisheyes', 'spirit-damage'],
  'drew-back': ['fisheyes', 'crawling'],
  'appeared-after-sanding': ['sand-through', 'sanding-scratches', 'witness-lines'],
  'came-after-rubbing': ['shiny-rub-marks', 'witness-lines'],
  'ring-or-object-shape': [
    'white-rings',
    'heat-marks',
    'print-marks',
    'water-spots-in-wax',
    'water-marks-in-oil',
  ],
  'weave-or-print-pattern': ['print-marks', 'prints-in-wax'],
  'feels-like-sandpaper': ['dry-spray', 'raised-grain', 'rough-after-oil'],
  'pinhead-dots': ['rust-specks', 'pinholes'],
  'parallel-ridges': ['brush-marks'],
  'one-tool-wide': ['lap-marks'],
  'reddish-or-drawn-shape': ['stain-bleed'],
  'base-color-in-the-clear': ['color-drag', 'wax-lifts-paint'],
  'only-in-grooves-and-corners': ['pools'],
  'follows-an-edge': ['fat-edges'],
  'round-spots': ['bubbles', 'fisheyes', 'rust-specks', 'pinholes', 'oil-bleed-back'],
  'lines-or-bands': [
    'lap-marks',
    'streaks',
    'brush-marks',
    'shellac-drag',
    'witness-lines',
    'wax-smears',
    'soapy-streaks',
  ],
  'lines-follow-sanding': ['sanding-scratches'],
  'colored-stain': [
    'yellowing',
    'tannin-bleed',
    'stain-bleed',
    'rust-specks',
    'color-drag',
    'dark-wax-blotches',
    'blotchy-oil',
  ],
  'white-or-milky': [
    'cloudy-film',
    'blush',
    'white-rings',
    'heat-marks',
    'wax-bloom',
    'water-spots-in-wax',
    'wax-in-the-grain',
    'frosted-oil',
    'water-marks-in-oil',
  ],
  'wipes-off-damp': ['soapy-streaks'],
  'was-rolled': ['roller-stipple'],
  'water-beads': ['wax-under-finish'],
  'worst-where-thick': ['pools', 'fat-edges', 'runs-and-sags'],
};

export const shownByTheRightFlaws: Check = (known) =>
  Object.entries(SHOWN_BY).flatMap(([question, flaws]) =>
    known.defects.flatMap(({ id, signs }) => {
      const sign = signs[question as QuestionId];
      if (sign === 'yes' && !flaws.includes(id)) return [`${id} claims ${question} for certain`];
      return sign === 'no' && flaws.includes(id) ? [`${id} denies ${question}`] : [];
    }),
  );
