import { type Check, type Composition, type Design, holdAsked, SIZE_LISTS } from "../../assembly/index.ts";
import type { Side, Size } from "../../geometry/index.ts";
import { add, type Length, subtract, times, toGraduation, ZERO } from "../../lengths/index.ts";
import type { ComposeDocument, PracticeDocument } from "../../show/index.ts";
import { type BlankName, WAYS } from "../../words/page.ts";
import { saidLength, sizeText } from "../blanks/set-length.ts";
import { madeOf } from "../state/made.ts";
import { Speller } from "./document-of.ts";

/** A way out that a check offers: the document it makes, and the blank that it changes. */
export interface Way {
  readonly label: string;
  readonly blank: BlankName;
  readonly document: ComposeDocument;
}

/** Never more than this many buttons under one check. */
const MOST = 2;

/**
 * The ways out of a check that hold: each was composed, and the check is gone from it without a
 * heavier one in its place. A way that does not hold is not offered.
 */
export function waysOf(
  check: Check,
  document: ComposeDocument,
  composition: Composition,
  practice: PracticeDocument,
): readonly Way[] {
  const before = stopsOf(composition);
  const ways: Way[] = [];
  for (const way of candidates(check, document, composition)) {
    const made = madeOf(way.document, practice);
    if (!made.ok) continue;
    const { checks } = made.composition;
    if (checks.some((left) => sameMatter(left, check)) || stopsOf(made.composition) > before) continue;
    if (ways.every(({ label }) => label !== way.label)) ways.push(way);
    if (ways.length === MOST) break;
  }
  return ways;
}

const stopsOf = ({ checks }: Composition): number => checks.filter(({ level }) => level === "stop").length;

/** The same side of the same thing; the two ways in which paper is too short are one matter. */
function sameMatter(a: Check, b: Check): boolean {
  if (matter(a) !== matter(b)) return false;
  if ("side" in a && "side" in b) return a.side === b.side;
  if ("direction" in a && "direction" in b) return a.direction === b.direction;
  return !("mat" in a && "mat" in b) || a.mat === b.mat;
}

const matter = ({ code }: Check): string =>
  code === "paper-ends" || code === "border-negative" ? COVERED[code] : code;

const COVERED = { "paper-ends": "hold-short", "border-negative": "border-small" } as const;

function* candidates(check: Check, document: ComposeDocument, composition: Composition): Iterable<Way> {
  const { design } = composition;
  switch (check.code) {
    case "paper-ends":
      yield* showLess(check.side, add(check.by, holdAsked(design)), document, composition);
      return;
    case "hold-short":
      yield* showLess(check.side, subtract(check.hold, check.cover), document, composition);
      return;
    case "border-negative":
    case "border-small":
      if (design.lift.rule !== "none" && design.outer.kind !== "borders" && check.side === "head") {
        yield { label: WAYS.middle, blank: "lift", document: { ...document, lift: { rule: "none" } } };
      }
      yield* larger(document, composition);
      return;
    case "no-size":
    case "sheet-past-board":
      yield* larger(document, composition);
      return;
    case "window-gone":
      yield { label: WAYS.wholeSheet, blank: "show", document: { ...document, window: { show: "sheet" } } };
      return;
    case "reveal-gone":
    case "reveal-off":
      yield* otherStrip(check.mat, check.cut, document, design);
      return;
    case "sheet-turned":
      yield { label: WAYS.levelSheet, blank: "level", document: withLevel(document, "sheet") };
      return;
    case "image-skew":
      yield { label: WAYS.levelImage, blank: "level", document: withLevel(document, "image") };
      return;
    case "pocket-small":
      yield { label: WAYS.hinges, blank: "holding", document: { ...document, holding: "hinges" } };
      yield { label: WAYS.strips, blank: "holding", document: { ...document, holding: "strips" } };
      return;
    case "holding-shows":
      yield { label: WAYS.hinges, blank: "holding", document: { ...document, holding: "hinges" } };
      return;
    case "border-uneven":
    case "image-hidden":
    case "edition-outlier":
      return;
  }
}

const withLevel = (document: ComposeDocument, level: "image" | "sheet"): ComposeDocument => ({
  ...document,
  print: { ...document.print, level },
});

/** Less in sight by at least `short` on one side, in whole marks of the ruler. */
function* showLess(
  side: Side,
  short: Length,
  document: ComposeDocument,
  { design, mats }: Composition,
): Iterable<Way> {
  const { window, ruler } = design;
  const spell = new Speller(ruler.unit);
  const less = toGraduation(short, ruler.graduation, "up");
  switch (window.show) {
    case "overlap": {
      const overlap = toGraduation(add(window.overlap, less), ruler.graduation, "up");
      yield {
        label: WAYS.cover(saidLength(overlap, ruler.unit)),
        blank: "overlap",
        document: { ...document, window: spell.window({ show: "overlap", overlap }) },
      };
      return;
    }
    case "margins": {
      const [key, blank] = MARGINS[side];
      const margin = toGraduation(subtract(window[key], less), ruler.graduation, "down");
      if (margin >= 0) {
        yield {
          label: WAYS.showLess(saidLength(margin, ruler.unit)),
          blank,
          document: { ...document, window: spell.window({ ...window, [key]: margin }) },
        };
      }
      yield { label: WAYS.onlyImage, blank: "show", document: { ...document, window: { show: "overlap" } } };
      return;
    }
    case "typed": {
      const back = mats[0]?.back;
      if (back === undefined) return;
      const across = side === "left" || side === "right";
      const size: Size = across
        ? { ...back, width: subtract(back.width, times(less, 2)) }
        : { ...back, height: subtract(back.height, times(less, 2)) };
      if (size.width <= 0 || size.height <= 0) return;
      yield {
        label: WAYS.smaller(sizeText(size, design.ruler.unit)),
        blank: across ? "windowWidth" : "windowHeight",
        document: { ...document, window: spell.window({ show: "typed", ...size }) },
      };
      return;
    }
    case "sheet":
      return;
  }
}

const MARGINS = {
  head: ["top", "marginTop"],
  left: ["side", "marginSide"],
  right: ["side", "marginSide"],
  foot: ["foot", "marginFoot"],
} as const;

/** Ready-made sizes of the work's own unit, from the least up, the way up in which the window lies. */
function* larger(document: ComposeDocument, { design, mats }: Composition): Iterable<Way> {
  const spell = new Speller(design.ruler.unit);
  const back = mats[0]?.back;
  const lying = back !== undefined && back.width > back.height;
  const list = SIZE_LISTS[design.ruler.unit === "in" ? "inch" : "metric"].toSorted(
    (a, b) => a.width * a.height - b.width * b.height,
  );
  for (const { width, height } of list) {
    const size = lying ? { width: height, height: width } : { width, height };
    yield {
      label: WAYS.larger(sizeText(size, design.ruler.unit)),
      blank: "outer",
      document: { ...document, outer: spell.size(size) },
    };
  }
}

/** The strip that this ruler gives, or the least one that there can be. */
function* otherStrip(mat: number, cut: Length, document: ComposeDocument, design: Design): Iterable<Way> {
  const spell = new Speller(design.ruler.unit);
  for (const reveal of cut > ZERO ? [cut] : [design.ruler.graduation, times(design.ruler.graduation, 2)]) {
    const mats = design.mats.map((rule, index) => (index === mat ? { ...rule, reveal } : rule));
    yield {
      label: WAYS.reveal(saidLength(reveal, design.ruler.unit)),
      blank: `reveal.${mat}`,
      document: { ...document, mats: spell.mats(mats) },
    };
  }
}
