/**
 * A spreadsheet takes a cell of a CSV file that begins with one of these for a formula and carries it out. An
 * apostrophe before it makes it a text; a text that begins so already gets one more, so that taking one away
 * always gives back what was there.
 */
const LIKE_FORMULA = /^'*[=+\-@\t\r\n]/;

/** A plain negative number is no formula. */
const NEGATIVE = /^-\d+(?:[.,]\d+)?$/;

export const withMark = (cell: string): string =>
  LIKE_FORMULA.test(cell) && !NEGATIVE.test(cell) ? `'${cell}` : cell;

export const withoutMark = (cell: string): string =>
  cell.startsWith("'") && LIKE_FORMULA.test(cell) ? cell.slice(1) : cell;
