/** Nothing is published yet for a date or a year: the sheet must show `#N/A`. */
export class NoFigure extends RangeError {}
