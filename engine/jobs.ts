/**
 * The job cards: one piece from plan to hand-over. Pure: ids and times (epoch milliseconds) come in, cards go out as
 * new values. Cards from storage or a file are checked behind `engine/model/read-card.ts`, which brings the schemas.
 */
export type { SandRisk } from './fitness/film-risk.ts';
export { adviceOf, type FilmAdvice } from './jobs/advice.ts';
export {
  type CardChange,
  type CardStart,
  changed,
  newCard,
  putBack,
  withCoat,
  withFlaw,
  withoutCoat,
  withoutFlaw,
  withoutPhoto,
  withoutRepair,
  withPhoto,
  withRepair,
} from './jobs/card.ts';
export { type CareCard, type CareLine, careOf } from './jobs/care.ts';
export { type CareDates, type DatePlan, datesOfCard } from './jobs/care-dates.ts';
export { coatsInOrder, laidCoatOf } from './jobs/coat.ts';
export { factsOfCard } from './jobs/facts.ts';
export { filmBelow, type Layer, type Layers, layersOf, type Products } from './jobs/layers.ts';
export { layingOfCard } from './jobs/laying.ts';
export { anotherLike } from './jobs/like.ts';
export { mergeCards, mergeShelves, type Shelf } from './jobs/merge.ts';
export { flawOver, openFlaw } from './jobs/open-flaw.ts';
export {
  type CoatOfRepair,
  coatOfRepair,
  coatOwed,
  isSameFlaw,
  type Lays,
  productOfRepair,
  withoutItsCoat,
} from './jobs/open-work.ts';
export { type Passed, passedBy } from './jobs/place.ts';
export { type ImportRow, previewImport, previewShelves } from './jobs/preview.ts';
export { cardsRemoved } from './jobs/removed.ts';
export { fitting, type Room, roomOf } from './jobs/room.ts';
export { sayLayer, sayLayers } from './jobs/say-layers.ts';
export {
  type Section,
  type SectionRect,
  type SectionSize,
  type SectionTables,
  sectionOf,
} from './jobs/section.ts';
export { type CardState, type CardSummary, summaryOf } from './jobs/summary.ts';
export {
  bothTexts,
  type CardEntry,
  type CardField,
  type Clash,
  mergeChange,
  sameCard,
  withMine,
} from './jobs/three-way.ts';
export { trialsOf } from './jobs/use.ts';
export { type CardFault, sayCardFault } from './model/card-fault.ts';
export { LATEST_INSTANT, MOST, MOST_LETTERS } from './model/card-limits.ts';
export type { Care } from './model/care.ts';
export type {
  CardCoat,
  CardFlaw,
  CardPhoto,
  CardRepair,
  JobCard,
  JobFile,
  RemovedCard,
} from './model/job-card.ts';
