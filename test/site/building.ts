/** What the host of the tests answers while the site is still being built. */
export const BUILDING = 503;
