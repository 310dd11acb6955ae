import type { Rgb } from '../field.ts';

/** Colors of foreign bodies, linear light. */
export const BODY_COLOR: Readonly<
  Record<'dark' | 'white' | 'yellow' | 'red' | 'blue' | 'gray' | 'amber' | 'clear', Rgb>
> = {
  dark: [0.022, 0.017, 0.013],
  white: [0.72, 0.71, 0.68],
  yellow: [0.66, 0.45, 0.12],
  red: [0.4, 0.05, 0.04],
  blue: [0.06, 0.13, 0.36],
  gray: [0.2, 0.2, 0.2],
  amber: [0.34, 0.16, 0.03],
  clear: [0.3, 0.29, 0.27],
};
