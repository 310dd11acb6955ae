/**
 * Countries by the time zones of their devices, as the time zone database names them; a name that ends with a stroke
 * stands for all below it, and the longest that fits counts. EU is all of Europe that has no line of its own.
 */
const ZONES: Readonly<Record<string, string>> = {
  US: 'America/New_York America/Detroit America/Kentucky/ America/Indiana/ America/Indianapolis America/Louisville America/Chicago America/Menominee America/North_Dakota/ America/Denver America/Boise America/Phoenix America/Los_Angeles America/Anchorage America/Juneau America/Sitka America/Metlakatla America/Yakutat America/Nome America/Adak America/Puerto_Rico America/St_Thomas Pacific/Honolulu Pacific/Guam Pacific/Saipan Pacific/Pago_Pago US/',
  CA: 'America/St_Johns America/Halifax America/Glace_Bay America/Moncton America/Goose_Bay America/Toronto America/Montreal America/Nipigon America/Thunder_Bay America/Atikokan America/Blanc-Sablon America/Iqaluit America/Rankin_Inlet America/Resolute America/Winnipeg America/Rainy_River America/Regina America/Swift_Current America/Edmonton America/Cambridge_Bay America/Yellowknife America/Inuvik America/Vancouver America/Creston America/Dawson America/Dawson_Creek America/Fort_Nelson America/Whitehorse Canada/',
  GB: 'Europe/London Europe/Belfast Europe/Isle_of_Man Europe/Jersey Europe/Guernsey GB',
  IE: 'Europe/Dublin',
  AT: 'Europe/Vienna',
  CH: 'Europe/Zurich Europe/Vaduz',
  EU: 'Europe/ Atlantic/Canary Atlantic/Madeira Atlantic/Azores Atlantic/Reykjavik Asia/Nicosia',
  AU: 'Australia/ Antarctica/Macquarie',
  NZ: 'Pacific/Auckland Pacific/Chatham NZ',
};

const fitOf = (zone: string, name: string): number =>
  zone === name || (name.endsWith('/') && zone.startsWith(name)) ? name.length : 0;

/** The country of a time zone; nothing where it is none of these. */
const regionOfZone = (zone: string): string | undefined => {
  const [best] = Object.entries(ZONES)
    .map(([region, names]) => ({
      region,
      fit: Math.max(...names.split(' ').map((name) => fitOf(zone, name))),
    }))
    .toSorted((one, other) => other.fit - one.fit);
  return best?.fit ? best.region : undefined;
};

/** `en-US`, `de_AT`, `zh-Hant-TW`: some systems put more behind it than a language tag may have. */
const WITH_REGION = /^[a-z]{2,3}(?:[-_][a-z]{4})?[-_]([a-z]{2})(?![a-z])/i;
const regionOfLanguage = (language: string): string | undefined =>
  WITH_REGION.exec(language)?.[1]?.toUpperCase();

/**
 * The country where a device seems to be, as ISO 3166-1 codes it: by its time zone, since it is dialed where one stands,
 * else by the first of its languages that names a country.
 */
export const regionOf = (zone: string, languages: readonly string[]): string | undefined =>
  // A zone that is told and stands nowhere here is of another country, whatever the language.
  zone.includes('/') && !zone.startsWith('Etc/')
    ? regionOfZone(zone)
    : (regionOfZone(zone) ?? languages.map(regionOfLanguage).find((one) => one !== undefined));
