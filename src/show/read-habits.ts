import { type Length, toGraduation, type Unit } from "../lengths/index.ts";
import { DEFAULT_HABITS, type Habits } from "./practice.ts";
import type { Reader } from "./reader.ts";
import { readLift, readMats, readOuter } from "./read-rules.ts";
import type { PracticeDocument } from "./schema.ts";

/**
 * Reads a studio's habits of composing, for work in the unit `unit`; the reader is in the document's own. What the
 * document does not say has the default of `unit`, so that a studio of both units gets round figures in each.
 */
export function readHabits(reader: Reader, document: PracticeDocument, unit: Unit): Habits {
  const base = DEFAULT_HABITS[unit];
  const { margins, mats } = document;
  return {
    ruler: {
      unit,
      graduation:
        reader.unit === unit
          ? reader.sizeOr("graduation", document.graduation, base.ruler.graduation)
          : base.ruler.graduation,
    },
    overlap: reader.lengthOr("overlap", document.overlap, base.overlap),
    margins: {
      top: reader.lengthOr("margins.top", margins?.top, base.margins.top),
      side: reader.lengthOr("margins.side", margins?.side, base.margins.side),
      foot: reader.lengthOr("margins.foot", margins?.foot, base.margins.foot),
    },
    gap: reader.lengthOr("gap", document.gap, base.gap),
    hold: document.hold === undefined ? null : reader.length("hold", document.hold),
    leastHold: base.leastHold,
    play: reader.lengthOr("play", document.play, base.play),
    holding: document.holding ?? base.holding,
    lift: document.lift === undefined ? base.lift : readLift(reader, document.lift, base),
    outer: document.outer === undefined ? base.outer : readOuter(reader, document.outer, base),
    mats: mats === undefined ? base.mats : readMats(reader, mats, base),
    printThickness: reader.lengthOr("printThickness", document.printThickness, base.printThickness),
    leastBorder: reader.lengthOr("leastBorder", document.leastBorder, base.leastBorder),
    leastPocket: reader.lengthOr("leastPocket", document.leastPocket, base.leastPocket),
    editionSpread: reader.lengthOr("editionSpread", document.editionSpread, base.editionSpread),
    scaleOffset:
      document.scaleOffset === undefined
        ? base.scaleOffset
        : reader.place("scaleOffset", document.scaleOffset),
    scaleTested: document.scaleTested ?? base.scaleTested,
    hand: document.hand ?? base.hand,
    overrun: reader.lengthOr("overrun", document.overrun, base.overrun),
    squaringTrim: reader.lengthOr("squaringTrim", document.squaringTrim, base.squaringTrim),
    mount: document.mount ?? base.mount,
    paper: document.paper ?? base.paper,
    language: document.language ?? base.language,
    studio: document.studio ?? base.studio,
  };
}

/**
 * Habits that were said in the other unit, for work on a ruler of this graduation: 1/8 in of hold is
 * 3.175 mm, which no metric ruler marks, so it becomes 4 mm. What keeps something covered, clear or
 * loose is taken up, what only looks well to the nearest.
 */
export function onRuler(habits: Habits, graduation: Length): Habits {
  const up = (length: Length): Length => toGraduation(length, graduation, "up");
  const nearest = (length: Length): Length => toGraduation(length, graduation, "nearest");
  const { margins, lift, hold } = habits;
  return {
    ...habits,
    overlap: up(habits.overlap),
    margins: { top: nearest(margins.top), side: nearest(margins.side), foot: nearest(margins.foot) },
    gap: up(habits.gap),
    hold: hold === null ? null : up(hold),
    play: up(habits.play),
    lift: lift.rule === "fixed" ? { rule: "fixed", by: nearest(lift.by) } : lift,
  };
}
