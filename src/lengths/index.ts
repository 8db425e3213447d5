export * from "./length.ts";
export { inBytes, Pen } from "./pen.ts";
export {
  exactFigure,
  type Figure,
  figureOf,
  figureText,
  fineRuler,
  printExact,
  printLength,
  type Ruler,
} from "./printing.ts";
export { Repeated } from "./repeated.ts";
export { type LengthFault, type LengthRead, readAnyLength, readLength, type Unit } from "./reading.ts";
export * from "./writing.ts";
