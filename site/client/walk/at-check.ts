import * as v from 'valibot';
import { holds } from '#engine/condition.ts';
import type { Case } from '#engine/index.ts';
import type { AtCheck } from '../../shared/at-check.ts';
import { ruleUrl } from '../../shared/urls.ts';
import { asPart, dropParts, element, partIn } from '../shared/element.ts';
import { objectWith, readPageData } from '../shared/page-data.ts';

const CHECKS = v.array(objectWith<AtCheck>('when', 'id', 'title', 'wait', 'say'));

/** Says before a question what the stops that stand ask of its check; how to make one that waits is not told. */
export const tellAtCheck = (host: HTMLElement, on: Case): void => {
  dropParts(document, 'at-check');
  const standing = readPageData(CHECKS, host.dataset['checks'] ?? '[]').filter(
    ({ when }) => holds(when, (fact) => on[fact]?.value) === 'yes',
  );
  const how = partIn(document, 'how');
  if (how) how.hidden = standing.some(({ wait }) => wait);
  for (const { id, title, say } of standing) {
    const link = element('a', { href: ruleUrl(id) }, title);
    how?.before(
      asPart('at-check', element('p', { className: 'at-check' }, element('b', {}, link), ` ${say}`)),
    );
  }
};
