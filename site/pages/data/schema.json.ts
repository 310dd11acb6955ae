import { dataSchema } from '../../lib/data-set.ts';

export const GET = () => Response.json(dataSchema());
