import { dataSet } from '../../build/data-set.ts';

export const GET = () => Response.json(dataSet());
