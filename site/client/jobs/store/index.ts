/** The job cards of this browser: all that reads or writes them goes through here. */
export { readClashes } from './clashes.ts';
export { JobsFault } from './fault.ts';
export { noteFlaw, noteRepair, settleRepaired } from './notes.ts';
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
export type { KeptClash, Removed } from './records.ts';
export { removeCard, restoreCards } from './removal.ts';
export { dropAside, mendCard, putAsideBack, readAside, setCardAside } from './set-aside.ts';
export {
  addCard,
  addPhoto,
  type CardEdit,
  type Changed,
  changeCard,
  putCards,
  removePhoto,
  settleClash,
} from './write.ts';
