/**
 * The whole of `npm run check` over the content so many times over, in a process of its own: prints what it took of the
 * processor and of memory, and what it told.
 */
import { everyFault } from '../../../content/tools/every-fault.ts';
import { grownRoot } from './knowledge.ts';

const root = grownRoot(process.cwd(), Number(process.argv[2]));
const began = process.cpuUsage();
const { issues, untried = 0, figures } = everyFault(root);
const { user, system } = process.cpuUsage(began);
const codes: Record<string, number> = {};
for (const { code } of issues) codes[code] = (codes[code] ?? 0) + 1;
console.log(
  JSON.stringify({
    ms: (user + system) / 1000,
    memory: 1024 * process.resourceUsage().maxRSS,
    files: root.texts.size,
    planned: figures !== undefined,
    untried,
    codes,
  }),
);
