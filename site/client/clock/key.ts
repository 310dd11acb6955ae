/** Where the coats on the clock are kept in this browser. */
export const CLOCK_KEY = 'halfdry.clock';

/** Whether a coat may be running: asked on every page, so it asks for nothing else. */
export const coatKept = (): boolean => {
  try {
    return localStorage.getItem(CLOCK_KEY) !== null;
  } catch {
    return false;
  }
};
