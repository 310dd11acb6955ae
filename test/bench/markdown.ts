const row = (cells: readonly string[]): string => `| ${cells.join(' | ')} |`;

/** A table of Markdown. */
export const markdown = (head: readonly string[], rows: readonly (readonly string[])[]): string =>
  [row(head), row(head.map(() => '---')), ...rows.map(row)].join('\n');
