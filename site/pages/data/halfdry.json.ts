import { dataSet } from '../../lib/data-set.ts';

export const GET = () => Response.json(dataSet());
