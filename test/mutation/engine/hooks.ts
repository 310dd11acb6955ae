/** In a process that tries mutants: the engine is read with its switches in it, and tests find our harness. */
import { readFileSync } from 'node:fs';
import { registerHooks } from 'node:module';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';

const root = pathToFileURL(`${process.cwd()}/`).href;
const harness = new URL('./harness.ts', import.meta.url).href;
const built = process.env['MUTATE_BUILT'] as string;

/** Which file of the project imports which. */
export const imports = new Map<string, Set<string>>();

const own = (url: string | undefined): string | undefined =>
  url?.startsWith(root) && !url.includes('/node_modules/')
    ? url.slice(root.length).replace(/\?.*/, '')
    : undefined;

registerHooks({
  resolve(specifier, context, next) {
    const from = own(context.parentURL);
    if (specifier === 'vitest' && context.parentURL !== harness) return { url: harness, shortCircuit: true };
    const found = next(specifier, context);
    const to = own(found.url);
    if (from && to) imports.set(from, (imports.get(from) ?? new Set()).add(to));
    return found;
  },
  load(url, context, next) {
    const file = own(url);
    if (!file?.startsWith('engine/')) return next(url, context);
    const source = readFileSync(join(built, file.replaceAll('/', '+')), 'utf8');
    return { format: 'module', source, shortCircuit: true };
  },
});
