import type { ComponentChildren, VNode } from "preact";
import {
  arrowCorners,
  type Drawing,
  type Fill,
  type LineKind,
  type Mark,
  type Run,
  type Weight,
} from "../../drawings/index.ts";
import type { RealPoint } from "../../geometry/index.ts";
import { addressOfPicture } from "../state/pictures.ts";
import { px } from "./pixels.ts";
import { useUnchanged } from "./unchanged.ts";

const WEIGHTS: Readonly<Record<Weight, number>> = {
  light: 300,
  regular: 500,
  semibold: 600,
  bold: 700,
  black: 800,
  italic: 400,
};

/** Spacing of hatch lines in pixels; waste is crossed. */
const HATCHES: Readonly<Partial<Record<Fill, { readonly spacing: number; readonly crossed: boolean }>>> = {
  "hatch-out": { spacing: 9, crossed: false },
  "hatch-section": { spacing: 7, crossed: false },
  "hatch-waste": { spacing: 6, crossed: true },
  "hatch-floor": { spacing: 5, crossed: false },
};

interface DrawnProps {
  readonly drawing: Drawing;
  /** Short and unlike every other on the page: ids of parts and patterns begin with it. */
  readonly name: string;
  readonly label: string;
  /** Parts drawn heavier, by the names of their groups. */
  readonly lit?: readonly string[];
  readonly unread?: boolean;
  readonly point?: (part: string | null) => void;
  readonly class?: string;
  /** Grips, drawn over the marks; with them the drawing is a group, without it is one image. */
  readonly children?: ComponentChildren;
  readonly hidden?: boolean;
  /** How many times larger than it was laid out it is shown: a paper's drawing, whose letters are read from nearer by. */
  readonly larger?: number;
}

interface Pen {
  readonly name: string;
  readonly lit: readonly string[];
  /** The groups that a mark stands in: ids within a drawing are told apart by it. */
  readonly within: string;
  /** Places are counted from here: a group that has only moved changes nothing but where it begins. */
  readonly from: RealPoint;
}

const ORIGIN: RealPoint = { x: 0, y: 0 };

/** A place in pixels from where the pen counts. */
const placeOf = ({ x, y }: RealPoint, { from }: Pen): RealPoint => ({ x: px(x - from.x), y: px(y - from.y) });

/** Where the first mark of a group begins. */
function beginning(mark: Mark | undefined): RealPoint {
  switch (mark?.kind) {
    case "line":
      return mark.from;
    case "polyline":
    case "area":
      return mark.points[0] ?? ORIGIN;
    case "text":
    case "arrowhead":
      return mark.at;
    default:
      return ORIGIN;
  }
}

/** One drawing's marks as SVG, in pixels at the size at which it was laid out; it is never scaled afterwards. */
export function Drawn(props: DrawnProps) {
  const { drawing, name, label, children, larger = 1 } = props;
  const [width, height] = [px(drawing.width), px(drawing.height)];
  const pen: Pen = { name, lit: props.lit ?? [], within: "", from: ORIGIN };
  const point = props.point;
  const role = children === undefined ? "img" : "group";
  const nodes = useUnchanged([hatching(drawing.marks, name), ...drawnAll(drawing.marks, pen)]);
  return (
    <svg
      class={["drawing", props.class, props.unread === true ? "unread" : ""].filter(Boolean).join(" ")}
      viewBox={`0 0 ${width} ${height}`}
      width={width * larger}
      height={height * larger}
      {...(props.hidden === true ? { "aria-hidden": "true" } : { role, "aria-label": label })}
      onPointerOver={point && ((event) => point(partOf(event.target)))}
      onPointerLeave={point && (() => point(null))}
    >
      {nodes}
      {children}
    </svg>
  );
}

const partOf = (target: EventTarget | null): string | null =>
  target instanceof Element ? (target.closest("[data-part]")?.getAttribute("data-part") ?? null) : null;

/** Only the hatchings that this drawing uses. */
function hatching(marks: readonly Mark[], name: string): VNode | null {
  const used = new Set<Fill>();
  const look = (mark: Mark): void => {
    if (mark.kind === "group") mark.marks.forEach(look);
    else if ((mark.kind === "area" || mark.kind === "circle") && HATCHES[mark.fill]) used.add(mark.fill);
  };
  marks.forEach(look);
  if (used.size === 0) return null;
  return (
    <defs>
      {[...used].map((fill) => {
        const { spacing, crossed } = HATCHES[fill] ?? { spacing: 9, crossed: false };
        return (
          <pattern
            id={`${name}-${fill}`}
            width={spacing}
            height={spacing}
            patternUnits="userSpaceOnUse"
            patternTransform="rotate(45)"
          >
            <path class="hatching" d={crossed ? `M0 0V${spacing}M0 0H${spacing}` : `M0 0V${spacing}`} />
          </pattern>
        );
      })}
    </defs>
  );
}

const pathOf = (points: readonly RealPoint[], closed: boolean, pen: Pen): string => {
  let path = "";
  for (const point of points) {
    const { x, y } = placeOf(point, pen);
    path += `${path === "" ? "M" : "L"}${x} ${y}`;
  }
  return closed ? `${path}Z` : path;
};

const pairsOf = (points: readonly RealPoint[], pen: Pen): string =>
  points.map((point) => Object.values(placeOf(point, pen)).join()).join(" ");

/** All rings of an area, the holes after its own. */
const ringsOf = (mark: Extract<Mark, { kind: "area" }>, pen: Pen): string =>
  [mark.points, ...(mark.holes ?? [])].map((points) => pathOf(points, true, pen)).join("");

const lineClass = (line: LineKind | null): string => (line === null ? "" : `line line-${line}`);

/** What is drawn by its path alone: the same by itself or in one path with its like. */
interface Trace {
  readonly look: string;
  readonly path: string;
}

/** Marks in their order; lines of one kind that follow one another are one path, and so are arrowheads. */
function drawnAll(marks: readonly Mark[], pen: Pen): readonly VNode[] {
  const nodes: VNode[] = [];
  let trace: Trace = { look: "", path: "" };
  const finish = (): void => {
    if (trace.path !== "") nodes.push(<path class={trace.look} d={trace.path} />);
  };
  for (const mark of marks) {
    const next = drawn(mark, pen);
    if ("path" in next && next.look === trace.look) trace = { ...next, path: trace.path + next.path };
    else {
      finish();
      if ("path" in next) trace = next;
      else {
        trace = { look: "", path: "" };
        nodes.push(next);
      }
    }
  }
  finish();
  return nodes;
}

/** Class and style that fill an area. A pattern is named in its style, where the fill's own rule of the style sheet cannot overrule it. */
const filled = (mark: { readonly fill: Fill; readonly line: LineKind | null }, { name }: Pen) => {
  const hatched = HATCHES[mark.fill] !== undefined;
  return {
    class: `${lineClass(mark.line)}${hatched ? "" : ` fill-${mark.fill}`}`,
    style: hatched ? `fill:url(#${name}-${mark.fill})` : undefined,
  };
};

function drawn(mark: Mark, pen: Pen): VNode | Trace {
  switch (mark.kind) {
    case "line":
      return { look: lineClass(mark.line), path: pathOf([mark.from, mark.to], false, pen) };
    case "polyline":
      return { look: lineClass(mark.line), path: pathOf(mark.points, false, pen) };
    case "arrowhead":
      return { look: "arrowhead", path: pathOf(arrowCorners(mark), true, pen) };
    case "area":
      if (mark.fill === "none") return { look: lineClass(mark.line), path: ringsOf(mark, pen) };
      // Points are no property of the style: where they alone change, no style is reckoned anew.
      return mark.holes === undefined ? (
        <polygon {...filled(mark, pen)} fill-rule="evenodd" points={pairsOf(mark.points, pen)} />
      ) : (
        <path {...filled(mark, pen)} fill-rule="evenodd" d={ringsOf(mark, pen)} />
      );
    case "circle": {
      const { x, y } = placeOf(mark.centre, pen);
      return <circle {...filled(mark, pen)} cx={x} cy={y} r={px(mark.radius)} />;
    }
    case "text":
      return drawnText(mark, pen);
    case "picture":
      return drawnPicture(mark, pen);
    case "group": {
      const from = beginning(mark.marks[0]);
      const { x, y } = placeOf(from, pen);
      return (
        <g
          id={`${pen.name}-${mark.name}`}
          data-part={mark.name}
          class={pen.lit.includes(mark.name) ? "part-lit" : undefined}
          transform={`translate(${x} ${y})`}
        >
          {drawnAll(mark.marks, { ...pen, from, within: `${pen.within}-${mark.name}` })}
        </g>
      );
    }
  }
}

function drawnText(mark: Extract<Mark, { kind: "text" }>, pen: Pen): VNode {
  const { x, y } = placeOf(mark.at, pen);
  const size = px(mark.size);
  const classes = [mark.halo === true ? "halo" : "", mark.onInk === true ? "on-ink" : ""].filter(Boolean);
  return (
    <text
      x={x}
      y={y}
      class={classes.join(" ") || undefined}
      text-anchor={mark.anchor}
      font-size={size}
      font-weight={WEIGHTS[mark.weight]}
      transform={mark.degrees === undefined ? undefined : `rotate(${mark.degrees} ${x} ${y})`}
    >
      {mark.runs.map(drawnRun)}
    </text>
  );
}

function drawnRun(run: Run): VNode {
  const weight = run.weight === undefined ? undefined : WEIGHTS[run.weight];
  const size = run.size === undefined ? undefined : px(run.size);
  if (run.kind === "text" || run.numerator === "") {
    return (
      <tspan font-weight={weight} font-size={size}>
        {run.kind === "text" ? run.text : run.whole}
      </tspan>
    );
  }
  // The whole stands at the text's own size; a run's size is its fraction's, so that sixteenths can be read.
  return (
    <tspan font-weight={weight}>
      {run.whole}
      {run.whole === "" ? "" : "\u2009"}
      <tspan font-size={size}>{`${run.numerator}\u2044${run.denominator}`}</tspan>
    </tspan>
  );
}

function drawnPicture(mark: Extract<Mark, { kind: "picture" }>, pen: Pen): VNode {
  const address = addressOfPicture(mark.source);
  // Before a kept picture is here, and where it is not, its place stands as any image without one.
  if (address === undefined) return <path class="fill-image" d={pathOf(mark.clip ?? [], true, pen)} />;
  const { x, y } = placeOf({ x: mark.left, y: mark.top }, pen);
  const [width, height] = [px(mark.width), px(mark.height)];
  const clip = mark.clip === undefined ? undefined : `${pen.name}${pen.within}-clip`;
  const turn =
    mark.degrees === undefined ? undefined : `rotate(${mark.degrees} ${x + width / 2} ${y + height / 2})`;
  return (
    <g clip-path={clip === undefined ? undefined : `url(#${clip})`}>
      {clip !== undefined && (
        <clipPath id={clip}>
          <path d={pathOf(mark.clip ?? [], true, pen)} />
        </clipPath>
      )}
      <image
        class="pictured"
        href={address}
        x={x}
        y={y}
        width={width}
        height={height}
        preserveAspectRatio="none"
        transform={turn}
      />
    </g>
  );
}
