/** Words for all of a face. */
export const WHOLE = /\b(whole|panel|face|top|rest|edge to edge|evenly|all over|all of it)\b/i;
const PLACE =
  /\b(spots?|places?|rims?|knots?|marks?|patch|bits|bubbles|ridges|hollows?|pools?|grooves?|rope|feather|edges thin|edge thin|round the sharp edge)\b/i;

/** Whether the words of a step tell of a place on a face and not of all of it: a spot, a rim, the tops of ridges. */
export const isOnlyAPlace = (say: string): boolean => PLACE.test(say) && !WHOLE.test(say);
