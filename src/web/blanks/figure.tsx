import {
  exactFigure,
  type Figure,
  figureOf,
  type Length,
  type Rounding,
  type Ruler,
  type Unit,
} from "../../lengths/index.ts";
import { setFigure } from "./set-length.ts";

/** A figure that never breaks from its fraction or its unit. */
export function FigureText({ figure, unit = true }: { readonly figure: Figure; readonly unit?: boolean }) {
  const { whole, fraction } = setFigure(figure);
  return (
    <span class="together">
      {whole}
      {whole !== "" && fraction !== "" ? "\u2009" : ""}
      {fraction !== "" && <span class="fraction">{fraction}</span>}
      {unit && `\u00a0${figure.unit}`}
    </span>
  );
}

/** A length on a ruler, rounded the named way. */
export const OnRuler = (props: {
  readonly length: Length;
  readonly ruler: Ruler;
  readonly rounding?: Rounding;
  readonly unit?: boolean;
}) => <FigureText figure={figureOf(props.length, props.ruler, props.rounding)} unit={props.unit ?? true} />;

export const Exactly = (props: {
  readonly length: Length;
  readonly inUnit: Unit;
  readonly unit?: boolean;
}) => <FigureText figure={exactFigure(props.length, props.inUnit)} unit={props.unit ?? true} />;
