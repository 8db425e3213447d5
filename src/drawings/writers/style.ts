import { HATCHES, LINE_STYLES } from "../conventions.ts";
import type { Fill, LineKind, Weight } from "../marks.ts";

/**
 * How a drawing looks as a file of its own: one table from which the style sheet in it is written.
 * Widths, dashes and hatches are the house's (after ISO 128); tones are paper and graphite. Nothing
 * rests on a tone alone.
 */
const GRAPHITE = "#232528";
const PENCIL = "#55585c";
const GROUND = "#ffffff";

const THIN_KINDS: ReadonlySet<LineKind> = new Set([
  "thin",
  "hatch",
  "hidden",
  "centre",
  "phantom",
  "rule-thin",
]);

const lineTone = (kind: LineKind): string => (THIN_KINDS.has(kind) ? PENCIL : GRAPHITE);

/** The tone of a fill; a hatch where the fill is one. */
export const FILL_TONES: Readonly<Record<Fill, string | "none" | "hatch">> = {
  none: "none",
  ink: GRAPHITE,
  paper: GROUND,
  mat: "#fdfcf8",
  "mat-lower": "#f1ede2",
  "bevel-head": "#b7b1a3",
  "bevel-left": "#cbc5b7",
  "bevel-right": "#f2eee4",
  "bevel-foot": "#fffdf7",
  "print-paper": "#f7f3e8",
  image: "#8b8a86",
  shadow: "#000000",
  wood: "#b99467",
  glazing: "#cfdcdc",
  mount: "#ebe5d6",
  backing: "#e3dccb",
  "hatch-out": "hatch",
  "hatch-section": "hatch",
  "hatch-waste": "hatch",
  "hatch-floor": "hatch",
};

export const WEIGHTS: Readonly<Record<Weight, string>> = {
  light: "font-weight:300",
  regular: "font-weight:400",
  semibold: "font-weight:600",
  bold: "font-weight:700",
  black: "font-weight:900",
  italic: "font-style:italic",
};

const SHADE = 0.26;
/** Both sides together, in millimetres. */
const HALO = 0.8;
const FACE = "'Source Sans 3','Source Sans Pro','Noto Sans',sans-serif";

/** The rules of the style sheet, for the kinds that a drawing uses and no other. */
export function styleSheet(
  lines: ReadonlySet<LineKind>,
  fills: ReadonlySet<Fill>,
  weights: ReadonlySet<Weight>,
): string {
  const lineRules = Object.entries(LINE_STYLES).flatMap(([kind, { width, dashes }]) => {
    const known = [...lines].find((each) => each === kind);
    if (known === undefined) return [];
    const dash = dashes.length === 0 ? "" : `;stroke-dasharray:${dashes.join(" ")}`;
    return [`.${kind}{stroke:${lineTone(known)};stroke-width:${width}${dash}}`];
  });
  const fillRules = Object.entries(FILL_TONES).flatMap(([kind, tone]) => {
    if (tone === "none" || ![...fills].some((each) => each === kind)) return [];
    const shade = kind === "shadow" ? `;fill-opacity:${SHADE}` : "";
    return [`.f-${kind}{fill:${tone === "hatch" ? `url(#${kind})` : tone}${shade}}`];
  });
  const weightRules = Object.entries(WEIGHTS).flatMap(([weight, rule]) =>
    [...weights].some((each) => each === weight) ? [`.${weight}{${rule}}`] : [],
  );
  return [
    "path,circle{fill:none}",
    ...lineRules,
    ...fillRules,
    ...(weights.size === 0
      ? []
      : [
          `text{font-family:${FACE};font-variant-numeric:tabular-nums lining-nums;fill:${GRAPHITE}}`,
          `.halo{paint-order:stroke;stroke-linejoin:round;stroke:${GROUND};stroke-width:${HALO}}`,
          `.on-ink{fill:${GROUND}}`,
        ]),
    ...weightRules,
  ].join("");
}

/** The hatches that a drawing uses, as patterns. */
export function hatchPatterns(fills: ReadonlySet<Fill>): string {
  return [...fills]
    .flatMap((fill) => {
      const hatch = HATCHES[fill];
      if (!hatch) return [];
      const { spacing, crossed } = hatch;
      const middle = spacing / 2;
      const cross = crossed ? `M0 ${middle}H${spacing}` : "";
      return [
        `<pattern id="${fill}" width="${spacing}" height="${spacing}" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">` +
          `<path d="M${middle} 0V${spacing}${cross}" stroke="${PENCIL}" stroke-width="${LINE_STYLES.hatch.width}"/></pattern>`,
      ];
    })
    .toSorted()
    .join("");
}
