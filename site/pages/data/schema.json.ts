import { dataSchema } from '../../build/data-set.ts';

export const GET = () => Response.json(dataSchema());
