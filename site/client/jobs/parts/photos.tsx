import { useLayoutEffect, useState } from 'preact/hooks';
import { fitting, MOST_LETTERS, withPhoto } from '#engine/jobs.ts';
import type { CardPhoto, JobCard } from '#engine/model/job-card.ts';
import { counted } from '../../shared/counted.ts';
import { sayDateTime } from '../../shared/say-date.ts';
import { addPhoto, readPhotos, removePhoto } from '../store/index.ts';
import type { KeptPhoto } from '../store/records.ts';
import { Act } from '../views/controls.tsx';
import { useFrame } from '../views/frame.ts';
import type { CardHands } from '../views/hands.ts';
import { dataUrlOf, NoPicture, scalePhoto } from './photo.ts';

/** So many are taken on the page; a card that was put together of two may hold more. */
const MOST_ADDED = 60;

type PhotoProps = {
  readonly photo: CardPhoto;
  /** Nothing where the picture is not here. */
  readonly kept: KeptPhoto | undefined;
  /** Its place among several: before and after. */
  readonly place: string | undefined;
  readonly caption: (text: string) => Promise<unknown>;
  readonly takeAway: () => Promise<unknown>;
};

const Photo = ({ photo, kept, place, caption, takeAway }: PhotoProps) => {
  const [address, setAddress] = useState<string>();
  const [lost, setLost] = useState(!kept);
  useLayoutEffect(() => {
    setLost(!kept);
    if (kept) dataUrlOf(kept).then(setAddress, () => setLost(true));
  }, [kept]);
  const taken = sayDateTime(photo.takenAt);
  return (
    <li>
      {lost && <p class="lost">This photo cannot be shown: its picture is missing here.</p>}
      {!lost && (
        <img
          alt={photo.caption || `Photo of ${taken}`}
          width={photo.width}
          height={photo.height}
          src={address}
          onError={() => setLost(true)}
        />
      )}
      <p class="small">
        {place && <b>{place}, </b>}
        {taken}
      </p>
      <input
        type="text"
        value={photo.caption ?? ''}
        placeholder="What it shows"
        aria-label={`What the photo of ${taken} shows`}
        onChange={({ currentTarget }) => void caption(currentTarget.value.trim())}
      />
      <Act class="plain" act={takeAway}>
        Take the photo away
      </Act>
    </li>
  );
};

/** The first and the latest of several are what is compared. */
const placeOf = ({ takenAt }: CardPhoto, all: readonly CardPhoto[]): string | undefined => {
  const times = all.map((one) => one.takenAt);
  const [first, latest] = [Math.min(...times), Math.max(...times)];
  if (first === latest) return undefined;
  return takenAt === first ? 'First' : takenAt === latest ? 'Latest' : undefined;
};

/** The photos of a card, and the way to add one. They are on this device only. */
export const PhotoBoard = ({ card, hands }: { readonly card: JobCard; readonly hands: CardHands }) => {
  const frame = useFrame();
  const [kept, setKept] = useState<readonly KeptPhoto[]>();
  const ids = card.photos.map(({ id }) => id).join(' ');
  useLayoutEffect(() => {
    readPhotos(card.id).then(setKept, frame.trouble);
  }, [card.id, ids]);
  const room = Math.max(0, MOST_ADDED - card.photos.length);

  const caption = (photo: CardPhoto) => async (text: string) => {
    if (text.length > MOST_LETTERS.caption)
      return frame.say(
        `Not saved: the line below a photo takes ${MOST_LETTERS.caption} letters, and this has ${text.length}.`,
      );
    const { caption: _old, ...bare } = photo;
    return hands.now((there) => withPhoto(there, text ? { ...bare, caption: text } : bare, Date.now()));
  };
  const takeAway = (photo: CardPhoto) => async () => {
    const sure = await frame.ask({
      says: 'Take this photo away for good?',
      yes: 'Take it away',
      no: 'Keep it',
    });
    if (sure) await hands.run((seen) => removePhoto(card.id, photo.id, seen));
  };
  const add = async (files: readonly File[]) => {
    const left: string[] = [];
    const { taken, beyond } = fitting(card, 'photos', files, MOST_ADDED);
    for (const [index, file] of taken.entries()) {
      const now = Date.now();
      try {
        const { entry, photo } = await scalePhoto(file, card.id, now);
        if (await hands.run((seen) => addPhoto(photo, (there) => withPhoto(there, entry, now), seen)))
          continue;
        left.push(...taken.slice(index).map(({ name }) => name));
        break;
      } catch (error) {
        if (!(error instanceof NoPicture)) throw error;
        left.push(file.name);
      }
    }
    if (!left.length && !beyond.length) return;
    frame.say(
      <>
        {left.length > 0 &&
          `Not on the card, since they could not be read as pictures, or not be saved: ${left.join(', ')}. `}
        {beyond.length > 0 &&
          `Not on the card, since it takes ${MOST_ADDED} photos: ${beyond.map(({ name }) => name).join(', ')}. `}
        Keep them on your device.
      </>,
    );
  };
  return (
    <section>
      <h2>Photos</h2>
      {kept && card.photos.length > 0 && (
        <ul class="photos">
          {card.photos.map((photo) => (
            <Photo
              key={photo.id}
              photo={photo}
              kept={kept.find(({ id }) => id === photo.id)}
              place={placeOf(photo, card.photos)}
              caption={caption(photo)}
              takeAway={takeAway(photo)}
            />
          ))}
        </ul>
      )}
      {room > 0 && (
        <label class="quiet file">
          Add photos
          <input
            type="file"
            accept="image/*"
            multiple
            class="unseen"
            onChange={({ currentTarget }) => {
              const files = [...(currentTarget.files ?? [])];
              currentTarget.value = '';
              add(files).catch(frame.trouble);
            }}
          />
        </label>
      )}
      <p class="small">
        {room
          ? `Scaled down, kept on this device, never sent. Room for ${counted(room, 'photo')}.`
          : `This card is full: it takes ${MOST_ADDED} photos. Take one away to add another.`}
      </p>
    </section>
  );
};
