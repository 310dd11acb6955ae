import type { ToldRule } from './mind.ts';

/** Whether somebody has to be called: what has happened can not wait, and the film can. */
export const isCall = ({ calls = [] }: Pick<ToldRule, 'calls'>): boolean => calls.length > 0;
