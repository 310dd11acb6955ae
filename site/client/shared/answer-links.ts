import type { Carried, Links } from '#engine/hear.ts';
import { defectUrl, hitUrl, nowUrl, ruleUrl, TELL, WHICH_COAT } from '../../shared/urls.ts';

const carrying = (url: string, carried: Carried): string =>
  Object.keys(carried).length ? `${url}#${new URLSearchParams(carried)}` : url;

/** Where a reply leads to on this site; `origin` stands before each address, so that it can be sent. */
export const answerLinks = (origin: string): Links => ({
  defect: (defect, stage) => origin + (stage ? nowUrl(defect, stage) : defectUrl(defect)),
  rule: (rule) => origin + ruleUrl(rule),
  page: (kind, id, carried) => {
    const url = hitUrl(kind, id);
    return url && origin + carrying(url, carried);
  },
  which: (carried) => origin + carrying(WHICH_COAT, carried),
  tell: origin + TELL,
});
