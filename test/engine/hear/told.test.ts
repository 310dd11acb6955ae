/** What posts tell, a line each, as told.yaml has it. */
import { readFileSync } from 'node:fs';
import { load } from 'js-yaml';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { SURE } from '#engine/hear.ts';
import { fact } from './hearing.ts';

const TOLD = z
  .record(z.string(), z.array(z.tuple([z.string(), z.string()])).min(1))
  .parse(load(readFileSync(new URL('told.yaml', import.meta.url), 'utf8')));

describe.each(Object.entries(TOLD))('%s', (_, lines) => {
  it.each(lines)('%s: %s', (text, facts) => {
    for (const one of facts.split(' ')) {
      const [name = '', value = ''] = one.split('=');
      const found = fact(text, name);
      const taken = found && found.sure >= SURE ? found : undefined;
      const number = Number(value);
      if (Number.isNaN(number)) expect(value.split('|'), one).toContain(String(taken?.value ?? 'none'));
      else {
        expect(taken?.range?.[0], one).toBeLessThanOrEqual(number);
        expect(taken?.range?.[1], one).toBeGreaterThanOrEqual(number);
      }
    }
  });
});
