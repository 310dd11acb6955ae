import { defectUrl, remedyUrl } from '../shared/urls.ts';
import { knowledge } from './knowledge.ts';

/** Each defect and remedy under its short link. An id that is both would have two meanings: that throws. */
export const shortLinks = () => {
  const links = [
    ...knowledge.defects.map(({ id, name }) => ({ id, name, url: defectUrl(id) })),
    ...knowledge.remedies.map(({ id, name }) => ({ id, name, url: remedyUrl(id) })),
  ];
  const twice = links.find(({ id }, index) => links.findIndex((other) => other.id === id) !== index);
  if (twice)
    throw new Error(
      `"${twice.id}" is both a defect and a remedy, so /r/${twice.id} has two meanings; rename one`,
    );
  return links;
};
