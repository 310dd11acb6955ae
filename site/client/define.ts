import { LostElement } from './lost.ts';
import { QuestionElement } from './question.ts';
import { ResultsElement } from './results.ts';
import { SearchElement } from './search.ts';
import { SeenElement } from './seen.ts';
import { TrailElement } from './trail.ts';

customElements.define('hd-search', SearchElement);
customElements.define('hd-results', ResultsElement);
customElements.define('hd-question', QuestionElement);
customElements.define('hd-trail', TrailElement);
customElements.define('hd-lost', LostElement);
customElements.define('hd-seen', SeenElement);
