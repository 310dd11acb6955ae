declare module 'psychrolib' {
  const psychrolib: {
    SI: number;
    SetUnitSystem(system: number): void;
    GetSatVapPres(celsius: number): number;
    GetTDewPointFromRelHum(celsius: number, relativeHumidity: number): number;
    GetTWetBulbFromRelHum(celsius: number, relativeHumidity: number, pascals: number): number;
    GetHumRatioFromRelHum(celsius: number, relativeHumidity: number, pascals: number): number;
  };
  export default psychrolib;
}

declare module 'culori' {
  export type Lab65 = { mode: 'lab65'; l: number; a: number; b: number };
  export function lab65(hex: string): Lab65;
  export function differenceCiede2000(): (one: Lab65, two: Lab65) => number;
}
