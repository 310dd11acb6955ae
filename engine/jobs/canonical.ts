import { isRecord } from '../plain/record.ts';

/** One text for one content, in whatever order its keys stand. */
export const canonical = (value: unknown): string =>
  JSON.stringify(value, (_key, inner) =>
    isRecord(inner)
      ? Object.fromEntries(Object.entries(inner).sort(([one], [two]) => (one < two ? -1 : 1)))
      : inner,
  );
