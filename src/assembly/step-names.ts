import type { Corner, Side } from "../geometry/index.ts";
import type { StepName } from "./reckoning.ts";

/**
 * The names of steps, each one object however often it is said, so that whoever writes thousands of
 * works can keep what it comes to.
 */

type Direction = "width" | "height";

const eachWay = (name: (direction: Direction) => StepName): Readonly<Record<Direction, StepName>> => ({
  width: name("width"),
  height: name("height"),
});

const eachSide = (name: (side: Side) => StepName): Readonly<Record<Side, StepName>> => ({
  head: name("head"),
  left: name("left"),
  right: name("right"),
  foot: name("foot"),
});

export const WINDOW = eachWay((direction) => ({ of: "window", direction }));
export const OUTER = eachWay((direction) => ({ of: "outer", direction }));
export const REST = eachWay((direction) => ({ of: "rest", direction }));
export const COVER = eachSide((side) => ({ of: "cover", side }));
export const DIAGONAL: StepName = { of: "diagonal" };

const pocket = (corner: Corner): StepName => ({ of: "pocket", corner });
export const POCKET: Readonly<Record<Corner, StepName>> = {
  topLeft: pocket("topLeft"),
  topRight: pocket("topRight"),
  bottomLeft: pocket("bottomLeft"),
  bottomRight: pocket("bottomRight"),
};

const namesOfMat = (mat: number) => ({
  border: eachSide((side) => ({ of: "border", mat, side })),
  back: eachWay((direction) => ({ of: "back", mat, direction })),
  face: eachWay((direction) => ({ of: "face", mat, direction })),
  bevel: { of: "bevel", mat } satisfies StepName,
  step: { of: "step", mat } satisfies StepName,
  reveal: { of: "reveal", mat } satisfies StepName,
});

const mats: ReturnType<typeof namesOfMat>[] = [];

/** The names of the steps of one mat, the lowest being 0. */
export const ofMat = (mat: number): ReturnType<typeof namesOfMat> => (mats[mat] ??= namesOfMat(mat));
