import { type ToldRule, toldWords } from '../../shared/told-rule.ts';
import { ruleUrl } from '../../shared/urls.ts';

/** The markup of a rule as the page itself has it (StepModels.astro, RuleModels.astro). */
type Model = 'cares' | 'care' | 'note' | 'stop' | 'apart-care' | 'apart-note' | 'stop-first' | 'stops';

/** A copy of the page's model with the words of the rule. Throws where the page has no such model. */
export const boxOf = (model: Model, rule?: ToldRule): HTMLElement => {
  const found = document.querySelector<HTMLTemplateElement>(`template[data-model=${model}]`);
  const box = found?.content.firstElementChild?.cloneNode(true);
  if (!(box instanceof HTMLElement)) throw new Error(`no model of ${model} on this page`);
  if (!rule) return box;
  box.dataset['rule'] = rule.id;
  for (const link of box.querySelectorAll<HTMLAnchorElement>('[data-rule-link]'))
    link.href = ruleUrl(rule.id);
  const words = Object.entries(toldWords(rule));
  const texts = document.createTreeWalker(box, NodeFilter.SHOW_TEXT);
  for (let text = texts.nextNode(); text; text = texts.nextNode())
    text.nodeValue = words.reduce(
      (line, [name, says]) => line.replace(`{${name}}`, () => says),
      text.nodeValue ?? '',
    );
  return box;
};
