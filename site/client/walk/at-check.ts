import { holds } from '#engine/condition.ts';
import type { Case } from '#engine/index.ts';
import { STOPS_AT_CHECK } from '../../shared/at-check.ts';
import { ADVICE_DATA } from '../../shared/data-files.ts';
import { ruleUrl } from '../../shared/urls.ts';
import { asPart, dropParts, element, partIn } from '../shared/element.ts';
import { fetchedOnce, unlessOffline } from '../shared/fetch-json.ts';

const adviceOnce = fetchedOnce(ADVICE_DATA);

/** Says before a question what the stops that stand ask of its check; how to make one that waits is not told. */
export const tellAtCheck = async (host: HTMLElement, on: Case): Promise<void> => {
  const how = partIn(document, 'how');
  const { by } = host.dataset;
  if (!how || !by) return;
  const standing = Object.entries(STOPS_AT_CHECK).flatMap(([id, when]) =>
    holds(when, (fact) => on[fact]?.value) === 'yes' ? [id] : [],
  );
  const advice = standing.length ? await unlessOffline(adviceOnce()) : undefined;
  dropParts(document, 'at-check');
  how.hidden = false;
  for (const { id, title, checks } of advice?.rules ?? [])
    for (const { by: senses, wait, say } of standing.includes(id) ? checks : []) {
      if (!senses.some((sense) => sense === by)) continue;
      if (wait) how.hidden = true;
      const link = element('a', { href: ruleUrl(id) }, title);
      how.before(asPart('at-check', element('p', { className: 'how' }, element('b', {}, link), ` ${say}`)));
    }
};
