/**
 * Sentences that name one flaw beside facts that speak for others: every way of naming it in every frame of its kind.
 * Invented, all of them. The names were written before the ear's list of them (content/hear/flaws.yaml); half, by hash,
 * were held out while that list grew: nobody read what was missed of these.
 */
import { createHash } from 'node:crypto';

/** `@` stands for the name. */
const ON_FILM = [
  'water based poly over black chalk paint, @',
  '@. waterborne varnish over navy milk paint',
  'oil based poly on the table top last night, @',
  'brushed a second coat of water based lacquer on white doors this morning, 80 % humidity, @',
  'help! @, solvent lacquer sprayed on a stained oak cabinet, it was cold out',
  '@ on the dresser, satin water based poly, three coats in two days',
  'wipe on poly over gray milk paint, 60 F in the garage, @',
  'alkyd varnish over the old finish, 3 days ago, @',
  'third coat of water based poly over red mahogany stain tonight: @',
  'sanded with 220, rolled water based poly over white chalk paint, now @',
];
const ON_OIL = [
  'danish oil on a walnut table two days ago, @',
  '@. tung oil over stain, second coat',
  'hardwax oil on oak, white, cold garage, @',
  'linseed oil on pine last week, @, humid',
  'wiped teak oil on the bench this morning, @',
  '@ on the chair, three coats of danish oil',
  'hard wax oil over a dark stained desk yesterday: @',
  'boiled linseed oil on maple with a rag, 60 F, now @',
  'why @, tung oil, week old',
  'rubbed danish oil on cherry tonight, @',
];
const ON_WAX = [
  'clear wax over black chalk paint, @',
  '@. paste wax over navy milk paint',
  'dark wax on a white chalk painted dresser yesterday, @',
  'soft wax over gray chalk paint, cold garage, @',
  'waxed the table top with beeswax last week, @',
  '@ on the nightstand, two coats of clear wax',
  'furniture wax over shellac this morning, humid, @',
  'brushed wax on a green milk paint chair, now @',
  'why @, clear wax over chalk paint, month old',
  'finishing wax over oak stain tonight: @',
];
const ON_LACQUER = [
  'sprayed nitro lacquer over black paint, @',
  '@. shellac over navy milk paint',
  'nitrocellulose lacquer on white doors this morning, 85 % humidity, @',
  'brushed shellac on an oak desk last night, @',
  'rattle can lacquer on a stained chair, cold, @',
  '@ on the guitar, solvent lacquer, four coats',
  'two pound cut shellac over milk paint, 60 F, @',
  'lacquer over the old finish, 3 days ago, @',
  'third coat of shellac over red stain tonight: @',
  'sanded with 320, sprayed lacquer on maple, now @',
];

const FRAMES = { film: ON_FILM, oil: ON_OIL, wax: ON_WAX, lacquer: ON_LACQUER } as const;

/** What a flaw is called; the first is meant, others that the same words may name are right as well. */
const NAMES: Readonly<Record<keyof typeof FRAMES, readonly (readonly [is: string, ...names: string[]])[]>> = {
  film: [
    [
      'hairs-and-dust',
      'hairs in it',
      'dust in it',
      'cat hair stuck in the finish',
      'lint all over',
      'bristles came off and are in the coat',
      'specks of dirt dried in',
      'a bug landed in it',
      'dust nibs everywhere',
    ],
    [
      'runs-and-sags',
      'runs',
      'drips down the side',
      'sags on the legs',
      'a big run on the front',
      'drip marks',
      'it sagged',
      'curtains on the sides',
    ],
    ['bubbles', 'bubbles all over', 'tiny air bubbles', 'dried foam', 'it bubbled', 'little blisters of air'],
    ['brush-marks', 'brush marks', 'brush strokes show', 'bristle lines', 'ridges from the brush'],
    [
      'orange-peel',
      'orange peel',
      'orange peel everywhere',
      'it looks like the skin of an orange',
      'bumpy like an orange',
    ],
    ['fisheyes', 'fisheyes', 'fish eyes', 'craters like fish eyes', 'little craters', 'round dimples'],
    ['pinholes', 'pinholes', 'pin holes all over', 'tiny holes like from a pin'],
    ['lap-marks', 'lap marks', 'overlap lines', 'lap lines show'],
    ['missed-spots', 'missed spots', 'I missed a spot', 'holidays in it', 'places I skipped'],
    ['wrinkling', 'wrinkles', 'it wrinkled up', 'it crinkled like crepe', 'it lifted and wrinkled'],
    ['cracking', 'cracks', 'it cracked all over', 'hairline cracks', 'crackled'],
    ['peeling', 'peeling', 'it flakes off', 'it peels off in sheets', 'chipping off', 'it is delaminating'],
    ['cloudy-film,blush', 'it went cloudy', 'milky', 'hazy', 'foggy look'],
    ['yellowing', 'it turned yellow', 'yellowing', 'it yellowed'],
    ['tannin-bleed,stain-bleed', 'tannin bleed', 'tannins bled through', 'knots bleed through'],
    ['raised-grain', 'raised grain', 'the grain raised', 'grain stands up fuzzy'],
    ['roller-stipple', 'roller stipple', 'roller texture', 'stipple from the roller'],
    ['soft-film', 'it dents with a fingernail', 'it scratches too easily', 'soft finish'],
    ['tacky-film', 'sticky', 'tacky', 'it never dried'],
    ['white-rings', 'white ring from a glass', 'water rings', 'white water marks'],
    ['heat-marks', 'heat mark from a hot pan', 'white mark from a hot plate'],
    ['print-marks', 'imprint of a cloth', 'fingerprints in it', 'cat paw prints', 'a lamp stuck to it'],
    ['sanding-scratches', 'sanding scratches', 'swirl marks', 'pigtails'],
    ['sand-through', 'sanded through the edge', 'burned through with the sander', 'sand through'],
    ['witness-lines', 'witness lines'],
    ['streaks', 'streaks', 'streaky'],
    ['patchy-sheen,dull-spots,lap-marks', 'patchy sheen', 'uneven gloss', 'shiny and dull patches'],
    ['dull-spots,patchy-sheen,missed-spots', 'dull spots', 'dead flat spots'],
    ['crawling,fisheyes', 'it crawled', 'it beads up', 'pulls away like water on wax'],
    ['dry-spray', 'dry spray', 'overspray'],
    ['rust-specks', 'rust specks', 'rust from steel wool'],
    ['pools', 'puddles in the corners', 'it pooled in the grooves'],
    ['fat-edges', 'fat edges', 'thick bead along the edge'],
    ['color-drag', 'paint color dragged into the clear', 'the brush picked up the color'],
    ['shiny-rub-marks', 'shiny rub marks', 'burnished spots'],
  ],
  oil: [
    ['sticky-oil', 'sticky', 'it stays tacky', 'gummy'],
    ['wrinkled-oil', 'wrinkles', 'wrinkled skin'],
    ['oil-bleed-back', 'oil bleeds back out of the pores', 'little beads of oil'],
    ['rough-after-oil', 'rough', 'it feels furry'],
    ['dry-patches-in-oil', 'dry patches', 'thirsty spots'],
    ['blotchy-oil', 'blotchy', 'blotches'],
    ['lingering-smell', 'the smell stays', 'it still stinks'],
    ['water-marks-in-oil', 'water marks', 'water spots'],
  ],
  wax: [
    ['sticky-wax', 'sticky', 'it stays tacky'],
    ['wax-smears', 'smears', 'smeary'],
    ['wax-bloom', 'white haze', 'white bloom'],
    ['wax-in-the-grain', 'white wax in the corners', 'wax stuck in the grain'],
    ['wax-lifts-paint', 'paint comes off on the cloth', 'paint rubs off on the rag'],
    ['patchy-wax', 'shiny and dull patches', 'patchy shine'],
    ['wax-will-not-buff', 'it will not buff', 'no shine when I buff'],
    ['prints-in-wax', 'fingerprints', 'hand prints'],
    ['water-spots-in-wax', 'water spots', 'drops left spots'],
  ],
  lacquer: [
    ['blush', 'blush', 'it blushed', 'blushing'],
    ['runs-and-sags', 'runs', 'a sag'],
    ['orange-peel', 'orange peel', 'peel like an orange'],
    ['hairs-and-dust', 'hairs in it', 'dust in it', 'dust nibs'],
    ['fisheyes', 'fisheyes', 'craters'],
    ['wrinkling,cracking', 'wrinkles', 'it crinkled and lifted'],
    ['bubbles', 'bubbles', 'solvent pop'],
  ],
};

/** Where flaws of one look stand for each other by the kind of finish. */
const KIN: Readonly<Record<string, readonly string[]>> = {
  'brush-marks': ['shellac-drag'],
  cracking: ['shellac-crazing'],
  'tacky-film': ['old-shellac'],
  'cloudy-film': ['blush'],
  'lap-marks': ['shellac-drag'],
};

export type Cell = {
  readonly text: string;
  readonly name: string;
  readonly is: readonly string[];
  readonly heldOut: boolean;
};

const isHeldOut = (name: string): boolean =>
  Number.parseInt(createHash('sha1').update(name).digest('hex').slice(0, 1), 16) % 2 === 1;

export const CELLS: readonly Cell[] = (Object.keys(FRAMES) as (keyof typeof FRAMES)[]).flatMap((kind) =>
  NAMES[kind].flatMap(([is, ...names]) =>
    names.flatMap((name) =>
      FRAMES[kind].map((frame) => {
        const right = is.split(',');
        return {
          text: frame.replace('@', name),
          name,
          is: [...right, ...right.flatMap((one) => KIN[one] ?? [])],
          heldOut: isHeldOut(name),
        };
      }),
    ),
  ),
);
