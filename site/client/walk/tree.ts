import { readCase } from '../case/store.ts';

/** The outline of a tree: marks the way that the answers kept on this device take through it. */
export class TreeElement extends HTMLElement {
  connectedCallback() {
    const on = readCase();
    const taken = new Set<Element>();
    for (const branch of this.querySelectorAll('li')) {
      const question = branch.closest('ul')?.dataset['ask'] ?? '';
      const before = branch.parentElement?.closest('li');
      const reached = !before || taken.has(before);
      if (!reached || on[question]?.value !== branch.dataset['said']) continue;
      taken.add(branch);
      branch.classList.add('taken');
    }
  }
}
