import { useRef } from "preact/hooks";
import { PIXEL } from "../../drawings/index.ts";
import type { Point } from "../../geometry/index.ts";
import { figureOf, figureText, type Length, larger, type Ruler, smaller } from "../../lengths/index.ts";
import { setFigure } from "../blanks/set-length.ts";
import { snapped, stepped, strideOf } from "../blanks/step.ts";
import { px } from "./pixels.ts";

interface Props {
  readonly id: string;
  readonly label: string;
  /** Where it stands on the drawing. */
  readonly at: Point;
  readonly slides: "x" | "y";
  /** 1 where dragging right or down makes the value larger, -1 where it makes it smaller. */
  readonly way: 1 | -1;
  readonly value: Length;
  readonly least: Length;
  readonly most: Length;
  readonly scale: number;
  readonly ruler: Ruler;
  readonly controls: string;
  /** The figure is shown beside the grip while it moves. */
  readonly moving: boolean;
  readonly follow: (value: Length, free: boolean) => void;
  readonly keep: () => void;
  readonly putBack: () => void;
}

/** An edge that can be dragged and that is a slider by the keys: it snaps to the user's ruler, with Alt to the finest step. */
export function Grip(props: Props) {
  const { label, at, slides, value, least, most, ruler } = props;
  const grasp = useRef<{ readonly at: number; readonly value: Length } | null>(null);
  const within = (length: Length): Length => larger(least, smaller(most, length));
  const place = (event: PointerEvent): number => (slides === "x" ? event.clientX : event.clientY);
  const { whole, fraction } = setFigure(figureOf(value, ruler));

  return (
    <g
      id={props.id}
      class={`grip-of ${slides === "y" ? "upright" : "level"}`}
      transform={`translate(${px(at.x)} ${px(at.y)})`}
      role="slider"
      tabIndex={0}
      aria-label={label}
      aria-orientation={slides === "y" ? "vertical" : "horizontal"}
      aria-valuemin={least / PIXEL}
      aria-valuemax={most / PIXEL}
      aria-valuenow={value / PIXEL}
      aria-valuetext={figureText(figureOf(value, ruler))}
      aria-controls={props.controls}
      onPointerDown={(event) => {
        if (event.button !== 0) return;
        event.preventDefault();
        event.currentTarget.focus();
        event.currentTarget.setPointerCapture(event.pointerId);
        grasp.current = { at: place(event), value };
      }}
      onPointerMove={(event) => {
        const from = grasp.current;
        if (from === null) return;
        const moved = ((place(event) - from.at) * PIXEL) / props.scale;
        props.follow(within(snapped(from.value + props.way * moved, ruler, event.altKey)), event.altKey);
      }}
      onPointerUp={() => {
        if (grasp.current !== null) props.keep();
        grasp.current = null;
      }}
      onPointerCancel={() => {
        grasp.current = null;
        props.putBack();
      }}
      onBlur={() => props.keep()}
      onKeyDown={(event) => {
        const way = WAYS[event.key];
        if (way !== undefined) {
          event.preventDefault();
          props.follow(within(stepped(value, way, strideOf(event), ruler, least)), event.altKey);
        } else if (event.key === "Enter") props.keep();
        else if (event.key === "Escape") {
          grasp.current = null;
          props.putBack();
        }
      }}
    >
      <rect class="grip-hit" x={-14} y={-14} width={28} height={28} />
      <rect class="grip-ring" x={-8} y={-8} width={16} height={16} fill="none" />
      <rect class="grip" x={-4} y={-4} width={8} height={8} />
      {props.moving && (
        <text class="halo grip-figure" x={14} y={-10}>
          {whole}
          {whole !== "" && fraction !== "" ? "\u2009" : ""}
          {fraction}
        </text>
      )}
    </g>
  );
}

const WAYS: Readonly<Record<string, 1 | -1>> = { ArrowUp: 1, ArrowRight: 1, ArrowDown: -1, ArrowLeft: -1 };
