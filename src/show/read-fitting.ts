import type { Hanging } from "../assembly/index.ts";
import type { Size } from "../geometry/index.ts";
import { half, type Length, ZERO } from "../lengths/index.ts";
import type { HangReader } from "./hang-request.ts";
import type { FittingDocument, FramedDocument } from "./hang-schema.ts";

/** A work's frame as its wall needs it. */
export interface FrameOnWall extends Size {
  /** Kilograms; null where it is not known. */
  readonly mass: number | null;
  readonly depth: Length | null;
}

/** A frame that is stated as a fact. */
export const readFrameOnWall = (
  reader: HangReader,
  field: string,
  {
    width,
    height,
    weight,
    depth,
  }: Omit<FramedDocument, "weight"> & { readonly weight?: string | number | null | undefined },
): FrameOnWall => ({
  width: reader.size(`${field}.width`, width),
  height: reader.size(`${field}.height`, height),
  mass: weight === undefined || weight === null ? null : reader.mass(`${field}.weight`, weight),
  depth: depth === undefined ? null : reader.length(`${field}.depth`, depth),
});

const MOST_SCREWS = 50;

/** What is fixed to the back of a frame so wide. */
export function readFitting(
  reader: HangReader,
  field: string,
  hang: FittingDocument,
  width: Length,
): Hanging {
  const below = reader.length(`${field}.below`, hang.below);
  switch (hang.kind) {
    case "rings":
    case "plates":
      return { kind: hang.kind, below, apart: reader.size(`${field}.apart`, hang.apart) };
    case "cleat":
      return {
        kind: "cleat",
        below,
        apart: reader.lengthOr(`${field}.apart`, hang.apart, half(width, "down")),
        screws: reader.whole(`${field}.screws`, hang.screws ?? 2, 1, MOST_SCREWS),
        down: reader.lengthOr(`${field}.down`, hang.down, ZERO),
      };
    case "wire": {
      const apart = reader.size(`${field}.apart`, hang.apart);
      const hooks = hang.hooks ?? (hang.hooksApart === undefined ? 1 : 2);
      if (hooks === 2 && hang.hooksApart === undefined)
        reader.refuse(`${field}.hooksApart`, undefined, { kind: "size" });
      return {
        kind: "wire",
        below,
        apart,
        wire: readWire(reader, field, hang),
        hooks,
        hooksApart: hooks === 1 ? ZERO : reader.sizeOr(`${field}.hooksApart`, hang.hooksApart, apart),
      };
    }
  }
}

function readWire(
  reader: HangReader,
  field: string,
  { length, drop }: Extract<FittingDocument, { readonly kind: "wire" }>,
): { readonly length: Length } | { readonly drop: Length } {
  if (drop !== undefined) return { drop: reader.size(`${field}.drop`, drop) };
  if (length === undefined) reader.want(`${field}.length`, undefined, { kind: "wire" });
  return { length: reader.lengthOr(`${field}.length`, length, ZERO) };
}
