/** The oldest Node that runs the build: major, minor. */
const OLDEST = [22, 12] as const;

/** What to tell someone whose Node is too old; nothing where it will do. */
export const oldNode = (version: string): string | undefined => {
  const [major = 0, minor = 0] = version.split('.').map(Number);
  if (major > OLDEST[0] || (major === OLDEST[0] && minor >= OLDEST[1])) return undefined;
  return (
    `This needs Node ${OLDEST.join('.')} or newer and found ${version}. ` +
    'Run it through npm (npm start, npm run build): npm ci installs a fitting Node on Linux and Windows.'
  );
};
