import type { FactName } from '../../model/facts.ts';
import { type Heard, SURE } from '../words/heard.ts';

/** The value of a fact that is surely told. */
export const toldSure = (heard: Heard | undefined, fact: FactName): string | number | undefined =>
  heard?.facts.find((one) => one.fact === fact && one.sure >= SURE)?.value;
