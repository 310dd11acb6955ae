/**
 * The questions that the engine knows by name: what hangs on their answers is more than knowledge of one flaw. Each is a
 * question of the content, so that none of them is merged or retired unnoticed (`test/engine/knowledge/known-questions.test.ts`).
 */
export const ASKED = {
  afterSomethingHot: 'after-something-hot',
  afterSomethingWet: 'after-something-wet',
  appearedAfterSanding: 'appeared-after-sanding',
  bareWoodShows: 'bare-wood-shows',
  cameAfterRubbing: 'came-after-rubbing',
  cameInUse: 'came-in-use',
  comesOffInFlakes: 'comes-off-in-flakes',
  filmIsWeak: 'film-is-weak',
  fineWhenFirstDry: 'fine-when-first-dry',
  firstCoatOnBareWood: 'first-coat-on-bare-wood',
  plasticOrRubberStoodThere: 'plastic-or-rubber-stood-there',
  spiritOrCleanerOnIt: 'spirit-or-cleaner-on-it',
  stillTacky: 'still-tacky',
  thereWhileCoating: 'there-while-coating',
  tinListsOil: 'tin-lists-oil',
  wasSprayed: 'was-sprayed',
} as const;
