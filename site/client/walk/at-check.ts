import { holds } from '#engine/case/condition.ts';
import type { Case } from '#engine/index.ts';
import { AT_CHECK } from '../../shared/data-files.ts';
import { ruleUrl } from '../../shared/urls.ts';
import { asPart, dropParts, element, partIn } from '../shared/element.ts';
import { fetchedOnce, unlessOffline } from '../shared/fetch-json.ts';

const stopsOnce = fetchedOnce(AT_CHECK);

/** Says before a question what the stops that stand ask of its check; how to make one that waits is not told. */
export const tellAtCheck = async (host: HTMLElement, on: Case): Promise<void> => {
  const how = partIn(document, 'how');
  const { by } = host.dataset;
  if (!how || !by) return;
  const stops = Object.keys(on).length ? await unlessOffline(stopsOnce()) : undefined;
  dropParts(document, 'at-check');
  how.hidden = false;
  const standing = stops?.filter(({ when }) => holds(when, (fact) => on[fact]?.value) === 'yes') ?? [];
  for (const { id, title, checks } of standing)
    for (const { by: senses, wait, say } of checks) {
      if (!senses.some((sense) => sense === by)) continue;
      if (wait) how.hidden = true;
      const link = element('a', { href: ruleUrl(id) }, title);
      how.before(asPart('at-check', element('p', { className: 'how' }, element('b', {}, link), ` ${say}`)));
    }
};
