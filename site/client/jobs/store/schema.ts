/** What checks cards against their schema: heavy, so it is fetched only when a card or a file is opened. */
import './jitless.ts';

export { jobFileOf, readCard, readJobFile, refusalsOf, salvageCard } from '#engine/model/read-card.ts';
