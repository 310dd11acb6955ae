import sharp from 'sharp';

/** A torn strip of tape on the bench, half of it in the dark of a film that is still wet. */
const drawing = (room: number): string => {
  const scale = (512 - 2 * room) / 512;
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 512 512">
<defs><linearGradient id="paper"><stop stop-color="#f3e7dc"/><stop offset="1" stop-color="#d5c0af"/></linearGradient></defs>
<rect width="512" height="512" fill="url(#paper)"/>
<g transform="translate(${room} ${room}) scale(${scale})">
<path d="M44 132 480 150 454 196 484 238 450 288 482 330 456 394 52 376 30 322 58 272 24 226 54 178z" fill="#8a7462" opacity=".45" transform="translate(16 12)"/>
<path d="M44 132 480 150 454 196 484 238 450 288 482 330 456 394 52 376 30 322 58 272 24 226 54 178z" fill="#f7e7b4"/>
<path d="M262 141 480 150 454 196 484 238 450 288 482 330 456 394 246 385z" fill="#0c3b32"/>
</g></svg>`;
};

/** The icons of the app: their names, and pixels a side. A maskable one keeps clear of the edge that is cut off. */
export const ICONS = { '180': 180, '192': 192, '512': 512, '512-maskable': 512 } as const;

export const drawIcon = (name: keyof typeof ICONS): Promise<Buffer> =>
  sharp(Buffer.from(drawing(name === '512-maskable' ? 80 : 0)))
    .resize(ICONS[name])
    .png({ palette: true, colours: 64, effort: 10, dither: 0 })
    .toBuffer();
