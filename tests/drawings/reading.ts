import type { Rect } from "../../src/drawings/views/shapes.ts";
import { estimateText, extentOf, type Drawing, type Mark, type Run } from "../../src/drawings/index.ts";

/** A mark without groups, and the names of the groups that hold it, outermost first. */
export interface Leaf {
  readonly path: readonly string[];
  readonly mark: Exclude<Mark, { kind: "group" }>;
}

export function leaves(marks: readonly Mark[], path: readonly string[] = []): Leaf[] {
  return marks.flatMap((mark) =>
    mark.kind === "group" ? leaves(mark.marks, [...path, mark.name]) : [{ path, mark }],
  );
}

export const inGroup = (drawing: Drawing, name: string): Leaf["mark"][] =>
  leaves(drawing.marks)
    .filter((leaf) => leaf.path.includes(name))
    .map((leaf) => leaf.mark);

export const groupNames = (drawing: Drawing): string[] =>
  drawing.marks.flatMap((mark) => (mark.kind === "group" ? [mark.name] : []));

const runText = (run: Run): string => {
  if (run.kind === "text") return run.text;
  const fraction = run.numerator === "" ? "" : `${run.numerator}/${run.denominator}`;
  return [run.whole, fraction].filter((part) => part !== "").join(" ");
};

export type TextMark = Extract<Mark, { kind: "text" }>;
export const said = (mark: TextMark): string => mark.runs.map(runText).join("");
export const texts = (drawing: Drawing): TextMark[] =>
  leaves(drawing.marks).flatMap(({ mark }) => (mark.kind === "text" ? [mark] : []));

/** The figure that stands in a group. */
export const figureIn = (drawing: Drawing, name: string): string =>
  inGroup(drawing, name)
    .flatMap((mark) => (mark.kind === "text" ? [said(mark)] : []))
    .join(" | ");

/** The box of a text's ink: capitals or a stacked fraction, without the room that leading leaves. */
export function inkBox(mark: TextMark): Rect {
  const box = extentOf(mark, estimateText);
  const stacked = mark.runs.some((run) => run.kind === "fraction" && run.numerator !== "");
  if (stacked || (mark.degrees ?? 0) % 90 !== 0) return box;
  const trim = mark.size * 0.2;
  return mark.degrees === -90
    ? { ...box, left: box.left + trim, right: box.right - trim }
    : { ...box, top: box.top + trim, bottom: box.bottom - trim };
}

export const overlap = (a: Rect, b: Rect): boolean =>
  a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;

export const boxOf = (mark: Mark): Rect => extentOf(mark, estimateText);
