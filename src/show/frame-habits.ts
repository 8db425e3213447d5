import {
  type GlazingFacts,
  type LayerFacts,
  type Profile,
  USUAL_LAYERS,
  woodNamed,
} from "../assembly/index.ts";
import { mitreKerf } from "../plans/index.ts";
import { inch, type Length, mm, type Unit, ZERO } from "../lengths/index.ts";
import type { BackingDocument, GlazingDocument, MouldingDocument } from "./frame-schema.ts";
import { readMassPer } from "./mass.ts";
import type { Reader } from "./reader.ts";

/** A flat layer of the package beside mats and mount, cut from sheets that the stock has under its name. */
export type Layer = LayerFacts;

export interface Glazing extends GlazingFacts {
  /** What a saw takes; nought where it is scored and snapped. */
  readonly kerf: Length;
}

/** The moulding that frames are made of. */
export interface Moulding extends Profile {
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

export const readBacking = (reader: Reader, field: string, backing: BackingDocument, unit: Unit): Layer => ({
  board: backing.board,
  less: reader.lengthOr(`${field}.less`, backing.less, ZERO),
  thickness: reader.sizeOr(`${field}.thickness`, backing.thickness, USUAL_LAYERS[unit].backing),
  massPerArea: readPer(reader, `${field}.mass`, backing.mass, "area"),
});

export const readGlazing = (
  reader: Reader,
  field: string,
  glazing: GlazingDocument,
  unit: Unit,
): Glazing => ({
  board: glazing.board,
  kind: glazing.kind,
  massPerArea: readPer(reader, `${field}.mass`, glazing.mass, "area"),
  less: reader.lengthOr(
    `${field}.less`,
    glazing.less,
    glazing.kind === "acrylic" ? USUAL[unit].acrylicLess : ZERO,
  ),
  thickness: reader.sizeOr(`${field}.thickness`, glazing.thickness, USUAL_LAYERS[unit][glazing.kind]),
  kerf: reader.lengthOr(`${field}.kerf`, glazing.kerf, ZERO),
});

export function readMoulding(
  reader: Reader,
  field: string,
  moulding: MouldingDocument,
  unit: Unit,
): Moulding {
  const usual = USUAL[unit];
  const overall = reader.size(`${field}.overall`, moulding.overall);
  const rabbet = reader.length(`${field}.rabbet`, moulding.rabbet);
  if (rabbet >= overall) reader.refuse(`${field}.rabbet`, moulding.rabbet, { kind: "below-overall" });
  return {
    name: moulding.name,
    overall,
    rabbet,
    depth: moulding.depth === undefined ? null : reader.size(`${field}.depth`, moulding.depth),
    lip: reader.sizeOr(`${field}.lip`, moulding.lip, USUAL_LAYERS[unit].lip),
    wood: moulding.wood === undefined ? null : woodNamed(moulding.wood),
    massPerMetre: readPer(reader, `${field}.mass`, moulding.mass, "length"),
    allowance: reader.lengthOr(`${field}.allowance`, moulding.allowance, usual.allowance),
    kerf:
      moulding.kerf === undefined
        ? mitreKerf(reader.lengthOr(`${field}.saw`, moulding.saw, usual.saw))
        : reader.length(`${field}.kerf`, moulding.kerf),
    waste: reader.lengthOr(`${field}.waste`, moulding.waste, usual.waste),
  };
}

const MASSES = { length: ["0.4 kg/m", "0.27 lb/ft"], area: ["0.9 kg/m2", "0.18 lb/ft2"] } as const;

function readPer(
  reader: Reader,
  field: string,
  written: string | number | undefined,
  of: "length" | "area",
): number | null {
  if (written === undefined) return null;
  const mass = readMassPer(written, of, reader.unit);
  if (mass === null) reader.refuse(field, written, { kind: "like", examples: MASSES[of] });
  return mass;
}
