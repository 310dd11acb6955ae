import { ear } from '../../build/ear.ts';

export const GET = () => Response.json(ear());
