import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { compose } from "../../src/assembly/index.ts";
import { fitScale, frontView, backView, sectionView } from "../../src/drawings/index.ts";
import { inch, mm, ZERO } from "../../src/lengths/index.ts";
import { anyDesign } from "./arbitrary.ts";
import { DESIGNS, ferrySlip } from "./designs.ts";
import { boxOf, figureIn, groupNames, inGroup, said, texts } from "./reading.ts";
import { optionsFor, px, SCALE, viewsOf } from "./shown.ts";
import { WORDS } from "./words.ts";

const lengthOfLine = (view: Parameters<typeof inGroup>[0], name: string): number => {
  const heads = inGroup(view, name).flatMap((mark) => (mark.kind === "arrowhead" ? [mark.at.x] : []));
  return Math.max(...heads) - Math.min(...heads);
};

describe("the section through the foot", () => {
  it("[D10] leans each cut at its true angle", () => {
    for (const degrees of [30, 45, 52, 90]) {
      const design = {
        ...ferrySlip,
        mats: [{ thickness: inch(1, 8), bevel: degrees, reveal: ZERO, board: "rag" }],
      };
      const { section } = viewsOf(design);
      const mat = inGroup(section, "mat-0").find((mark) => mark.kind === "area");
      if (mat?.kind !== "area") throw new Error("no mat");
      const [face, , , back] = mat.points;
      if (!face || !back) throw new Error("no cut");
      const angle = (Math.atan2(back.y - face.y, face.x - back.x) * 180) / Math.PI;
      expect(angle).toBeCloseTo(degrees, 3);
      expect(back.y - face.y).toBe(inch(1, 8) * SCALE * section.times);
    }
  });

  it("[D10] draws border and reach at the section's own scale, and says how much that is", () => {
    const { section, composition } = viewsOf(ferrySlip);
    expect(section.times).toBe(4);
    expect(section.broken).toBe(false);
    expect(lengthOfLine(section, "border-foot")).toBe(inch(9, 4));
    expect(figureIn(section, "border-foot")).toBe("2 1/4");
    expect(composition.print?.cover.foot).toBe(inch(9, 8));
    expect(lengthOfLine(section, "cover-foot")).toBe(inch(9, 8));
    expect(figureIn(section, "cover-foot")).toBe("1 1/8");
    const paper = inGroup(section, "paper").find((mark) => mark.kind === "area");
    const mat = inGroup(section, "mat-0").find((mark) => mark.kind === "area");
    if (!paper || mat?.kind !== "area") throw new Error("no paper or mat");
    const tip = mat.points.reduce((least, point) => Math.min(least, point.x), Infinity);
    expect(boxOf(paper).right - tip).toBe(inch(9, 8));
  });

  it("[D10] enlarges until the thinnest mat is seen", () => {
    const composition = compose({ ...ferrySlip, outer: { kind: "size", width: inch(60), height: inch(80) } });
    const section = sectionView(composition, optionsFor(composition, 1 / 16));
    expect(section.times).toBe(16);
  });

  it("[D10] breaks the border where the drawing would be too wide, and keeps the true figure", () => {
    fc.assert(
      fc.property(anyDesign, fc.integer({ min: 300, max: 600 }), (design, room) => {
        const composition = compose(design);
        const free = sectionView(composition, optionsFor(composition));
        const held = sectionView(composition, { ...optionsFor(composition), width: px(room) });
        for (const name of groupNames(free).filter((each) => /^(border|cover|reveal)-/.test(each))) {
          expect(figureIn(held, name)).toBe(figureIn(free, name));
        }
        expect(free.broken).toBe(false);
        if (free.width <= px(room - 12)) expect(held.width).toBe(free.width);
        expect(held.width).toBeLessThanOrEqual(free.width);
      }),
    );
  });

  it("[D10] stays within the width asked for where figures allow it, a break between clear ground", () => {
    const composition = compose(DESIGNS["three-mats"]);
    const held = sectionView(composition, { ...optionsFor(composition), width: px(360) });
    expect(held.broken).toBe(true);
    expect(held.width).toBeLessThanOrEqual(px(360));
    const ground = inGroup(held, "break").filter((mark) => mark.kind === "area");
    expect(ground.length).toBeGreaterThan(0);
    for (const mark of ground) expect(mark).toMatchObject({ fill: "paper", line: null });
  });

  it("[D10] a floated print lies in its opening on the mount, and reaches nowhere under the mat", () => {
    const { section } = viewsOf(DESIGNS.float);
    const [paper, mat] = ["paper", "mat-0"].map((name) =>
      boxOf({ kind: "group", name, marks: inGroup(section, name) }),
    );
    if (!paper || !mat) throw new Error("no paper or mat");
    expect(paper.right).toBeLessThan(mat.left);
    expect(paper.bottom).toBe(mat.bottom);
    expect(groupNames(section)).not.toContain("cover-foot");
  });

  it("[D11] a mat that the window swallows stands dashed", () => {
    const composition = compose(ferrySlip);
    const [mat] = composition.mats;
    if (!mat) throw new Error("no mat");
    const gone = { ...composition, mats: [{ ...mat, borders: { ...mat.borders, foot: inch(-1, 4) } }] };
    const section = sectionView(gone, optionsFor(gone));
    expect(inGroup(section, "mat-0")).toMatchObject([{ kind: "line", line: "hidden" }]);
    expect(figureIn(section, "border-foot")).toBe("−1/4");
  });

  it("[D15] numbers the layers from the face down, each leader ending in its own layer", () => {
    for (const design of [ferrySlip, DESIGNS["three-mats"], DESIGNS["mat-alone"]]) {
      const { section } = viewsOf(design);
      const kinds = section.layers.map((layer) => layer.kind);
      expect(kinds).toEqual([...design.mats.map(() => "mat"), ...(design.print ? ["print"] : []), "mount"]);
      expect(section.layers.map((layer) => layer.number)).toEqual(kinds.map((_, index) => index + 1));
      expect(section.layers.map((layer) => layer.mat).filter((mat) => mat !== null)).toEqual(
        design.mats.map((_, index) => index).toReversed(),
      );
      for (const layer of section.layers) {
        const leader = inGroup(section, `leader-${layer.number}`);
        const dot = leader.find((mark) => mark.kind === "circle");
        const path = leader.find((mark) => mark.kind === "polyline");
        if (dot?.kind !== "circle" || path?.kind !== "polyline") throw new Error("no leader");
        expect(path.points.at(-1)).toEqual(dot.centre);
        const name =
          layer.mat === null ? { print: "paper", mount: "mount", mat: "" }[layer.kind] : `mat-${layer.mat}`;
        const body = inGroup(section, name).find((mark) => mark.kind === "area");
        if (!body) throw new Error(`no ${name}`);
        const box = boxOf(body);
        expect(dot.centre.y).toBeGreaterThan(box.top);
        expect(dot.centre.y).toBeLessThan(box.bottom);
        expect(dot.centre.x).toBeGreaterThan(box.left);
        expect(dot.centre.x).toBeLessThan(box.right);
      }
    }
  });

  it("[D15] takes the mount as given", () => {
    const composition = compose(ferrySlip);
    const mount = { thickness: mm(3), board: "8-ply" };
    const { layers } = sectionView(composition, { ...optionsFor(composition), mount });
    expect(layers.at(-1)).toEqual({ number: 3, kind: "mount", mat: null, ...mount });
  });

  it("[D25] reads a strip as cut closer than the ruler, and a reach rounded down", () => {
    const { section, composition } = viewsOf(DESIGNS["mm-double"]);
    expect(composition.mats[1]?.revealAsCut).toBe(mm(5.5));
    expect(figureIn(section, "reveal-1")).toBe("5.5");
    const print = composition.print;
    if (!print) throw new Error("no print");
    const reaching = { ...composition, print: { ...print, cover: { ...print.cover, foot: mm(12.3499) } } };
    expect(figureIn(sectionView(reaching, optionsFor(reaching)), "cover-foot")).toBe("≈ 12.3");
  });
});

describe("scales", () => {
  it("[D12] figures keep their size at any scale at which they fit", () => {
    const sizes = [1 / 6, 1 / 4, 1].map((scale) => {
      const { back } = viewsOf(ferrySlip, scale);
      return texts(back).map((mark) => [said(mark), mark.size, ...mark.runs.map((run) => run.size)]);
    });
    expect(sizes[0]).toEqual(sizes[1]);
    expect(sizes[1]).toEqual(sizes[2]);
  });

  it("[D13] front and back frame the package at one scale", () => {
    const { front, back, composition } = viewsOf(ferrySlip);
    for (const view of [front, back]) {
      expect(view.frame.width).toBe(composition.outer.width * SCALE);
      expect(view.frame.height).toBe(composition.outer.height * SCALE);
    }
  });

  it("[D13] the scale on offer fits the room", () => {
    for (const [name, design] of Object.entries(DESIGNS)) {
      const composition = compose(design);
      for (const room of [330, 420, 700]) {
        const space = { width: px(room), height: px(room * 1.2) };
        const scale = fitScale(composition, space, { words: WORDS });
        const options = optionsFor(composition, scale);
        for (const view of [frontView(composition, options), backView(composition, options)]) {
          expect(view.width, name).toBeLessThanOrEqual(space.width);
          expect(view.height, name).toBeLessThanOrEqual(space.height);
        }
      }
    }
  });

  it("[D13] refuses a scale that is none", () => {
    const composition = compose(ferrySlip);
    for (const scale of [0, -1, Number.NaN, Infinity]) {
      expect(() => frontView(composition, optionsFor(composition, scale))).toThrow(RangeError);
    }
  });
});
