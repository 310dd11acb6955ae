/** How many sheets a printed page takes: each is an object of its own in the file. ISO 32000-1, 7.7.3.3. */
export const sheetsOf = (pdf: Buffer): number =>
  pdf.toString('latin1').match(/\/Type\s*\/Page\b/g)?.length ?? 0;
