import type { ComponentChildren } from "preact";
import type { Drawing, Fill, Mark, Run, Weight } from "../../drawings/index.ts";
import type { Point } from "../../geometry/index.ts";
import { addressOfPicture } from "../state/pictures.ts";
import { px } from "./pixels.ts";

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
}

interface Pen {
  readonly name: string;
  readonly lit: readonly string[];
}

/** One drawing's marks as SVG, in pixels at the size at which it was laid out; it is never scaled afterwards. */
export function Drawn(props: DrawnProps) {
  const { drawing, name, label, children } = props;
  const [width, height] = [px(drawing.width), px(drawing.height)];
  const pen: Pen = { name, lit: props.lit ?? [] };
  const point = props.point;
  const role = children === undefined ? "img" : "group";
  return (
    <svg
      class={["drawing", props.class, props.unread === true ? "unread" : ""].filter(Boolean).join(" ")}
      viewBox={`0 0 ${width} ${height}`}
      width={width}
      height={height}
      {...(props.hidden === true ? { "aria-hidden": "true" } : { role, "aria-label": label })}
      onPointerOver={point && ((event) => point(partOf(event.target)))}
      onPointerLeave={point && (() => point(null))}
    >
      <Hatching marks={drawing.marks} name={name} />
      {drawing.marks.map((mark, index) => drawn(mark, pen, String(index)))}
      {children}
    </svg>
  );
}

const partOf = (target: EventTarget | null): string | null =>
  target instanceof Element ? (target.closest("[data-part]")?.getAttribute("data-part") ?? null) : null;

/** Only the hatchings that this drawing uses. */
function Hatching({ marks, name }: { readonly marks: readonly Mark[]; readonly name: string }) {
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
            key={fill}
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

const pathOf = (points: readonly Point[], closed: boolean): string => {
  let path = "";
  for (const point of points) path += `${path === "" ? "M" : "L"}${px(point.x)} ${px(point.y)}`;
  return closed ? `${path}Z` : path;
};

const fillOf = (fill: Fill, { name }: Pen): { readonly class: string; readonly fill?: string } =>
  HATCHES[fill] === undefined ? { class: `fill-${fill}` } : { class: "", fill: `url(#${name}-${fill})` };

function drawn(mark: Mark, pen: Pen, key: string): ComponentChildren {
  switch (mark.kind) {
    case "line":
      return <path key={key} class={`line line-${mark.line}`} d={pathOf([mark.from, mark.to], false)} />;
    case "polyline":
      return <path key={key} class={`line line-${mark.line}`} d={pathOf(mark.points, false)} />;
    case "area": {
      const outline = [mark.points, ...(mark.holes ?? [])].map((points) => pathOf(points, true)).join("");
      const { class: fill, ...pattern } = fillOf(mark.fill, pen);
      const line = mark.line === null ? "" : `line line-${mark.line} `;
      return (
        <path key={key} class={line + fill} {...stylePattern(pattern.fill)} fill-rule="evenodd" d={outline} />
      );
    }
    case "circle": {
      const { class: fill, ...pattern } = fillOf(mark.fill, pen);
      const line = mark.line === null ? "" : `line line-${mark.line} `;
      return (
        <circle
          key={key}
          class={line + fill}
          {...stylePattern(pattern.fill)}
          cx={px(mark.centre.x)}
          cy={px(mark.centre.y)}
          r={px(mark.radius)}
        />
      );
    }
    case "arrowhead": {
      const size = px(mark.size);
      const half = size / 6;
      return (
        <path
          key={key}
          class="arrowhead"
          d={`M0 0L${-size} ${-half}V${half}Z`}
          transform={`translate(${px(mark.at.x)} ${px(mark.at.y)}) rotate(${mark.degrees})`}
        />
      );
    }
    case "text":
      return drawnText(mark, key);
    case "picture":
      return drawnPicture(mark, pen, key);
    case "group":
      return (
        <g
          key={key}
          id={`${pen.name}-${mark.name}`}
          data-part={mark.name}
          class={pen.lit.includes(mark.name) ? "part-lit" : undefined}
        >
          {mark.marks.map((inner, index) => drawn(inner, pen, String(index)))}
        </g>
      );
  }
}

/** A pattern is named through a property, where the fill's own rule of the style sheet cannot overrule it. */
const stylePattern = (fill: string | undefined): { readonly style?: { readonly fill: string } } =>
  fill === undefined ? {} : { style: { fill } };

function drawnText(mark: Extract<Mark, { kind: "text" }>, key: string): ComponentChildren {
  const [x, y] = [px(mark.at.x), px(mark.at.y)];
  const size = px(mark.size);
  const classes = [mark.halo === true ? "halo" : "", mark.onInk === true ? "on-ink" : ""].filter(Boolean);
  return (
    <text
      key={key}
      x={x}
      y={y}
      class={classes.join(" ") || undefined}
      text-anchor={mark.anchor}
      font-size={size}
      font-weight={WEIGHTS[mark.weight]}
      transform={mark.degrees === undefined ? undefined : `rotate(${mark.degrees} ${x} ${y})`}
    >
      {mark.runs.map((run, index) => drawnRun(run, index))}
    </text>
  );
}

function drawnRun(run: Run, key: number): ComponentChildren {
  const weight = run.weight === undefined ? undefined : WEIGHTS[run.weight];
  const size = run.size === undefined ? undefined : px(run.size);
  if (run.kind === "text" || run.numerator === "") {
    return (
      <tspan key={key} font-weight={weight} font-size={size}>
        {run.kind === "text" ? run.text : run.whole}
      </tspan>
    );
  }
  // The whole stands at the text's own size; a run's size is its fraction's, so that sixteenths can be read.
  return (
    <tspan key={key} font-weight={weight}>
      {run.whole}
      {run.whole === "" ? "" : "\u2009"}
      <tspan font-size={size}>{`${run.numerator}\u2044${run.denominator}`}</tspan>
    </tspan>
  );
}

function drawnPicture(mark: Extract<Mark, { kind: "picture" }>, pen: Pen, key: string): ComponentChildren {
  const address = addressOfPicture(mark.source);
  // Before a kept picture is here, and where it is not, its place stands as any image without one.
  if (address === undefined) return <path key={key} class="fill-image" d={pathOf(mark.clip ?? [], true)} />;
  const [x, y, width, height] = [px(mark.left), px(mark.top), px(mark.width), px(mark.height)];
  const clip = mark.clip === undefined ? undefined : `${pen.name}-clip-${key}`;
  const turn =
    mark.degrees === undefined ? undefined : `rotate(${mark.degrees} ${x + width / 2} ${y + height / 2})`;
  return (
    <g key={key} clip-path={clip === undefined ? undefined : `url(#${clip})`}>
      {clip !== undefined && (
        <clipPath id={clip}>
          <path d={pathOf(mark.clip ?? [], true)} />
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
