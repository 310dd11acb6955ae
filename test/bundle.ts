/** A module's own code for a page that has nothing else on it, where it goes by this name. */
import { build } from 'vite';

export const codeOf = async (entry: string, name: string): Promise<string> => {
  const lib = { entry, formats: ['iife' as const], name };
  const built = await build({
    configFile: false,
    logLevel: 'silent',
    build: { write: false, minify: true, lib },
  });
  const [first] = [built].flat();
  if (!first || !('output' in first)) throw new Error('nothing was built');
  return `${first.output[0].code};globalThis.${name} = ${name};`;
};
