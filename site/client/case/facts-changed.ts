/** What she tells is one more word about the piece, so whoever reads the case must hear of it. */
export const TOLD_EVENT = 'halfdry:told';
