/** A day or a year for which nothing is published yet: the sheet is to show `#N/A`. */
export class NoFigure extends RangeError {}
