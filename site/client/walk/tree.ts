import { readCase } from '../case/store.ts';

/** The drawing of a tree: marks the way that the answers kept on this device take through it. */
export class TreeElement extends HTMLElement {
  connectedCallback() {
    const on = readCase();
    const taken = new Map<string | undefined, string | undefined>([]);
    for (const [number, branch] of this.querySelectorAll('g').entries()) {
      const { of, said, ask } = branch.dataset;
      const question = taken.get(of);
      // The first branch has none before it.
      const reached = !of || (question && on[question as keyof typeof on]?.value === said);
      if (!reached) continue;
      taken.set(String(number), ask);
      if (of) branch.classList.add('taken');
    }
  }
}
