import type { Unit } from "../lengths/index.ts";
import { type BoxHabits, type PackingHabits, USUAL_BOX, USUAL_PACKING } from "../plans/index.ts";
import { readMass } from "./mass.ts";
import type { PackingHabitsDocument } from "./packing-schema.ts";
import type { Reader } from "./reader.ts";

/** How a studio packs and stores, every choice made. */
export interface PackingPractice extends PackingHabits {
  readonly box: BoxHabits;
}

/** A studio's packing, in the round figures of `unit`. */
export function readPacking(
  reader: Reader,
  { box = {}, ...document }: PackingHabitsDocument,
  unit: Unit,
): PackingPractice {
  const usual = USUAL_PACKING[unit];
  const usualBox = USUAL_BOX[unit];
  const { mostWeight } = document;
  const mostMass = mostWeight === undefined ? usual.mostMass : readMass(mostWeight, reader.unit);
  if (mostMass === null)
    reader.refuse("packing.mostWeight", mostWeight, { kind: "type", expected: "number" });
  const depth = reader.sizeOr("packing.box.depth", box.depth, usualBox.depth);
  const room = reader.lengthOr("packing.box.room", box.room, usualBox.room);
  if (room >= depth) reader.refuse("packing.box.room", box.room, { kind: "type", expected: "room" });
  return {
    foam: reader.lengthOr("packing.foam", document.foam, usual.foam),
    between: reader.lengthOr("packing.between", document.between, usual.between),
    wall: reader.lengthOr("packing.wall", document.wall, usual.wall),
    mostDepth: reader.sizeOr("packing.mostDepth", document.mostDepth, usual.mostDepth),
    mostMass: mostMass ?? usual.mostMass,
    box: {
      name: box.name ?? usualBox.name,
      depth,
      room,
      interleaf: reader.lengthOr("packing.box.interleaf", box.interleaf, usualBox.interleaf),
    },
  };
}
