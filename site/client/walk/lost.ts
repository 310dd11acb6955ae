import { readAddress } from '#engine/index.ts';
import { SIGN_TABLE } from '../../shared/data-files.ts';
import { defectUrl, nodeUrl, readNodePath, readSeePath, seeUrl } from '../../shared/urls.ts';
import { addressFor } from '../../shared/way.ts';
import { readCase } from '../case/store.ts';
import { element } from '../shared/element.ts';
import { fetched, fetchJson, late, unlessOffline } from '../shared/fetch-json.ts';
import { walkKnowledge } from '../shared/walk-knowledge.ts';
import { withAnswers } from './tapped.ts';

const ID = /^[a-z][a-z0-9-]{0,80}$/;

/** A flaw that moved left a page behind that names its new place. */
const movedTo = async (defect: string): Promise<string | undefined> => {
  const html = (await (await unlessOffline(fetched(defectUrl(defect))))?.text()) ?? '';
  return /content="0; ?url=[^"]*\/defects\/([a-z][a-z0-9-]*)\/"/.exec(html)?.[1];
};

/** On the page for a dead address: reads the answers that still fit and leads to the page that goes on from them. */
class LostElement extends HTMLElement {
  connectedCallback() {
    const seen = readSeePath(location.pathname);
    void (seen ? unlessOffline(this.#leadToSee(seen)) : this.#lead());
  }

  async #lead() {
    const node = readNodePath(location.pathname);
    if (!node || !ID.test(node.defect)) return;
    const fresh = (await movedTo(node.defect)) ?? node.defect;
    const known = await walkKnowledge(fresh);
    if (!known) return;
    const { stage, answers } = readAddress(known, node.segments);
    const on = withAnswers(readCase(), answers);
    const href =
      stage || answers.length ? nodeUrl(fresh, addressFor(known, fresh, stage, on)) : defectUrl(fresh);
    this.#offer(href, answers.length, 'The flaw is known; the answers in the link are not.');
  }

  async #leadToSee(segments: readonly string[]) {
    const matrix = await fetchJson(SIGN_TABLE);
    const { nearestSeeAddress, readSeeAddress } = await late(() => import('#engine/see/nodes.ts'));
    const address = nearestSeeAddress(matrix, readSeeAddress(matrix, segments));
    this.#offer(seeUrl(address), address.length, 'No answer in the link fits any more; it begins anew.');
  }

  #offer(href: string, kept: number, none: string) {
    const says = `The link still carries ${kept} ${kept === 1 ? 'answer that fits' : 'answers that fit'}.`;
    this.replaceChildren(
      element(
        'a',
        { className: 'tape strip', href },
        element('b', {}, 'Go on from here'),
        element('span', {}, kept ? says : none),
      ),
    );
  }
}

customElements.define('hd-lost', LostElement);
