/** A table of published figures beside its test: groups of rows, each read by name. */
export type Table = { topic: string; rows: Readonly<Record<string, readonly object[]>> };

/** Reads a table and remembers which groups nothing has read, so that no copied figure lies idle. */
export const readTable = (table: Table) => {
  const left = new Set(Object.keys(table.rows));
  return {
    rows<Row extends object>(group: string): readonly Row[] {
      const rows = table.rows[group];
      if (!rows?.length) throw new Error(`${table.topic}: there is no row in "${group}"`);
      left.delete(group);
      return rows as readonly Row[];
    },
    unread: () => [...left],
  };
};
