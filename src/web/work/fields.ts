import type { Design, MatRule, OuterRule, WindowRule } from "../../assembly/index.ts";
import { type Length, ZERO } from "../../lengths/index.ts";
import type { ComposeDocument } from "../../show/index.ts";
import { type BlankName, HOLDING_OPTIONS, liftOptions, matOptions, SHOW_OPTIONS } from "../../words/page.ts";
import { choice, type Field, keyIn, type LengthField, spellerOf } from "./field.ts";
import { PRINT_FIELDS } from "./print-fields.ts";
import { liftUnder, windowUnder, withMats } from "./writing.ts";

type WindowOf<Show> = Extract<WindowRule, { show: Show }>;

function windowLength<Show extends WindowRule["show"]>(
  show: Show,
  key: Exclude<keyof WindowOf<Show>, "show"> & string,
  read: (window: WindowOf<Show>) => Length,
): LengthField {
  const isShown = (window: WindowRule): window is WindowOf<Show> => window.show === show;
  return {
    kind: "length",
    read: ({ window }) => (isShown(window) ? read(window) : ZERO),
    write: (document, design, length) => {
      const spell = spellerOf(design);
      return { ...document, window: { ...spell.window(design.window), [key]: spell.length(length) } };
    },
  };
}

function outerLength(
  read: (outer: OuterRule) => Length,
  write: (outer: OuterRule, length: Length) => OuterRule,
): LengthField {
  return {
    kind: "length",
    read: ({ outer }) => read(outer),
    write: (document, design, length) => ({
      ...document,
      outer: spellerOf(design).outer(write(design.outer, length)),
    }),
  };
}

const border = (side: "head" | "side" | "foot"): LengthField =>
  outerLength(
    (outer) => (outer.kind === "borders" ? outer.borders[side] : ZERO),
    (outer, length) =>
      outer.kind === "borders" ? { ...outer, borders: { ...outer.borders, [side]: length } } : outer,
  );

const reveal = (mat: number): LengthField => ({
  kind: "length",
  read: ({ mats }) => mats[mat]?.reveal ?? ZERO,
  write: (document, design, length) => withMat(document, design, mat, { reveal: length }),
});

/** One mat's own figures; the other mats stay as they are. */
const withMat = (
  document: ComposeDocument,
  design: Design,
  mat: number,
  words: Partial<MatRule>,
): ComposeDocument => ({
  ...document,
  mats: spellerOf(design).mats(
    design.mats.map((rule, index) => (index === mat ? { ...rule, ...words } : rule)),
  ),
});

const boardThickness = (mat: number): LengthField => ({
  kind: "length",
  read: ({ mats }) => mats[mat]?.thickness ?? ZERO,
  write: (document, design, thickness) => withMat(document, design, mat, { thickness }),
});

const bevel = (mat: number): Field => ({
  kind: "number",
  unit: "°",
  step: 1,
  read: ({ mats }) => mats[mat]?.bevel ?? 45,
  write: (document, design, degrees) => withMat(document, design, mat, { bevel: degrees }),
});

/** A named size; found sizes become named ones. */
const outerSide = (side: "width" | "height"): LengthField => ({
  kind: "length",
  read: ({ outer }) => (outer.kind === "size" ? outer[side] : ZERO),
  write: (document, design, length) => {
    const size = design.outer.kind === "size" ? design.outer : { width: length, height: length };
    return { ...document, outer: spellerOf(design).size({ ...size, [side]: length }) };
  },
});

const FIELDS: Readonly<Partial<Record<BlankName, Field>>> = {
  ...PRINT_FIELDS,
  show: choice(
    // A mat without a print shows what its window is, and nothing else.
    ({ print }) => (print === null ? SHOW_OPTIONS.filter(({ key }) => key === "typed") : SHOW_OPTIONS),
    ({ window }) => window.show,
    (document, design, key) => ({ ...document, window: windowUnder(keyIn(SHOW_OPTIONS, key), design) }),
  ),
  overlap: windowLength("overlap", "overlap", ({ overlap }) => overlap),
  marginTop: windowLength("margins", "top", ({ top }) => top),
  marginSide: windowLength("margins", "side", ({ side }) => side),
  marginFoot: windowLength("margins", "foot", ({ foot }) => foot),
  gap: windowLength("sheet", "gap", ({ gap }) => gap),
  windowWidth: windowLength("typed", "width", ({ width }) => width),
  windowHeight: windowLength("typed", "height", ({ height }) => height),
  matCount: choice(
    ({ mats }, language) => matOptions(mats.length, language),
    ({ mats }) => String(mats.length),
    (document, design, key) => ({
      ...document,
      mats: spellerOf(design).mats(withMats(design, Number(key))),
    }),
  ),
  outer: { kind: "dialog" },
  outerWidth: outerSide("width"),
  outerHeight: outerSide("height"),
  borderHead: border("head"),
  borderSide: border("side"),
  borderFoot: border("foot"),
  leastBorder: outerLength(
    (outer) => (outer.kind === "smallest" ? outer.border : ZERO),
    (outer, length) => (outer.kind === "smallest" ? { ...outer, border: length } : outer),
  ),
  lift: choice(
    (_, language) => liftOptions(language),
    ({ lift }) => lift.rule,
    (document, _, key) => ({ ...document, lift: liftUnder(keyIn(liftOptions("en-US"), key)) }),
  ),
  liftBy: {
    kind: "length",
    read: ({ lift }) => (lift.rule === "fixed" ? lift.by : ZERO),
    write: (document, design, length) => ({
      ...document,
      lift: { rule: "fixed", by: spellerOf(design).length(length) },
    }),
  },
  liftRatio: {
    kind: "number",
    unit: "",
    step: 0.05,
    read: ({ lift }) => (lift.rule === "ratio" ? Number(lift.foot.over) / Number(lift.foot.under) : 1),
    write: (document, _, foot) => ({ ...document, lift: { rule: "ratio", foot } }),
  },
  holding: choice(
    () => HOLDING_OPTIONS,
    ({ holding }) => holding,
    (document, _, key) => ({ ...document, holding: keyIn(HOLDING_OPTIONS, key) }),
  ),
  mount: {
    kind: "text",
    read: ({ mount }) => mount,
    // Without a word of its own it is the lowest mat's board again.
    write: (document, text) => ({ ...document, mount: text === "" ? undefined : text }),
  },
  hold: {
    kind: "length",
    read: ({ hold }) => hold,
    write: (document, design, length) => ({ ...document, hold: spellerOf(design).length(length) }),
  },
  play: {
    kind: "length",
    read: ({ play }) => play,
    write: (document, design, length) => ({ ...document, play: spellerOf(design).length(length) }),
  },
};

/** What stands behind a blank. */
export function fieldOf(blank: BlankName): Field {
  if (blank.startsWith("board.")) return { kind: "dialog" };
  if (blank.startsWith("boardThickness.")) return boardThickness(Number(blank.slice(15)));
  if (blank.startsWith("bevel.")) return bevel(Number(blank.slice(6)));
  if (blank.startsWith("reveal.")) return reveal(Number(blank.slice(7)));
  const field = FIELDS[blank];
  if (field === undefined) throw new Error(`nothing stands behind the blank ${blank}`);
  return field;
}
