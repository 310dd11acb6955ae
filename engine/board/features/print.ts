import type { FeatureOf } from '../../model/board.ts';
import { type Board, everywhere, raise, roughen, scatter } from '../field.ts';
import { ease, noise, random, rough } from '../noise.ts';
import { placed, radians } from '../stamp.ts';

type Print = FeatureOf<'print'>;
/** How deep the pattern is pressed at a place measured from the middle of the print, 0–1. */
type Press = (u: number, v: number) => { inside: number; press: number };

const cloth = (f: Print, from: number): Press => {
  const half = f['size-mm'] / 2;
  const k = (2 * Math.PI) / f['pitch-mm'];
  return (u, v) => {
    const edge = Math.max(Math.abs(u) - half * 1.2, Math.abs(v) - half) + 1.4 * rough(u / 7, v / 7, from, 2);
    const warp = u + 0.12 * noise(u / 6, v / 6, from + 1);
    const weft = v + 0.12 * noise(u / 6, v / 6, from + 2);
    const over = Math.sin((k * warp) / 2) * Math.sin((k * weft) / 2) > 0;
    const thread = over ? Math.abs(Math.sin((k * warp) / 2)) : Math.abs(Math.sin((k * weft) / 2));
    return {
      inside: 1 - ease(-1.5, 1.5, edge),
      press: thread * (0.75 + 0.5 * noise(u / 10, v / 10, from + 3)),
    };
  };
};

const finger = (f: Print, from: number): Press => {
  const half = f['size-mm'] / 2;
  return (u, v) => {
    const edge = Math.hypot(u / 0.74, v) - half * (1 + 0.1 * noise(u / 6, v / 6, from));
    const loop =
      Math.hypot(u * 1.15, v * 0.72 + Math.max(0, v) * 0.5 + 0.12 * half) +
      0.9 * noise(u / 6, v / 6, from + 1);
    const ridge = 0.5 + 0.5 * Math.sin((2 * Math.PI * loop) / f['pitch-mm']);
    const broken = ease(-0.7, -0.1, noise(u / 1.3, v / 1.3, from + 2));
    return { inside: 1 - ease(-half * 0.22, 0.6, edge), press: ridge * broken };
  };
};

const wrap = (f: Print): Press => {
  const pitch = Math.max(f['pitch-mm'], 3);
  const half = f['size-mm'] / 2;
  return (u, v) => {
    const line = Math.round(v / (pitch * 0.866));
    const shift = line & 1 ? pitch / 2 : 0;
    const du = u - shift - Math.round((u - shift) / pitch) * pitch;
    const dv = v - line * pitch * 0.866;
    const d = Math.hypot(du, dv) / (pitch * 0.4);
    const edge = Math.max(Math.abs(u) - half * 1.3, Math.abs(v) - half);
    return {
      inside: 1 - ease(-1, 1, edge),
      press: Math.exp(-(((d - 0.86) / 0.2) ** 2)) + 0.35 * (1 - ease(0.7, 1, d)),
    };
  };
};

const object = (f: Print, from: number): Press => {
  const half = f['size-mm'] / 2;
  return (u, v) => {
    const edge = Math.max(Math.abs(u) - half, Math.abs(v) - half * 0.7) + 0.25 * noise(u / 3, v / 3, from);
    const line = Math.exp(-(((edge + 0.7) / 0.5) ** 2));
    return {
      inside: 1 - ease(-0.3, 0.3, edge),
      press: Math.max(line, 0.4 + 0.3 * rough(u / 5, v / 5, from + 1, 3)),
    };
  };
};

/** The film was still soft when something lay on it. */
export const print = (b: Board, f: Print, from: number): void => {
  const [cx, cy] = placed(b, random(from), f.at);
  const turn = radians(f.pattern === 'finger' ? 24 : 8);
  const patterns = { cloth, finger, wrap, object } as const;
  const press = patterns[f.pattern](f, from);
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  everywhere(b, (i, x, y) => {
    const p = press((x - cx) * c + (y - cy) * s, -(x - cx) * s + (y - cy) * c);
    if (p.inside === 0) return;
    raise(b, i, -f['depth-um'] * p.inside * p.press);
    roughen(b, i, 0.13, 0.75 * p.inside * p.press);
    scatter(b, i, 0.012 * p.inside * p.press);
  });
};
