import { readChoices } from '../../content/tools/choices.ts';
import { readClockWords } from '../../content/tools/clock-words.ts';

/** Tables of content as modules, so that a script gets the words without a reader of YAML. */
const MODULES: Readonly<Record<string, () => string>> = {
  'virtual:choices': () => `export const CHOICES = ${JSON.stringify(readChoices(process.cwd()))};`,
  'virtual:clock-words': () => `export const CLOCK_WORDS = ${JSON.stringify(readClockWords(process.cwd()))};`,
};

/** What the build, the preview and the tests read these modules by. */
export const contentModules = () => ({
  name: 'content-modules',
  resolveId: (id: string) => (id in MODULES ? `\0${id}` : undefined),
  load: (id: string) => MODULES[id.slice(1)]?.(),
});
