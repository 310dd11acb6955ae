/** What only a browser can tell. It needs a built site in `dist/`. */
import { existsSync } from 'node:fs';
import { linkedKnowledge } from '../../../content/tools/knowledge.ts';
import type { Measured } from '../figures.ts';
import { cardStore } from './cards.ts';
import { startBrowser } from './chrome.ts';
import { coldStart } from './cold.ts';
import { listening } from './listening.ts';
import { verdict } from './verdict.ts';
import { weights } from './weights.ts';

export const browser = async (): Promise<Measured> => {
  if (!existsSync('dist/index.html')) throw new Error('dist/ is not built: npm run build');
  const { known } = linkedKnowledge(process.cwd());
  if (!known) throw new Error('the content does not link; npm run check tells why');
  const chrome = await startBrowser();
  try {
    return {
      rows: [
        ...(await coldStart(chrome, known)),
        ...(await listening(chrome, known)),
        ...(await cardStore(chrome)),
        ...(await verdict(chrome)),
        ...weights(),
      ],
    };
  } finally {
    await chrome.close();
  }
};
