/** Looks of what a script draws late: only a page that draws it carries them, and nothing is asked of the network. */
export const wear = (css: string): void => {
  const sheet = new CSSStyleSheet();
  sheet.replaceSync(css);
  document.adoptedStyleSheets.push(sheet);
};
