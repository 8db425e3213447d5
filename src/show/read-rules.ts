import {
  type LiftRule,
  type MatRule,
  type OuterRule,
  type Ratio,
  SIZE_LISTS,
  type WindowRule,
} from "../assembly/index.ts";
import type { Size } from "../geometry/index.ts";
import { ZERO } from "../lengths/index.ts";
import type { Habits } from "./practice.ts";
import type { Reader } from "./reader.ts";
import type { ComposeDocument } from "./schema.ts";

type Given<Key extends keyof ComposeDocument> = NonNullable<ComposeDocument[Key]>;

export function readWindow(
  reader: Reader,
  window: Given<"window">,
  practice: Pick<Habits, "overlap" | "margins" | "gap">,
): WindowRule {
  switch (window.show) {
    case "overlap":
      return {
        show: "overlap",
        overlap: reader.lengthOr("window.overlap", window.overlap, practice.overlap),
      };
    case "margins":
      return {
        show: "margins",
        top: reader.lengthOr("window.top", window.top, practice.margins.top),
        side: reader.lengthOr("window.side", window.side, practice.margins.side),
        foot: reader.lengthOr("window.foot", window.foot, practice.margins.foot),
      };
    case "sheet":
      return { show: "sheet", gap: reader.lengthOr("window.gap", window.gap, practice.gap) };
    case "typed":
      return {
        show: "typed",
        width: reader.size("window.width", window.width),
        height: reader.size("window.height", window.height),
      };
  }
}

export function readLift(reader: Reader, lift: Given<"lift">, practice: Pick<Habits, "lift">): LiftRule {
  switch (lift.rule) {
    case "none":
    case "optical":
      return { rule: lift.rule };
    case "fixed": {
      const usual = practice.lift.rule === "fixed" ? practice.lift.by : ZERO;
      return { rule: "fixed", by: reader.lengthOr("lift.by", lift.by, usual) };
    }
    case "ratio":
      return { rule: "ratio", foot: exactRatio(reader.number("lift.foot", lift.foot, 0, 100, "ratio")) };
  }
}

/** A decimal as it was typed, held exactly; one that is written with an exponent to twelve decimals. */
function exactRatio(value: number): Ratio {
  const digits = /^(\d+)(?:\.(\d+))?$/.exec(String(value));
  if (digits === null) return { over: BigInt(Math.round(value * 1e12)), under: 10n ** 12n };
  const decimals = digits[2] ?? "";
  return { over: BigInt(`${digits[1]}${decimals}`), under: 10n ** BigInt(decimals.length) };
}

export function readOuter(reader: Reader, outer: Given<"outer">, practice: Pick<Habits, "outer">): OuterRule {
  if ("borders" in outer) {
    return {
      kind: "borders",
      borders: {
        head: reader.length("outer.borders.head", outer.borders.head),
        side: reader.length("outer.borders.side", outer.borders.side),
        foot: reader.length("outer.borders.foot", outer.borders.foot),
      },
      standard: outer.standard === undefined ? null : readSizes(reader, "outer.standard", outer.standard),
    };
  }
  if ("smallest" in outer) {
    const usual = practice.outer.kind === "smallest" ? practice.outer.border : ZERO;
    return {
      kind: "smallest",
      sizes: readSizes(reader, "outer.smallest", outer.smallest),
      border: reader.lengthOr("outer.border", outer.border, usual),
      holdsSheet: outer.holdsSheet ?? false,
    };
  }
  return {
    kind: "size",
    width: reader.size("outer.width", outer.width),
    height: reader.size("outer.height", outer.height),
  };
}

type SizesGiven = Extract<Given<"outer">, { smallest: unknown }>["smallest"];

function readSizes(reader: Reader, field: string, sizes: SizesGiven): readonly Size[] {
  if (typeof sizes === "string") return SIZE_LISTS[sizes];
  return sizes.map((size, index) => {
    const at = `${field}.${index}`;
    if (typeof size === "string") return readSizeText(reader, at, size);
    const [width, height] = Array.isArray(size) ? size : [size.width, size.height];
    return { width: reader.size(`${at}.width`, width), height: reader.size(`${at}.height`, height) };
  });
}

/** "11 x 14 in": the unit after the second figure serves both. */
function readSizeText(reader: Reader, field: string, text: string): Size {
  const parts = text.split(/\s*[x×]\s*/i);
  const [width, height] = parts;
  if (width === undefined || height === undefined || parts.length !== 2) {
    reader.refuse(field, text, { kind: "size-list" });
    return { width: ZERO, height: ZERO };
  }
  const unit = /[a-z"']+\.?$/i.exec(height)?.[0] ?? "";
  const own = /[a-z"']\.?$/i.test(width) ? width : `${width}${unit === "" ? "" : ` ${unit}`}`;
  return { width: reader.size(field, own), height: reader.size(field, height) };
}

/** Degrees: a cut flatter than this is no bevel, and its width would leave the lengths that can be held. */
const FLATTEST = 0.01;

export function readMats(
  reader: Reader,
  mats: Given<"mats">,
  practice: Pick<Habits, "mats">,
): readonly MatRule[] {
  const usual = practice.mats[0];
  return mats.map((mat, index) => {
    const like = practice.mats[index] ?? usual;
    return {
      thickness: reader.lengthOr(`mats.${index}.thickness`, mat.thickness, like?.thickness ?? ZERO),
      bevel:
        mat.bevel === undefined
          ? (like?.bevel ?? 45)
          : reader.number(`mats.${index}.bevel`, mat.bevel, FLATTEST, 90, "degrees"),
      reveal: index === 0 ? ZERO : reader.lengthOr(`mats.${index}.reveal`, mat.reveal, like?.reveal ?? ZERO),
      board: mat.board ?? like?.board ?? "",
    };
  });
}
