/** Ids that moved or merged: `kind/old` → new id. */
export type Retired = Readonly<Record<string, string>>;
