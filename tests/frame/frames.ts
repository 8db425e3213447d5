import fc from "fast-check";
import {
  compose,
  type Composition,
  type FrameFacts,
  type FramePlan,
  plainFrame,
  planFrame,
  type Profile,
  woodNamed,
} from "../../src/assembly/index.ts";
import { inch, ZERO } from "../../src/lengths/index.ts";
import { type ComposeDocument, readDesign } from "../../src/show/index.ts";

/** A composed work of a document. */
export function composedOf(document: ComposeDocument): Composition {
  const design = readDesign(document);
  if (!design.ok) throw new Error(JSON.stringify(design.problems));
  return compose(design.value);
}

/** Square oak, 3/4 in wide, with a rabbet 1/4 in wide and 3/4 in deep. */
export const OAK: Profile = {
  name: "oak, square",
  overall: inch(3, 4),
  rabbet: inch(1, 4),
  allowance: inch(1, 8),
  depth: inch(3, 4),
  lip: inch(1, 4),
  wood: woodNamed("red oak"),
  massPerMetre: null,
};

/** Acrylic 1/8 in before it, fluted board 3/16 in behind it. */
export const frameOf = (more: Partial<FrameFacts> = {}, profile: Partial<Profile> = {}): FrameFacts => ({
  ...plainFrame({ ...OAK, ...profile }, "in"),
  glazing: {
    kind: "acrylic",
    board: "acrylic, 1/8 in",
    less: inch(1, 16),
    thickness: inch(1, 8),
    massPerArea: null,
  },
  backing: { board: "fluted board", less: ZERO, thickness: inch(3, 16), massPerArea: 0.9 },
  ...more,
});

/** A print of 8 1/2 × 11 in with its image in the middle, on 11 × 14 in, the window covering 1/8 in of the image. */
export const LETTER: ComposeDocument = {
  unit: "in",
  print: { width: "8 1/2", height: 11, image: { left: "3/4", top: "3/4", width: 7, height: "9 1/2" } },
  outer: { width: 11, height: 14 },
};

export const framedOf = (
  document: ComposeDocument = LETTER,
  more: Partial<FrameFacts> = {},
  profile: Partial<Profile> = {},
): FramePlan => planFrame(composedOf(document), frameOf(more, profile));

export const codesOf = ({ checks }: FramePlan): readonly string[] => checks.map(({ code }) => code);

/** Any work on a board of a size of its own, in any frame made to it. */
export const RANDOM = fc
  .record({
    wide: fc.integer({ min: 32, max: 400 }),
    high: fc.integer({ min: 32, max: 400 }),
    border: fc.integer({ min: 24, max: 90 }),
    overall: fc.integer({ min: 12, max: 64 }),
    rabbet: fc.integer({ min: 3, max: 8 }),
    depth: fc.constantFrom(null, 8, 16),
    seat: fc.constantFrom("foot" as const, "shimmed" as const),
    glazed: fc.boolean(),
    mats: fc.integer({ min: 1, max: 3 }),
  })
  .map(({ wide, high, border, overall, rabbet, depth, seat, glazed, mats }) => ({
    document: {
      unit: "in",
      print: { width: wide / 16 + 1, height: high / 16 + 1 },
      outer: { width: (wide + 2 * border) / 16, height: (high + 2 * border) / 16 },
      mats: Array.from({ length: mats }, () => ({ thickness: "1/16", reveal: "1/4" })),
    } satisfies ComposeDocument,
    frame: frameOf(
      { seat, ...(glazed ? {} : { glazing: null }) },
      {
        overall: inch(overall, 16),
        rabbet: inch(rabbet, 16),
        depth: depth === null ? null : inch(depth, 16),
      },
    ),
  }));
