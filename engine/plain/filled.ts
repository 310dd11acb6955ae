/** A sentence with names in braces, each in whose place is said what it stands for. */
export const filled = (says: string, parts: Readonly<Record<string, string>>): string =>
  says.replaceAll(/\{(\w+)\}/g, (_, name: string) => parts[name] ?? '');
