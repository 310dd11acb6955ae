import { readAddress, withAnswer } from '#engine/index.ts';
import type { QuestionId } from '#engine/model/ids.ts';
import type { SignMatrix } from '#engine/see/matrix.ts';
import { defectUrl, nodeUrl, readNodePath, readSeePath, SIGN_TABLE, seeUrl } from '../../shared/urls.ts';
import { addressFor } from '../../shared/way.ts';
import { readCase } from '../case/store.ts';
import { walkKnowledge } from '../shared/walk-knowledge.ts';

const ID = /^[a-z][a-z0-9-]{0,80}$/;

/** A flaw that moved left a page behind that names its new place. */
const movedTo = async (defect: string): Promise<string | undefined> => {
  const response = await fetch(defectUrl(defect)).catch(() => undefined);
  const html = response?.ok ? await response.text() : '';
  return /content="0; ?url=[^"]*\/defects\/([a-z][a-z0-9-]*)\/"/.exec(html)?.[1];
};

/** On the page for a dead address: reads the answers that still fit and leads to the page that goes on from them. */
export class LostElement extends HTMLElement {
  connectedCallback() {
    void this.#lead();
  }

  async #lead() {
    const seen = readSeePath(location.pathname);
    if (seen) return this.#leadToSee(seen);
    const place = readNodePath(location.pathname);
    if (!place || !ID.test(place.defect)) return;
    const fresh = (await movedTo(place.defect)) ?? place.defect;
    const known = await walkKnowledge(fresh).catch(() => undefined);
    if (!known) return;
    const { stage, answers } = readAddress(known, place.segments);
    const on = answers.reduce(
      (so, [question, answer]) => withAnswer(so, question as QuestionId, answer),
      readCase(),
    );
    const href =
      stage || answers.length ? nodeUrl(fresh, addressFor(known, fresh, stage, on)) : defectUrl(fresh);
    this.#offer(href, answers.length, 'The flaw is known; the answers in the link are not.');
  }

  async #leadToSee(segments: readonly string[]) {
    const response = await fetch(SIGN_TABLE).catch(() => undefined);
    if (!response?.ok) return;
    const matrix = (await response.json()) as SignMatrix;
    const { nearestSeeAddress, readSeeAddress } = await import('#engine/see/nodes.ts');
    const address = nearestSeeAddress(matrix, readSeeAddress(matrix, segments));
    this.#offer(seeUrl(address), address.length, 'No answer in the link fits any more; it begins anew.');
  }

  #offer(href: string, kept: number, none: string) {
    const link = Object.assign(document.createElement('a'), { className: 'tape strip', href });
    link.append(
      Object.assign(document.createElement('b'), { textContent: 'Go on from here' }),
      Object.assign(document.createElement('span'), {
        textContent: kept
          ? `The link still carries ${kept} ${kept === 1 ? 'answer that fits' : 'answers that fit'}.`
          : none,
      }),
    );
    this.replaceChildren(link);
  }
}
