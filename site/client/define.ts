import { ClockElement } from './clock-watch.ts';
import { LostElement } from './lost.ts';
import { OfflineElement } from './offline.ts';
import { QuestionElement } from './question.ts';
import { ResultsElement } from './results.ts';
import { SearchElement } from './search.ts';
import { SeenElement } from './seen.ts';
import { ShareElement } from './share.ts';
import { TrailElement } from './trail.ts';
import { TreeElement } from './tree.ts';
import { TurnLightElement } from './turn-light.ts';

customElements.define('hd-search', SearchElement);
customElements.define('hd-results', ResultsElement);
customElements.define('hd-question', QuestionElement);
customElements.define('hd-trail', TrailElement);
customElements.define('hd-lost', LostElement);
customElements.define('hd-seen', SeenElement);
customElements.define('hd-share', ShareElement);
customElements.define('hd-offline', OfflineElement);
customElements.define('hd-clock', ClockElement);
customElements.define('hd-tree', TreeElement);
customElements.define('hd-turn-light', TurnLightElement);

/** Only some pages have these, so only they load them. */
const LATER: Readonly<Record<string, () => Promise<unknown>>> = {
  'hd-told': () => import('./told.ts'),
  'hd-on-card': () => import('./on-card.ts'),
};
for (const [name, load] of Object.entries(LATER))
  if (document.querySelector(name)) void load().catch(() => undefined);
