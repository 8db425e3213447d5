import { type Language, VOCABULARY } from "../vocabulary.ts";
import { type BlankWords, matNamed } from "./blanks.ts";
import { inSentence } from "./capital.ts";

const LABELS: Readonly<Record<string, string>> = {
  unit: "Unit",
  graduation: "Ruler marked in",
  overlap: "Covered on each side",
  marginTop: "Margin in sight at the head",
  marginSide: "Margin in sight at each side",
  marginFoot: "Margin in sight at the foot",
  gap: "Clear round a whole sheet",
  lift: "Where a window lies",
  liftBy: "Raised above the middle",
  liftRatio: "Foot to head",
  outer: "What a work lies on",
  outerBorder: "Borders of at least",
  holdsSheet: "Whether it takes the whole sheet",
  borderHead: "Border at the head",
  borderSide: "Border at each side",
  borderFoot: "Border at the foot",
  outerWidth: "Board width",
  outerHeight: "Board height",
  leastBorder: "Warned of below",
  matCount: "How many boards over a print",
  printThickness: "Thickness of a print’s paper",
  mountKind: "What prints are mounted on",
  mount: "The board that prints are mounted on",
  holding: "Prints are held with",
  play: "Room to move in a corner",
  leastPocket: "Least pocket",
  holdKind: "What keeps the paper",
  hold: "On the paper by at least",
  hand: "The bench is",
  overrun: "A cut runs past the line",
  squaringTrim: "Squared by, each side",
  scale: "The scale is set",
  scaleBy: "The scale differs by",
  scaleTested: "Day of the last test cuts",
  molding: "What frames are made of",
  moldingName: "Name of the length",
  overall: "Width of the frame’s sides",
  rabbet: "How far it reaches under the lip",
  lip: "Thickness of the lip",
  depth: "Depth behind the lip",
  allowance: "Left for the package",
  waste: "Lost at each end of a length",
  glass: "Glazing",
  glassName: "Name of the glazing in the rack",
  glassThickness: "Thickness of the glazing",
  glassLess: "Glazing smaller by",
  back: "Backing",
  backName: "Name of the backing in the rack",
  backThickness: "Thickness of the backing",
  backLess: "Backing smaller by",
  fittings: "Wanted by fittings",
  offset: "Standing out behind at most",
  coverInset: "Dust cover in from the edge",
  bumper: "Off the wall by",
  fittingKind: "Hung by",
  down: "Share of the height from the top",
  insetKind: "Across the rail",
  inset: "In from the frame’s side",
  drop: "Whether the hook is measured",
  hookDrop: "From where it bears up to the nail",
  safety: "Rated for so many times the load",
  guidance: "Whose limits of light",
  work: "Whether work is reckoned",
  hour: "An hour’s work",
  priced: "Day on which the prices held",
  studio: "The studio’s name",
  size: "Paper size",
  language: "Words of the trade",
};

const MINUTES: Readonly<Record<string, string>> = {
  blank: "a blank",
  window: "a window",
  hold: "holding a print",
  glaze: "a pane",
  frame: "a frame",
  close: "closing a frame",
  hang: "hanging a frame",
};

/** What a blank of a habit is called by itself: `habit.bevel.0`. */
export function habitBlankWords(blank: string, mats: number, language: Language): BlankWords {
  const [, of = "", index = ""] = blank.split(".");
  const mat = matNamed(Number(index), mats, VOCABULARY[language].mat);
  const label =
    of === "minutes"
      ? `Minutes for ${MINUTES[index] ?? index}`
      : of === "board"
        ? `Board of ${mat}`
        : of === "thickness"
          ? `Thickness of ${mat}`
          : of === "bevel"
            ? `Cut of ${mat} to its face`
            : of === "reveal"
              ? `In sight of ${matNamed(Number(index) - 1, mats, VOCABULARY[language].mat)}`
              : (LABELS[of] ?? of);
  return { label, said: inSentence(label) };
}
