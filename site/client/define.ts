import { TrailElement } from './case/trail.ts';
import { ClockElement } from './clock/watch.ts';
import { SearchElement } from './find/search.ts';
import { OfflineElement } from './page/offline.ts';
import { keepOneFace } from './page/one-face.ts';
import './page/paper-head.ts';
import { ShareElement } from './page/share.ts';
import { late, unlessOffline } from './shared/fetch-json.ts';
import { QuestionElement } from './walk/question.ts';
import { SeenElement } from './walk/seen.ts';
import { TreeElement } from './walk/tree.ts';

customElements.define('hd-search', SearchElement);
customElements.define('hd-question', QuestionElement);
customElements.define('hd-trail', TrailElement);
customElements.define('hd-seen', SeenElement);
customElements.define('hd-share', ShareElement);
customElements.define('hd-offline', OfflineElement);
customElements.define('hd-clock', ClockElement);
customElements.define('hd-tree', TreeElement);

void keepOneFace();

/** Only some pages have these, or lack them, so only they load what is for them. */
const LATER: Readonly<Record<string, () => Promise<unknown>>> = {
  'hd-results': () => import('./find/results.ts'),
  'hd-lost': () => import('./walk/lost.ts'),
  'hd-sift': () => import('./page/sift.ts'),
  'hd-calls': () => import('./page/own-calls.ts'),
  'hd-turn-light': () => import('./page/turn-light.ts'),
  'hd-told': () => import('./walk/facts-panel.ts'),
  'hd-on-card': () => import('./jobs/parts/on-card.ts'),
  'hd-tell': () => import('./tell/define.ts'),
  'main:not(:has(.qr))': () => import('./page/paper-code.ts'),
  'hd-practice, hd-show, hd-pictures': () => import('./practice/define.ts'),
};
for (const [name, load] of Object.entries(LATER))
  if (document.querySelector(name)) void unlessOffline(late(load));
