/** No picture may keep a sheet of paper waiting for longer. */
const MOST_MS = 8000;

/** Pictures that would load once they are scrolled to are asked for now: what is printed is never scrolled to. */
const callPictures = (): readonly Promise<unknown>[] =>
  [...document.images].map((picture) => {
    picture.loading = 'eager';
    // One that does not come leaves its own words.
    return picture.decode().catch(() => undefined);
  });

/** Prints with every picture on the paper; at once where all of them are there, as some phones print from a tap alone. */
export const printWhole = async (): Promise<void> => {
  const coming = callPictures();
  if (![...document.images].every(({ complete }) => complete))
    await Promise.race([Promise.all(coming), new Promise((resolve) => setTimeout(resolve, MOST_MS))]);
  print();
};

// Printed from the browser's own menu.
addEventListener('beforeprint', callPictures);
