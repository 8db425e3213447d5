import type { Size } from "../../geometry/index.ts";
import { exactFigure, type Figure, type Length, type Unit } from "../../lengths/index.ts";

const THIN_SPACE = "\u2009";
const FRACTION_SLASH = "\u2044";

/** A figure set for reading: whole, thin space, numerator, fraction slash; the typeface forms the fraction by itself. */
export function setFigure(figure: Figure): { readonly whole: string; readonly fraction: string } {
  const whole = figure.decimals === "" ? figure.whole : `${figure.whole}.${figure.decimals}`;
  return {
    whole: `${figure.approximate ? "≈\u00a0" : ""}${figure.negative ? "\u2212" : ""}${whole}`,
    fraction: figure.numerator === "" ? "" : figure.numerator + FRACTION_SLASH + figure.denominator,
  };
}

/** A figure as it stands in a sentence, its unit kept with it. */
export function figureInSentence(figure: Figure): string {
  const { whole, fraction } = setFigure(figure);
  return `${[whole, fraction].filter((part) => part !== "").join(THIN_SPACE)}\u00a0${figure.unit}`;
}

/** The exact length as it stands in a blank that is not open. */
export function setText(length: Length, unit: Unit): string {
  const { whole, fraction } = setFigure(exactFigure(length, unit));
  return [whole, fraction].filter((part) => part !== "").join(THIN_SPACE);
}

/** The exact length as it is typed: `1 3/4`, without its unit where that is the document's own. */
export function typedText(length: Length, unit: Unit): string {
  const figure = exactFigure(length, unit);
  const fraction = figure.numerator === "" ? "" : `${figure.numerator}/${figure.denominator}`;
  const whole = figure.decimals === "" ? figure.whole : `${figure.whole}.${figure.decimals}`;
  const number = [whole, fraction].filter((part) => part !== "").join(" ");
  return figure.unit === unit ? number : `${number} ${figure.unit}`;
}

/** A size set for reading, its unit once. */
export function sizeText({ width, height }: Size, unit: Unit): string {
  const [across, down] = [exactFigure(width, unit), exactFigure(height, unit)];
  const said = ({ whole, fraction }: ReturnType<typeof setFigure>): string =>
    [whole, fraction].filter((part) => part !== "").join("\u2009");
  const first = across.unit === down.unit ? "" : ` ${across.unit}`;
  return `${said(setFigure(across))}${first} × ${said(setFigure(down))} ${down.unit}`;
}

/** A length as it is spoken of in a sentence, its unit kept with it. */
export const saidLength = (length: Length, unit: Unit): string => figureInSentence(exactFigure(length, unit));
