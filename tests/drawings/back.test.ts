import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { compose, type Composition, type Design } from "../../src/assembly/index.ts";
import { backView, type Drawing } from "../../src/drawings/index.ts";
import type { Sides } from "../../src/geometry/index.ts";
import { inch, type Length, readLength, subtract, sum } from "../../src/lengths/index.ts";
import { anyDesign } from "./arbitrary.ts";
import { DESIGNS, ferrySlip } from "./designs.ts";
import { boxOf, figureIn, groupNames, inGroup, leaves, overlap, said, texts } from "./reading.ts";
import { optionsFor, px, SCALE, viewsOf } from "./shown.ts";

/** The same work with other borders of its one mat: what a mat that exists may have. */
function bordered(design: Design, borders: Partial<Sides>): Composition {
  const composition = compose(design);
  const [mat] = composition.mats;
  if (!mat) throw new Error("no mat");
  return { ...composition, mats: [{ ...mat, borders: { ...mat.borders, ...borders } }] };
}

const lengthOf = (figure: string, unit: "in" | "mm"): Length => {
  const read = readLength(figure.replace("−", "-").replace("≈ ", ""), unit, true);
  if (!read.ok) throw new Error(`cannot read ${figure}`);
  return read.length;
};

const figuresOf = (design: Design, names: readonly string[]): string => {
  const { back } = viewsOf(design);
  return names.map((name) => figureIn(back, name)).join(" ");
};
const row = (design: Design): string =>
  figuresOf(design, ["border-right", "window-width", "border-left", "outer-width"]);
const column = (design: Design): string =>
  figuresOf(design, ["border-head", "window-height", "border-foot", "outer-height"]);
const yOf = (drawing: Drawing, name: string): number => {
  const mark = inGroup(drawing, name).at(-1);
  return mark ? boxOf(mark).top : Number.NaN;
};

describe("the back view", () => {
  it("[D1] reads 2 3/4, 1 3/4 where the front has 1 3/4 at its left and 2 3/4 at its right", () => {
    const uneven = bordered(ferrySlip, { left: inch(7, 4), right: inch(11, 4) });
    const back = backView(uneven, optionsFor(uneven));
    const rowOfFigures = ["border-right", "window-width", "border-left"].map((name) => ({
      figure: figureIn(back, name),
      x: boxOf({ kind: "group", name, marks: inGroup(back, name).filter((mark) => mark.kind === "text") })
        .left,
    }));
    const inOrder = rowOfFigures.toSorted((a, b) => a.x - b.x).map(({ figure }) => figure);
    expect(inOrder).toEqual(["2 3/4", "6 1/2", "1 3/4"]);
  });

  it("[D1] mirrors the opening and the paper: x_back = W - x - w", () => {
    fc.assert(
      fc.property(anyDesign, (design) => {
        const composition = compose(design);
        const back = backView(composition, optionsFor(composition));
        const paper = inGroup(back, "paper")[0];
        if (!paper || composition.print === null) return;
        const right = Math.max(...composition.print.sheetCorners.map((corner) => corner.x));
        const box = boxOf(paper);
        expect(box.left).toBeCloseTo(back.frame.left + (composition.outer.width - right) * SCALE, -1);
      }),
    );
  });

  it("[D2] chains make the whole, in the figures that stand there", () => {
    fc.assert(
      fc.property(anyDesign, (design) => {
        const composition = compose(design);
        const back = backView(composition, optionsFor(composition));
        const { unit } = design.ruler;
        for (const [parts, whole] of [
          [["border-right", "window-width", "border-left"], "outer-width"],
          [["border-head", "window-height", "border-foot"], "outer-height"],
        ] as const) {
          const figures = [...parts, whole].map((name) => figureIn(back, name));
          if (figures.some((figure) => figure.startsWith("≈"))) continue;
          expect(sum(parts.map((name) => lengthOf(figureIn(back, name), unit)))).toBe(
            lengthOf(figureIn(back, whole), unit),
          );
        }
      }),
    );
  });

  it("[D2] the figures of known works", () => {
    expect(row(ferrySlip)).toBe("2 7 2 11");
    expect(column(ferrySlip)).toBe("1 3/4 10 2 1/4 14");
    expect(row(DESIGNS["mm-double"])).toBe("60 281 59 400");
    expect(column(DESIGNS["mm-double"])).toBe("61 365 74 500");
    expect(row(DESIGNS["unequal-borders"])).toBe("3 6 2 11");
    expect(row(DESIGNS["window-past-board"])).toBe("−1/2 7 −1/2 6");
  });

  it("[D2] says ≈ where a border is not a whole number of graduations", () => {
    const { back } = viewsOf({
      ...ferrySlip,
      print: null,
      window: { show: "typed", width: inch(225, 32), height: inch(10) },
    });
    expect(figureIn(back, "border-left")).toBe("1 15/16");
    expect(figureIn(back, "window-width")).toMatch(/^≈ 7 1\/16$/);
  });

  it("[D3] HEAD stands once, its arrow above the window and pointing up", () => {
    fc.assert(
      fc.property(anyDesign, (design) => {
        const composition = compose(design);
        const back = backView(composition, optionsFor(composition));
        expect(texts(back).filter((mark) => said(mark) === "HEAD")).toHaveLength(1);
        const [shaft, barb] = inGroup(back, "head");
        if (shaft?.kind !== "line" || barb?.kind !== "polyline") throw new Error("no arrow");
        expect(shaft.from.x).toBe(shaft.to.x);
        expect(barb.points[1]).toEqual(shaft.to);
        expect(Math.min(...barb.points.map((point) => point.y))).toBe(shaft.to.y);
      }),
    );
  });

  it("[D3] HEAD stands in the wider strip: over the paper's edge, or under it", () => {
    const { back: over } = viewsOf(DESIGNS["mm-double"]);
    const { back: under } = viewsOf(DESIGNS["unequal-borders"]);
    expect(yOf(over, "head")).toBeLessThan(yOf(over, "paper"));
    expect(yOf(under, "head")).toBeGreaterThan(yOf(under, "paper"));
  });

  it("[D3] HEAD moves above the board where the border has no room, and the figures make way", () => {
    const { back } = viewsOf(DESIGNS["tiny-border"]);
    const head = boxOf({ kind: "group", name: "head", marks: inGroup(back, "head") });
    expect(head.bottom).toBeLessThanOrEqual(back.frame.top);
    for (const { path, mark } of leaves(back.marks)) {
      if (mark.kind === "text" && !path.includes("head")) expect(overlap(boxOf(mark), head)).toBe(false);
    }
  });

  it("[D4] OUT lies in a clear field inside the hatched window", () => {
    fc.assert(
      fc.property(anyDesign, (design) => {
        const composition = compose(design);
        const back = backView(composition, optionsFor(composition));
        const hatched = inGroup(back, "window").find(
          (mark) => mark.kind === "area" && mark.fill === "hatch-out",
        );
        const out = inGroup(back, "out");
        expect(texts(back).filter((mark) => said(mark) === "OUT")).toHaveLength(hatched ? 1 : 0);
        if (!hatched) return;
        const window = boxOf(hatched);
        const field = out.find((mark) => mark.kind === "area");
        const inner = field ?? out.find((mark) => mark.kind === "circle");
        if (!inner) throw new Error("neither a field nor a leader");
        const box = field ? boxOf(inner) : dotOf(boxOf(inner));
        expect(box.left).toBeGreaterThan(window.left);
        expect(box.right).toBeLessThan(window.right);
        expect(box.top).toBeGreaterThan(window.top);
        expect(box.bottom).toBeLessThan(window.bottom);
        if (field) {
          const word = out.find((mark) => mark.kind === "text");
          if (!word) throw new Error("no word");
          expect(boxOf(word).left).toBeGreaterThan(window.left);
          expect(boxOf(word).right).toBeLessThan(window.right);
        }
      }),
    );
  });

  it("[D7] is heavy at the hands exactly where the two borders differ", () => {
    fc.assert(
      fc.property(anyDesign, (design) => {
        const composition = compose(design);
        const [mat] = composition.mats;
        const back = backView(composition, optionsFor(composition));
        const hands = inGroup(back, "hands").flatMap((mark) =>
          mark.kind === "text" && said(mark).endsWith("hand") ? [mark] : [],
        );
        expect(hands).toHaveLength(2);
        const differ = mat && mat.borders.left !== mat.borders.right;
        for (const hand of hands) expect(hand.weight).toBe(differ ? "bold" : "regular");
      }),
    );
  });

  it("[D7] sets the front's right under the left hand's edge of the board", () => {
    const { back } = viewsOf(ferrySlip);
    const place = (word: string): number => {
      const mark = texts(back).find((each) => said(each) === word);
      return mark ? boxOf(mark).left : Number.NaN;
    };
    expect(place("front’s right,")).toBeLessThan(place("front’s left,"));
    expect(place("at your LEFT hand")).toBeLessThan(place("at your RIGHT hand"));
  });

  it("shows the chosen mat's opening, and the others' hidden", () => {
    const composition = compose(DESIGNS["three-mats"]);
    const whole = { ...optionsFor(composition), scale: 1 };
    for (const [index, mat] of composition.mats.entries()) {
      const back = backView(composition, { ...whole, mat: index });
      expect(groupNames(back)).toContain("other-openings");
      const hatched = inGroup(back, "window").find(
        (mark) => mark.kind === "area" && mark.fill === "hatch-out",
      );
      if (!hatched) throw new Error("nothing hatched");
      const box = boxOf(hatched);
      expect(box.right - box.left).toBe(mat.back.width);
      expect(box.left - back.frame.left).toBe(mat.borders.right);
      const others = inGroup(back, "other-openings");
      expect(others).toHaveLength(2);
      for (const other of others) expect(other).toMatchObject({ kind: "area", line: "hidden" });
    }
  });

  it("refuses a mat that is not there", () => {
    const composition = compose(ferrySlip);
    expect(() => backView(composition, { ...optionsFor(composition), mat: 1 })).toThrow(RangeError);
  });

  it("[D20] names every stretch by the front's side", () => {
    const { back } = viewsOf(ferrySlip);
    for (const name of [
      "border-left",
      "border-right",
      "border-head",
      "border-foot",
      "window-width",
      "window-height",
      "outer-width",
      "outer-height",
    ]) {
      expect(groupNames(back).filter((each) => each === name)).toEqual([name]);
      expect(
        inGroup(back, name)
          .map((mark) => mark.kind)
          .toSorted(),
      ).toEqual(["arrowhead", "arrowhead", "line", "text"]);
    }
  });

  it("[D21] puts the arrows of a stretch under 34 pixels outside, pointing in", () => {
    const narrow = arrowsOf(DESIGNS["tiny-border"]);
    const wide = arrowsOf(ferrySlip);
    expect(wide).toEqual([180, 0]);
    expect(narrow).toEqual([0, 180]);
  });

  it("[D22] starts extension lines 3 pixels off the board and passes the figure's line by 4", () => {
    const { back } = viewsOf(ferrySlip);
    const upright = inGroup(back, "extension-lines").flatMap((mark) =>
      mark.kind === "line" && mark.from.x === mark.to.x ? [mark] : [],
    );
    const whole = inGroup(back, "outer-width").find((mark) => mark.kind === "line");
    const chain = inGroup(back, "window-width").find((mark) => mark.kind === "line");
    if (whole?.kind !== "line" || chain?.kind !== "line") throw new Error("no dimension line");
    expect(upright).toHaveLength(4);
    for (const [index, mark] of upright.toSorted((a, b) => a.from.x - b.from.x).entries()) {
      expect(subtract(back.frame.top, mark.from.y)).toBeCloseTo(px(3), -1);
      const passed = index === 0 || index === 3 ? whole : chain;
      expect(subtract(passed.from.y, mark.to.y)).toBeCloseTo(px(4), -1);
    }
  });

  it("[D23] keeps every figure off its own line and off the board", () => {
    fc.assert(
      fc.property(anyDesign, (design) => {
        const composition = compose(design);
        const back = backView(composition, optionsFor(composition));
        for (const name of ["border-left", "window-width", "border-right", "outer-width"]) {
          const marks = inGroup(back, name);
          const figure = marks.find((mark) => mark.kind === "text");
          const line = marks.find((mark) => mark.kind === "line");
          if (figure?.kind !== "text" || line?.kind !== "line") throw new Error("no figure");
          expect(figure.degrees ?? 0).toBe(0);
          expect(boxOf(figure).bottom).toBeLessThan(line.from.y);
        }
        for (const name of ["border-head", "window-height", "border-foot", "outer-height"]) {
          const marks = inGroup(back, name);
          const figure = marks.find((mark) => mark.kind === "text");
          const line = marks.find((mark) => mark.kind === "line");
          if (figure?.kind !== "text" || line?.kind !== "line") throw new Error("no figure");
          expect(figure.degrees).toBe(-90);
          expect(boxOf(figure).right).toBeLessThan(line.from.x);
          expect(boxOf(figure).left).toBeGreaterThan(back.frame.left + back.frame.width);
        }
      }),
    );
  });

  it("[D24] draws 1 1/16 and 11/16 from different parts", () => {
    const parts = [inch(17, 16), inch(11, 16)].map((head) => {
      const changed = bordered(ferrySlip, { head });
      const figure = inGroup(backView(changed, optionsFor(changed)), "border-head").find(
        (mark) => mark.kind === "text",
      );
      return figure?.kind === "text" ? figure.runs : [];
    });
    expect(parts[0]).toMatchObject([{ kind: "fraction", whole: "1", numerator: "1", denominator: "16" }]);
    expect(parts[1]).toMatchObject([{ kind: "fraction", whole: "", numerator: "11", denominator: "16" }]);
  });
});

const dotOf = (box: ReturnType<typeof boxOf>) => {
  const [x, y] = [(box.left + box.right) / 2, (box.top + box.bottom) / 2];
  return { left: x, right: x, top: y, bottom: y };
};

const arrowsOf = (design: Design): number[] =>
  inGroup(viewsOf(design).back, "border-right").flatMap((mark) =>
    mark.kind === "arrowhead" ? [mark.degrees] : [],
  );
