import { ClockElement } from './clock-watch.ts';
import { LostElement } from './lost.ts';
import { OfflineElement } from './offline.ts';
import { QuestionElement } from './question.ts';
import { ResultsElement } from './results.ts';
import { SearchElement } from './search.ts';
import { SeenElement } from './seen.ts';
import { ShareElement } from './share.ts';
import { TrailElement } from './trail.ts';

customElements.define('hd-search', SearchElement);
customElements.define('hd-results', ResultsElement);
customElements.define('hd-question', QuestionElement);
customElements.define('hd-trail', TrailElement);
customElements.define('hd-lost', LostElement);
customElements.define('hd-seen', SeenElement);
customElements.define('hd-share', ShareElement);
customElements.define('hd-offline', OfflineElement);
customElements.define('hd-clock', ClockElement);
