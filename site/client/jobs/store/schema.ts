/** What checks cards against their schema: heavy, so it is fetched only when a card or a file is opened. */
import './jitless.ts';

export { sayCardFault } from '#engine/model/card-fault.ts';
export { jobFileOf, readCard, readJobFile } from '#engine/model/read-card.ts';
