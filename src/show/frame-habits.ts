import { mitreKerf } from "../plans/index.ts";
import { inch, type Length, mm, type Unit, ZERO } from "../lengths/index.ts";
import type { Reader } from "./reader.ts";
import type { PracticeDocument } from "./schema.ts";

/** A flat layer of the package beside mats and mount, cut from sheets that the stock has under its name. */
export interface Layer {
  readonly board: string;
  /** How much smaller than the package it is cut, each way. */
  readonly less: Length;
}

export interface Glazing extends Layer {
  readonly kind: "glass" | "acrylic";
  /** What a saw takes; nought where it is scored and snapped. */
  readonly kerf: Length;
}

/** The moulding that frames are made of. */
export interface Moulding {
  /** As it is called in the rack and in the shop. */
  readonly name: string;
  /** From the lip's sight edge to the outermost edge of the back. */
  readonly overall: Length;
  /** How far the rabbet reaches under the lip. */
  readonly rabbet: Length;
  /** From the lip's underside to the back; null: not known. */
  readonly depth: Length | null;
  /** The room between package and rabbet, both ends together. */
  readonly allowance: Length;
  /** What a cut takes along the length. */
  readonly kerf: Length;
  /** Lost at each end of a length. */
  readonly waste: Length;
}

interface Usual {
  readonly acrylicLess: Length;
  readonly allowance: Length;
  readonly saw: Length;
  readonly waste: Length;
}

/** In the round figures of each unit. */
const USUAL: Readonly<Record<Unit, Usual>> = {
  in: {
    // Acrylic grows with warmth (7.2e-5 of its size per kelvin, ASTM D696) and with damp: room for that, common practice, no source.
    acrylicLess: inch(1, 16),
    // A reader's note to Fine Woodworking no. 275 (2019) gives 1/8 in as the trade's allowance, its article 1/16 in.
    allowance: inch(1, 8),
    // A mitre saw's blade takes about 1/8 in: common practice, no source.
    saw: inch(1, 8),
    // The ends of a length are bruised or checked: common practice, no source.
    waste: inch(1, 2),
  },
  mm: { acrylicLess: mm(2), allowance: mm(3), saw: mm(3), waste: mm(12) },
};

export const readBacking = (reader: Reader, backing: NonNullable<PracticeDocument["backing"]>): Layer => ({
  board: backing.board,
  less: reader.lengthOr("backing.less", backing.less, ZERO),
});

export const readGlazing = (
  reader: Reader,
  glazing: NonNullable<PracticeDocument["glazing"]>,
  unit: Unit,
): Glazing => ({
  board: glazing.board,
  kind: glazing.kind,
  less: reader.lengthOr(
    "glazing.less",
    glazing.less,
    glazing.kind === "acrylic" ? USUAL[unit].acrylicLess : ZERO,
  ),
  kerf: reader.lengthOr("glazing.kerf", glazing.kerf, ZERO),
});

export function readMoulding(
  reader: Reader,
  moulding: NonNullable<PracticeDocument["moulding"]>,
  unit: Unit,
): Moulding {
  const usual = USUAL[unit];
  const overall = reader.size("moulding.overall", moulding.overall);
  const rabbet = reader.length("moulding.rabbet", moulding.rabbet);
  if (rabbet >= overall) reader.refuse("moulding.rabbet", moulding.rabbet, { kind: "below-overall" });
  return {
    name: moulding.name,
    overall,
    rabbet,
    depth: moulding.depth === undefined ? null : reader.size("moulding.depth", moulding.depth),
    allowance: reader.lengthOr("moulding.allowance", moulding.allowance, usual.allowance),
    kerf:
      moulding.kerf === undefined
        ? mitreKerf(reader.lengthOr("moulding.saw", moulding.saw, usual.saw))
        : reader.length("moulding.kerf", moulding.kerf),
    waste: reader.lengthOr("moulding.waste", moulding.waste, usual.waste),
  };
}
