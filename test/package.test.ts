/** The example of DEVELOPERS.md, run as another program would: from the guide's own text, by the package's name. */
import { execFileSync } from 'node:child_process';
import { readFileSync, rmSync, writeFileSync } from 'node:fs';
import { expect, it } from 'vitest';

it('runs the example of the guide', () => {
  const guide = readFileSync('DEVELOPERS.md', 'utf8');
  const [, example] = /```ts\n([\s\S]*?)```/.exec(guide) ?? [];
  if (!example) throw new Error('DEVELOPERS.md has no example in TypeScript');
  const file = 'guide-example.tmp.ts';
  writeFileSync(file, example);
  try {
    const printed = execFileSync(process.execPath, [file], { encoding: 'utf8' });
    expect(printed.trim()).toBe('Hands off. Look again when it is dry to the touch.');
  } finally {
    rmSync(file);
  }
});
