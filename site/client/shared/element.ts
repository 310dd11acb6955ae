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

/** A button that does one thing. */
export const button = (words: string, onclick: () => void, className = ''): HTMLButtonElement =>
  element('button', { type: 'button', className, onclick }, words);

/** A line that a screen reader reads out when something is written into it. */
export const statusLine = (words = '', className = ''): HTMLParagraphElement => {
  const line = element('p', { className }, words);
  line.setAttribute('role', 'status');
  return line;
};
