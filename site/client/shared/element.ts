/** An element with its properties and what stands in it, for what is drawn where the view library is not loaded. */
export const element = <K extends keyof HTMLElementTagNameMap>(
  name: K,
  properties: Partial<HTMLElementTagNameMap[K]> = {},
  ...inside: readonly (string | Node)[]
): HTMLElementTagNameMap[K] => {
  const made = Object.assign(document.createElement(name), properties);
  made.append(...inside);
  return made;
};

/** The part of a page that a script works on. It is found by its name in `data-part`: a class says how something looks. */
export const partIn = (root: ParentNode, name: string): HTMLElement | null =>
  root.querySelector<HTMLElement>(`[data-part=${name}]`);

/** An element that a script finds again by this name. */
export const asPart = <E extends HTMLElement>(name: string, part: E): E => {
  part.dataset['part'] = name;
  return part;
};

/** Takes off the page what a script put there under this name. */
export const dropParts = (root: ParentNode, name: string): void => {
  for (const part of root.querySelectorAll(`[data-part=${name}]`)) part.remove();
};

/** A button that does one thing. */
export const button = (words: string, onclick: () => void, className = ''): HTMLButtonElement =>
  element('button', { type: 'button', className, onclick }, words);

/** A line that a screen reader reads out when something is written into it. */
export const statusLine = (words = '', className = ''): HTMLParagraphElement => {
  const line = element('p', { className }, words);
  line.setAttribute('role', 'status');
  return line;
};
