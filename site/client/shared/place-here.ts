import { regionOf } from './zones.ts';

/** The one of these where this device seems to be; nothing where it can not be told, or is none of them. */
export const placeHere = <P extends { readonly regions: readonly string[] }>(
  places: readonly P[],
): P | undefined => {
  const region = regionOf(Intl.DateTimeFormat().resolvedOptions().timeZone ?? '', navigator.languages);
  return places.find(({ regions }) => region !== undefined && regions.includes(region));
};
