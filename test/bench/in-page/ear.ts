/** The ear, the belief and the search as a phone runs them. */
export { believe, nextAsked } from '#engine/hear/belief/belief.ts';
export { consider, flawWords, hear } from '#engine/hear.ts';
export { hitsFor } from '../../../site/client/find/hits.ts';
export { warmUpSteps } from '../../../site/client/shared/warm-up.ts';
