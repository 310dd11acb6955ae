import type { JobCard } from '#engine/model/job-card.ts';
import { newId } from '../../shared/id.ts';
import type { KeptPhoto } from '../store/records.ts';

/** The longer side of a kept photo, pixels: enough to judge a flaw, a tenth of what a phone takes. */
const LONGEST = 1600;
const QUALITY = 0.82;

export type ScaledPhoto = {
  readonly entry: JobCard['photos'][number];
  readonly photo: KeptPhoto;
};

const blobOf = (canvas: HTMLCanvasElement, type: string): Promise<Blob | null> =>
  new Promise((done) => canvas.toBlob(done, type, QUALITY));

/** What was chosen is no picture that this browser can read. */
export class NoPicture extends Error {}

const pictureIn = async (file: Blob): Promise<ImageBitmap> => {
  try {
    return await createImageBitmap(file, { imageOrientation: 'from-image' });
  } catch (error) {
    if (error instanceof DOMException) throw new NoPicture(error.message, { cause: error });
    throw error;
  }
};

/**
 * Scales a picture down and draws it anew, so that no place or device that the camera noted stays in it. Throws a
 * `NoPicture`.
 */
export const scalePhoto = async (file: Blob, card: string, now: number): Promise<ScaledPhoto> => {
  const picture = await pictureIn(file);
  const scale = Math.min(1, LONGEST / Math.max(picture.width, picture.height));
  const [width, height] = [picture.width, picture.height].map((side) =>
    Math.max(1, Math.round(side * scale)),
  );
  const canvas = Object.assign(document.createElement('canvas'), { width, height });
  canvas.getContext('2d')?.drawImage(picture, 0, 0, canvas.width, canvas.height);
  picture.close();
  // A browser that can not write WebP hands back PNG, which would be ten times larger.
  const webp = await blobOf(canvas, 'image/webp');
  const blob = webp?.type === 'image/webp' ? webp : await blobOf(canvas, 'image/jpeg');
  if (!blob) throw new NoPicture('this browser writes no pictures');
  const id = newId();
  return {
    entry: { id, takenAt: now, width: canvas.width, height: canvas.height },
    photo: { id, card, type: blob.type, bytes: await blob.arrayBuffer() },
  };
};

/** As a data address: the page's policy shows no other pictures than its own and these. */
export const dataUrlOf = ({ type, bytes }: KeptPhoto): Promise<string> =>
  new Promise((done, failed) => {
    const reader = new FileReader();
    reader.onload = () => done(String(reader.result));
    reader.onerror = () => failed(reader.error);
    reader.readAsDataURL(new Blob([bytes], { type }));
  });

const DATA_URL = /^data:(image\/(?:jpeg|webp|png));base64,([A-Za-z0-9+/=]*)$/;

/** A photo out of a file of cards; nothing where it is none. */
export const photoOf = (id: string, card: string, address: string): KeptPhoto | undefined => {
  const [, type, text] = DATA_URL.exec(address) ?? [];
  if (!type || !text) return undefined;
  try {
    const bytes = Uint8Array.from(atob(text), (sign) => sign.charCodeAt(0));
    return { id, card, type, bytes: bytes.buffer };
  } catch (error) {
    if (error instanceof DOMException) return undefined;
    throw error;
  }
};
