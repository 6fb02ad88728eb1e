/** Everything was calculated. */
export const DONE = 0;
/** A formula was not calculated, or the add-in itself failed. */
export const INCOMPLETE = 1;
/** Nothing was done, because of the command line, the file or the build. */
export const REFUSED = 2;
