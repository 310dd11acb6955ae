import { readCalls } from '../../content/tools/calls.ts';

/** Whom to call where, from content/calls.yaml. */
export const { places } = readCalls(process.cwd());
