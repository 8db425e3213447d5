import type { Design, Print } from "../assembly/index.ts";
import {
  type Box,
  type Outline,
  type OutlineFault,
  outlineFault,
  smallestUprightRectangle,
} from "../geometry/index.ts";
import {
  add,
  half,
  larger,
  type Length,
  type Ruler,
  scale,
  subtract,
  toGraduation,
  type Unit,
  ZERO,
} from "../lengths/index.ts";
import { onceEachUnit } from "./each-unit.ts";
import type { Habits } from "./practice.ts";
import type { Problem } from "./problem.ts";
import { Reader } from "./reader.ts";
import { onRuler, readHabits } from "./read-habits.ts";
import { readLift, readMats, readOuter, readWindow } from "./read-rules.ts";
import type { ComposeDocument, PracticeDocument } from "./schema.ts";
import type { Read } from "./validate.ts";

type PrintDocument = NonNullable<ComposeDocument["print"]>;
type ImageDocument = NonNullable<PrintDocument["image"]>;

/** A studio's habits of composing, read once for each unit. */
export const habitsFor = onceEachUnit((document: PracticeDocument, unit): Read<Habits> => {
  const reader = new Reader(document.unit ?? unit);
  const value = readHabits(reader, document, unit);
  return reader.problems.length === 0 ? { ok: true, value } : { ok: false, problems: reader.problems };
});

/** Problems of a practice, where they stand beside those of a work. */
export const inPractice = (problems: readonly Problem[]): Read<never> => ({
  ok: false,
  problems: problems.map((problem) => ({ ...problem, field: `practice.${problem.field}` })),
});

/**
 * Reads a validated document as a design, in its own unit, with the practice for all it leaves open.
 * Every length that cannot be read becomes a problem with its field; none is guessed.
 */
export function readDesign(document: ComposeDocument, practiceDocument: PracticeDocument = {}): Read<Design> {
  const unit = document.unit ?? practiceDocument.unit ?? "in";
  const habits = habitsFor(practiceDocument, unit);
  if (!habits.ok) return inPractice(habits.problems);
  const reader = new Reader(unit);
  const ruler: Ruler = {
    unit,
    graduation: reader.sizeOr("graduation", document.graduation, habits.value.ruler.graduation),
  };
  const inOtherUnit = practiceDocument.unit !== undefined && practiceDocument.unit !== unit;
  const practice = inOtherUnit ? onRuler(habits.value, ruler.graduation) : habits.value;
  const print = document.print === undefined ? null : readPrint(reader, document.print, practice);
  const hold =
    document.hold === undefined
      ? (practice.hold ?? usualHold(print, practice))
      : reader.length("hold", document.hold);
  const overlap = usualOverlap(print, add(hold, print?.sure ?? ZERO), ruler, practice);
  const window = readWindow(reader, document.window ?? { show: "overlap" }, { ...practice, overlap });
  const mats = document.mats === undefined ? practice.mats : readMats(reader, document.mats, practice);
  if (print === null && window.show !== "typed")
    reader.refuse("print", undefined, { kind: "print-or-window" });

  const design: Design = {
    ruler,
    print,
    window,
    hold,
    play: reader.lengthOr("play", document.play, practice.play),
    // A sheet that is shown whole would show what holds its edge.
    holding: document.holding ?? (window.show === "sheet" ? "hinges" : practice.holding),
    mount: document.mount ?? practice.mount ?? mats[0]?.board ?? "",
    outer: document.outer === undefined ? practice.outer : readOuter(reader, document.outer, practice),
    lift: document.lift === undefined ? practice.lift : readLift(reader, document.lift, practice),
    mats,
    leastBorder: practice.leastBorder,
    leastPocket: practice.leastPocket,
    editionSpread: practice.editionSpread,
    scaleOffset: practice.scaleOffset,
  };
  return reader.problems.length === 0
    ? { ok: true, value: design }
    : { ok: false, problems: reader.problems };
}

/**
 * The larger of the least hold and the paper's movement plus half the least hold. The movement is
 * 0.4 % of the longer side for ordinary indoor swings of humidity (upper value of C. Green's notes on
 * dimensional stability; the grain is not known, so the longer side stands for the cross direction).
 */
function usualHold(print: Print | null, practice: Habits): Length {
  if (print === null) return practice.leastHold;
  const movement = scale(larger(print.sheet.width, print.sheet.height), 4n, 1000n, "up");
  return larger(practice.leastHold, add(movement, half(practice.leastHold, "up")));
}

/**
 * The overlap where none is asked: the practice's, or as much more as the hold needs where the sheet
 * ends at or near its image. Whole graduations more, so that the figure stays one that can be said.
 */
function usualOverlap(print: Print | null, hold: Length, ruler: Ruler, practice: Habits): Length {
  if (print === null) return practice.overlap;
  const { image, sheet } = print;
  const margin = Math.min(
    image.left,
    image.top,
    sheet.width - image.left - image.width,
    sheet.height - image.top - image.height,
  );
  const short = subtract(hold, add(practice.overlap, larger(margin as Length, ZERO)));
  return short > 0 ? add(practice.overlap, toGraduation(short, ruler.graduation, "up")) : practice.overlap;
}

function readPrint(reader: Reader, print: PrintDocument, practice: Habits): Print {
  const sheetOutline = readOutline(reader, "print.sheetOutline", print.sheetOutline);
  const outline = readOutline(reader, "print.outline", print.outline);
  const torn = sheetOutline === null ? null : extent(sheetOutline);
  const side = (key: "width" | "height"): Length => {
    const text = print[key];
    if (text === undefined && torn !== null) return torn[key];
    return reader.size(`print.${key}`, text ?? "");
  };
  const sheet = { width: side("width"), height: side("height") };
  const whole: Box = { left: ZERO, top: ZERO, ...sheet };
  const image =
    print.image === undefined
      ? outline === null
        ? whole
        : smallestUprightRectangle(outline)
      : readImage(reader, "print.image", print.image);
  return {
    sheet,
    image,
    outline,
    sheetOutline,
    angle: print.angle === undefined ? 0 : reader.number("print.angle", print.angle, -45, 45, "degrees"),
    level: print.level ?? "image",
    thickness: reader.lengthOr("print.thickness", print.thickness, practice.printThickness),
    sure: reader.lengthOr("print.sure", print.sure, ZERO),
    edition: (print.edition ?? []).map((sheetGiven, index) => {
      const at = `print.edition.${index}`;
      const size = {
        width: reader.size(`${at}.width`, sheetGiven.width),
        height: reader.size(`${at}.height`, sheetGiven.height),
      };
      return {
        name: sheetGiven.name ?? String(index + 2),
        sheet: size,
        image:
          sheetGiven.image === undefined
            ? { left: ZERO, top: ZERO, ...size }
            : readImage(reader, `${at}.image`, sheetGiven.image),
      };
    }),
  };
}

function readImage(reader: Reader, field: string, image: ImageDocument): Box {
  return {
    left: reader.length(`${field}.left`, image.left),
    top: reader.length(`${field}.top`, image.top),
    width: reader.size(`${field}.width`, image.width),
    height: reader.size(`${field}.height`, image.height),
  };
}

/** How far an outline reaches from the sheet's origin. */
const extent = (outline: Outline): { width: Length; height: Length } => {
  const box = smallestUprightRectangle(outline);
  return { width: add(box.left, box.width), height: add(box.top, box.height) };
};

type OutlineGiven = PrintDocument["outline"];

/** An outline that has been read is kept by identity, so that a page that changes a border does not read 2,000 points again. */
const outlines = new WeakMap<NonNullable<OutlineGiven>, Partial<Record<Unit, Outline>>>();

function readOutline(reader: Reader, field: string, given: OutlineGiven): Outline | null {
  if (given === undefined) return null;
  const known = outlines.get(given) ?? {};
  const kept = known[reader.unit];
  if (kept !== undefined) return kept;
  const before = reader.problems.length;
  const outline = given.map(([x, y], index) => ({
    x: reader.place(`${field}.${index}.0`, x),
    y: reader.place(`${field}.${index}.1`, y),
  }));
  if (reader.problems.length > before) return outline;
  const fault = outlineFault(outline);
  if (fault !== null) {
    reader.refuse(field, foundOutline(fault), {
      kind: "outline",
      fault: fault.code === "crosses-itself" ? "crosses-itself" : "few-points",
    });
    return null;
  }
  outlines.set(given, { ...known, [reader.unit]: outline });
  return outline;
}

/** Where an outline goes wrong, points counted from 1 as they stand in the list. */
function foundOutline(fault: OutlineFault): string {
  switch (fault.code) {
    case "not-a-point":
      return `point ${fault.point + 1}`;
    case "too-few-points":
      return `${fault.points} points`;
    case "crosses-itself":
      return `the edges after points ${fault.edges[0] + 1} and ${fault.edges[1] + 1}`;
  }
}
