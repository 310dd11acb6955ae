/** A plain line for what she should know, read out by a screen reader. */
export const note = (near: Element, text: string): void => {
  const line = Object.assign(document.createElement('p'), { className: 'small', textContent: text });
  line.setAttribute('role', 'status');
  near.append(line);
};
