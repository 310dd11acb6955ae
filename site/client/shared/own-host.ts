/** Where the site was built to stand: every address on paper begins with it, whatever host the page was read from. */
export const ownOrigin = (): string => {
  const told = document.querySelector<HTMLMetaElement>('meta[property="og:url"]')?.content;
  return told ? new URL(told).origin : location.origin;
};
