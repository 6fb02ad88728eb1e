/** The text of a file, which webpack puts into the script. */
declare module "*?raw" {
  const text: string;
  export default text;
}
