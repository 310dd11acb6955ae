import type { AstroIntegration } from 'astro';
import { readChoices } from '../../content/tools/choices.ts';

const NAME = 'virtual:choices';

/** content/choices.yaml as a module, so that a script gets the words without a reader of YAML. */
export const choices = (): AstroIntegration => ({
  name: 'choices',
  hooks: {
    'astro:config:setup': ({ updateConfig }) => {
      updateConfig({
        vite: {
          plugins: [
            {
              name: 'choices',
              resolveId: (id: string) => (id === NAME ? `\0${NAME}` : undefined),
              load: (id: string) =>
                id === `\0${NAME}`
                  ? `export const CHOICES = ${JSON.stringify(readChoices(process.cwd()))};`
                  : undefined,
            },
          ],
        },
      });
    },
  },
});
