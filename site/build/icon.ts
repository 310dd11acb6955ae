import sharp from 'sharp';
import { LIGHT } from './colors.ts';

/** A torn strip of tape on the bench, half of it in the dark of a film that is still wet. */
const drawing = (room: number): string => {
  const scale = (512 - 2 * room) / 512;
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 512 512">
<rect width="512" height="512" fill="${LIGHT.paper}"/>
<g transform="translate(${room} ${room}) scale(${scale})">
<path d="M44 132 480 150 454 196 484 238 450 288 482 330 456 394 52 376 30 322 58 272 24 226 54 178z" fill="${LIGHT.cast}" transform="translate(16 12)"/>
<path d="M44 132 480 150 454 196 484 238 450 288 482 330 456 394 52 376 30 322 58 272 24 226 54 178z" fill="${LIGHT.tape}"/>
<path d="M262 141 480 150 454 196 484 238 450 288 482 330 456 394 246 385z" fill="${LIGHT.closed}"/>
</g></svg>`;
};

/** The icons of the app: their names, and pixels a side. A maskable one keeps clear of the edge that is cut off. */
export const ICONS = { '180': 180, '192': 192, '512': 512, '512-maskable': 512 } as const;

export const drawIcon = (name: keyof typeof ICONS): Promise<Buffer> =>
  sharp(Buffer.from(drawing(name === '512-maskable' ? 80 : 0)))
    .resize(ICONS[name])
    .png({ palette: true, colours: 64, effort: 10, dither: 0 })
    .toBuffer();
