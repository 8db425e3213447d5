import { composeJson } from "../../src/show/index.ts";

/** A length as it leaves in the open format. */
export interface Out {
  readonly mm: number;
  readonly text: string;
}
interface OutSize {
  readonly width: Out;
  readonly height: Out;
}

/** The part of a composed work that published figures speak of. */
export interface Work {
  readonly outer: OutSize;
  readonly mats: readonly {
    readonly borders: Readonly<Record<"head" | "left" | "right" | "foot", Out>>;
    readonly back: OutSize;
    readonly face: OutSize;
    readonly bevel: { readonly plan: Out; readonly slope: Out };
  }[];
  readonly checks: readonly { readonly code: string; readonly level: string; readonly about: string }[];
}

/** One work, composed the way the command line does it. */
export function work(document: object): Work {
  const made = composeJson(document);
  if (!("outer" in made)) throw new Error(`not composed: ${JSON.stringify(made)}`);
  return made as Work;
}

/** A window of a typed size in a board, inches. */
export const inBoard = (
  [outerWidth, outerHeight]: readonly [string, string],
  [width, height]: readonly [string, string],
  lift: object,
  graduation = "1/16 in",
): Work =>
  work({
    unit: "in",
    graduation,
    window: { show: "typed", width, height },
    outer: { width: outerWidth, height: outerHeight },
    lift,
  });

/** The four borders of the lowest mat as they are printed: head, left, right, foot. */
export function borderTexts({ mats }: Work): string[] {
  const borders = mats[0]?.borders;
  return borders === undefined
    ? []
    : [borders.head.text, borders.left.text, borders.right.text, borders.foot.text];
}

/** Inches of a length, for figures that are published in decimals; to the billionth, so that what is whole is whole. */
export const inches = (length: Out | undefined): number =>
  Number(((length?.mm ?? Number.NaN) / 25.4).toFixed(9));

/** The lowest mat's head, foot and left border in decimal inches. */
export function headFootSide({ mats }: Work): { head: number; foot: number; side: number } {
  const borders = mats[0]?.borders;
  return { head: inches(borders?.head), foot: inches(borders?.foot), side: inches(borders?.left) };
}
