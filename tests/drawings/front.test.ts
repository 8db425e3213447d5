import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { compose, type Design } from "../../src/assembly/index.ts";
import { frontView, grips, onView, packageView, type View } from "../../src/drawings/index.ts";
import { add, inch, mm, subtract, sum, ZERO } from "../../src/lengths/index.ts";
import { anyDesign } from "./arbitrary.ts";
import { DESIGNS, ferrySlip } from "./designs.ts";
import { boxOf, groupNames, inGroup, type Leaf, leaves } from "./reading.ts";
import { optionsFor, SCALE, viewsOf } from "./shown.ts";

const areaIn = (view: View, name: string, fill: string) => {
  const mark = inGroup(view, name).find((each) => each.kind === "area" && each.fill === fill);
  if (mark?.kind !== "area") throw new Error(`no ${fill} in ${name}`);
  return mark;
};

const pictureOf = (design: Design) => {
  const composition = compose(design);
  const view = frontView(composition, { ...optionsFor(composition), scale: 1, picture: "the print" });
  const mark = inGroup(view, "image").find((each) => each.kind === "picture");
  if (mark?.kind !== "picture") throw new Error("no picture");
  return { composition, view, mark };
};

const lineOf = (mark: Leaf["mark"]): string => ("line" in mark ? String(mark.line) : "");

describe("the front view", () => {
  it("[D8] opens each mat where its face is cut", () => {
    for (const design of [ferrySlip, DESIGNS["mm-double"], DESIGNS["three-mats"]]) {
      const composition = compose(design);
      const view = frontView(composition, { ...optionsFor(composition), scale: 1 });
      for (const [index, mat] of composition.mats.entries()) {
        const fill = index === composition.mats.length - 1 ? "mat" : "mat-lower";
        const [hole] = areaIn(view, `mat-${index}`, fill).holes ?? [];
        if (!hole) throw new Error("no opening");
        const [topLeft, , bottomRight] = hole;
        if (!topLeft || !bottomRight) throw new Error("no corners");
        expect(subtract(topLeft.x, view.frame.left)).toBe(subtract(mat.borders.left, mat.bevel.plan));
        expect(subtract(topLeft.y, view.frame.top)).toBe(subtract(mat.borders.head, mat.bevel.plan));
        expect(subtract(bottomRight.x, topLeft.x)).toBe(mat.face.width);
        expect(subtract(bottomRight.y, topLeft.y)).toBe(mat.face.height);
      }
    }
  });

  it("[D8] lights the bevel from the upper left, each side its own trapezoid", () => {
    const { front, composition } = viewsOf(ferrySlip, 1);
    const [mat] = composition.mats;
    if (!mat) throw new Error("no mat");
    const middle = (fill: string) => {
      const box = boxOf(areaIn(front, "bevel-0", fill));
      return { x: (box.left + box.right) / 2, y: (box.top + box.bottom) / 2 };
    };
    expect(middle("bevel-head").y).toBeLessThan(middle("bevel-foot").y);
    expect(middle("bevel-left").x).toBeLessThan(middle("bevel-right").x);
    const head = boxOf(areaIn(front, "bevel-0", "bevel-head"));
    expect(head.bottom - head.top).toBe(mat.bevel.plan);
    expect(head.right - head.left).toBe(mat.face.width);
  });

  it("[D8] a square cut has no bevel", () => {
    const { front } = viewsOf({
      ...ferrySlip,
      mats: [{ thickness: inch(1, 16), bevel: 90, reveal: ZERO, board: "rag" }],
    });
    expect(groupNames(front)).not.toContain("bevel-0");
  });

  it("[D9] lays the picture on the image's own place, at its own size", () => {
    const { composition, view, mark } = pictureOf(ferrySlip);
    const print = composition.print;
    if (!print || !ferrySlip.print) throw new Error("no print");
    expect(subtract(mark.left, view.frame.left)).toBe(add(print.left, ferrySlip.print.image.left));
    expect(subtract(mark.top, view.frame.top)).toBe(add(print.top, ferrySlip.print.image.top));
    expect([mark.width, mark.height]).toEqual([ferrySlip.print.image.width, ferrySlip.print.image.height]);
    expect(mark.degrees).toBeUndefined();
  });

  it("[D9] trims the picture to the window", () => {
    const { composition, view, mark } = pictureOf(ferrySlip);
    const [mat] = composition.mats;
    if (!mat || !mark.clip) throw new Error("no clip");
    const xs = mark.clip.map((point) => subtract(point.x, view.frame.left));
    const ys = mark.clip.map((point) => subtract(point.y, view.frame.top));
    expect(Math.min(...xs)).toBe(mat.borders.left);
    expect(Math.max(...xs)).toBe(subtract(composition.outer.width, mat.borders.right));
    expect(Math.min(...ys)).toBe(mat.borders.head);
    expect(Math.max(...ys)).toBe(subtract(composition.outer.height, mat.borders.foot));
  });

  it("[D9] hangs a levelled image upright on its turned sheet, and a skew one skew on its level sheet", () => {
    const levelled = pictureOf(DESIGNS.skew);
    expect(levelled.mark.degrees).toBeUndefined();
    const kept = pictureOf(DESIGNS["skew-kept"]);
    expect(kept.mark.degrees).toBe(4);
    for (const { mark } of [levelled, kept]) {
      expect(Math.abs(mark.width - inch(7))).toBeLessThan(3);
      expect(Math.abs(mark.height - inch(9))).toBeLessThan(3);
    }
  });

  it("[D9] trims the picture to the image's own rough edge", () => {
    const { composition, mark } = pictureOf(DESIGNS.outline);
    const points = composition.print?.imageOutline.length ?? 0;
    expect(mark.clip?.length).toBeGreaterThan(points * 0.9);
  });

  it("[D9] shows bare paper round an image with margins, and bare mount round a floated sheet", () => {
    const { front: margins } = viewsOf(DESIGNS["margins-platemark"]);
    const image = boxOf(areaIn(margins, "image", "image"));
    const paper = boxOf(areaIn(margins, "paper", "print-paper"));
    expect(paper.left).toBeLessThan(image.left);
    expect(paper.bottom - image.bottom).toBeGreaterThan(image.top - paper.top);
    const { front: float, composition } = viewsOf(DESIGNS.float, 1);
    const [mat] = composition.mats;
    if (!mat) throw new Error("no mat");
    const sheet = boxOf(areaIn(float, "paper", "print-paper"));
    expect(sheet.left).toBeGreaterThan(float.frame.left + mat.borders.left);
    expect(sheet.right - sheet.left).toBeLessThan(mat.back.width);
    expect(inGroup(float, "paper").some((mark) => mark.kind === "polyline" && mark.line === "thin")).toBe(
      true,
    );
  });

  it("[D11] dashes paper that ends in the window, in its true place", () => {
    const { front, composition } = viewsOf(DESIGNS["paper-ends"], 1);
    const print = composition.print;
    if (!print) throw new Error("no print");
    expect(print.cover.left).toBeLessThan(0);
    const edges = inGroup(front, "paper").flatMap((mark) => (mark.kind === "polyline" ? [mark] : []));
    expect(edges.map((mark) => mark.line)).toEqual(["hidden"]);
    expect(edges[0]?.points[0]?.x).toBe(add(front.frame.left, print.left));
  });

  it("[D11] dashes an opening past the board, and leaves a design that can be made undashed", () => {
    const { front: past } = viewsOf(DESIGNS["window-past-board"]);
    const dashed = inGroup(past, "cannot-be");
    expect(dashed.length).toBeGreaterThan(0);
    for (const mark of dashed) expect(mark).toMatchObject({ line: "hidden" });
    const left = boxOf({ kind: "group", name: "", marks: dashed }).left;
    expect(left).toBeLessThan(past.frame.left);
    expect(groupNames(viewsOf(ferrySlip).front)).not.toContain("cannot-be");
  });

  it("[D11] dashes a strip that the mat above covers", () => {
    const composition = compose(DESIGNS["mm-double"]);
    const [lower, upper] = composition.mats;
    if (!lower || !upper) throw new Error("no mats");
    const covered = {
      ...composition,
      mats: [lower, { ...upper, borders: lower.borders, back: lower.back, revealAsCut: mm(-1.5) }],
    };
    const dashed = inGroup(frontView(covered, optionsFor(covered)), "cannot-be");
    expect(dashed).toMatchObject([{ kind: "area", line: "hidden", fill: "none" }]);
  });

  it("[D12] the small package keeps the front's places and leaves out shade", () => {
    const composition = compose(DESIGNS["three-mats"]);
    const small = packageView(composition, { ...optionsFor(composition), scale: 1 / 20 });
    expect(groupNames(small).filter((name) => name.startsWith("shadow"))).toEqual([]);
    expect(small.frame.width).toBe(composition.outer.width / 20);
    expect(leaves(small.marks).some(({ mark }) => lineOf(mark) === "edge")).toBe(false);
  });

  it("[D14] has a grip in the middle of each of the window's edges", () => {
    fc.assert(
      fc.property(anyDesign, (design) => {
        const composition = compose(design);
        const [mat] = composition.mats;
        if (!mat) throw new Error("no mat");
        const found = grips(composition);
        expect(found.map((grip) => grip.side)).toEqual(["head", "right", "foot", "left"]);
        for (const grip of found) {
          expect(grip.border).toBe(mat.borders[grip.side]);
          const [a, b] = grip.slides === "x" ? (["left", "right"] as const) : (["head", "foot"] as const);
          expect(grip.most).toBe(sum([mat.borders[a], mat.borders[b]]));
          const edge = grip.slides === "x" ? grip.at.x : grip.at.y;
          const far = grip.slides === "x" ? composition.outer.width : composition.outer.height;
          expect(grip.side === a ? edge : subtract(far, edge)).toBe(grip.border);
        }
      }),
    );
  });

  it("[D14] says where a grip lies on the drawing", () => {
    const { front, composition } = viewsOf(ferrySlip);
    const left = grips(composition).find((grip) => grip.side === "left");
    if (!left) throw new Error("no grip");
    expect(onView(front, SCALE, left.at)).toEqual({
      x: add(front.frame.left, inch(1, 2)),
      y: add(front.frame.top, inch(27, 16)),
    });
  });
});
