/** A style sheet as text, which the build makes small. */
declare module '*.css?inline' {
  const css: string;
  export default css;
}
