import type { DataFile } from '../shared/data-files.ts';

/** What is written at the address of a data file: of another type than what is read there, it does not compile. */
export const dataAnswer = <T>(_file: DataFile<T>, data: NoInfer<T>): Response => Response.json(data);
