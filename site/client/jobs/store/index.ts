/** The job cards of this browser: all that reads or writes them goes through here. */
export { noteFlaw, noteRepair } from './notes.ts';
export {
  type CardList,
  countCards,
  listCards,
  type Read,
  readOne,
  readPhotos,
  readRaw,
  readRemoved,
} from './read.ts';
export {
  addCard,
  addPhoto,
  type Changed,
  changeCard,
  putCards,
  type Removed,
  removeCard,
  removePhoto,
} from './write.ts';
