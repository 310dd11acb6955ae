/** The address of a font that the build writes. */
declare module '*.woff2?url' {
  const url: string;
  export default url;
}
