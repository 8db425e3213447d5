import type { Design, MatRule, Print } from "../../src/assembly/index.ts";
import { inch, mm, ZERO } from "../../src/lengths/index.ts";

/** Invented designs, one for each thing that a drawing has to get right. */

const SIXTEENTHS = { unit: "in", graduation: inch(1, 16) } as const;
const MILLIMETRES = { unit: "mm", graduation: mm(1) } as const;

const print = (over: Partial<Print> & Pick<Print, "sheet" | "image">): Print => ({
  outline: null,
  sheetOutline: null,
  angle: 0,
  level: "image",
  thickness: mm(0.3),
  sure: ZERO,
  edition: [],
  ...over,
});

const ragMat = (over: Partial<MatRule> = {}): MatRule => ({
  thickness: inch(1, 16),
  bevel: 45,
  reveal: ZERO,
  board: "4-ply white rag",
  ...over,
});

export const ferrySlip: Design = {
  ruler: SIXTEENTHS,
  print: print({
    sheet: { width: inch(19, 2), height: inch(12) },
    image: { left: inch(9, 8), top: inch(3, 4), width: inch(29, 4), height: inch(41, 4) },
  }),
  window: { show: "overlap", overlap: inch(1, 8) },
  hold: inch(1, 8),
  play: inch(1, 16),
  outer: { kind: "size", width: inch(11), height: inch(14) },
  lift: { rule: "fixed", by: inch(1, 4) },
  holding: "pockets",
  mount: "4-ply white rag",
  mats: [ragMat()],
  leastBorder: inch(1),
  leastPocket: inch(1, 2),
  editionSpread: inch(1, 16),
  scaleOffset: ZERO,
};

const metric: Design = {
  ...ferrySlip,
  ruler: MILLIMETRES,
  print: print({
    sheet: { width: mm(330), height: mm(430) },
    image: { left: mm(23), top: mm(26), width: mm(287), height: mm(371) },
  }),
  window: { show: "overlap", overlap: mm(3) },
  hold: mm(3),
  play: mm(1),
  outer: { kind: "size", width: mm(400), height: mm(500) },
  lift: { rule: "fixed", by: mm(6) },
  mats: [ragMat({ thickness: mm(1.5) }), ragMat({ thickness: mm(1.5), reveal: mm(5) })],
  leastBorder: mm(25),
  leastPocket: mm(12),
  editionSpread: mm(2),
};

/** A ring of points about a rectangle, each moved in or out by a fixed pattern: a brushed or torn edge. */
export function roughEdge(
  left: number,
  top: number,
  width: number,
  height: number,
  each: number,
  swing: number,
) {
  const points: { x: ReturnType<typeof mm>; y: ReturnType<typeof mm> }[] = [];
  const wave = (index: number): number => swing * (Math.sin(index * 1.7) + 0.6 * Math.sin(index * 0.43 + 1));
  const at = (x: number, y: number): void => {
    points.push({ x: mm(Math.round(x * 100) / 100), y: mm(Math.round(y * 100) / 100) });
  };
  let index = 0;
  for (let x = 0; x < width; x += each) at(left + x, top + wave(index++));
  for (let y = 0; y < height; y += each) at(left + width + wave(index++), top + y);
  for (let x = width; x > 0; x -= each) at(left + x, top + height + wave(index++));
  for (let y = height; y > 0; y -= each) at(left + wave(index++), top + y);
  return points;
}

export const DESIGNS = {
  "inch-one-mat": ferrySlip,
  "mm-double": metric,
  "three-mats": {
    ...ferrySlip,
    outer: { kind: "size", width: inch(14), height: inch(18) },
    mats: [
      ragMat(),
      ragMat({ reveal: inch(1, 4), board: "4-ply grey rag" }),
      ragMat({ thickness: inch(1, 8), reveal: inch(1, 2), board: "8-ply white rag" }),
    ],
  },
  float: {
    ...ferrySlip,
    print: print({
      sheet: { width: inch(7), height: inch(9) },
      image: { left: inch(1, 2), top: inch(1, 2), width: inch(6), height: inch(8) },
      sheetOutline: roughEdge(0.8, 0.8, 176, 227, 3, 0.5),
    }),
    window: { show: "sheet", gap: inch(3, 8) },
  },
  "margins-platemark": {
    ...ferrySlip,
    print: print({
      sheet: { width: inch(10), height: inch(13) },
      image: { left: inch(7, 4), top: inch(3, 2), width: inch(13, 2), height: inch(17, 2) },
    }),
    window: { show: "margins", top: inch(1, 2), side: inch(1, 2), foot: inch(3, 4) },
    outer: { kind: "size", width: inch(14), height: inch(17) },
  },
  skew: {
    ...ferrySlip,
    print: print({
      sheet: { width: inch(10), height: inch(12) },
      image: { left: inch(3, 2), top: inch(5, 4), width: inch(7), height: inch(9) },
      angle: 4,
    }),
  },
  "skew-kept": {
    ...ferrySlip,
    print: print({
      sheet: { width: inch(10), height: inch(12) },
      image: { left: inch(3, 2), top: inch(5, 4), width: inch(7), height: inch(9) },
      angle: 4,
      level: "sheet",
    }),
    window: { show: "margins", top: inch(1, 4), side: inch(1, 4), foot: inch(1, 4) },
  },
  outline: {
    ...metric,
    print: print({
      sheet: { width: mm(280), height: mm(356) },
      image: { left: mm(20), top: mm(20), width: mm(240), height: mm(316) },
      outline: roughEdge(22, 24, 236, 300, 4, 2.2),
    }),
    window: { show: "margins", top: mm(8), side: mm(8), foot: mm(12) },
    mats: [ragMat({ thickness: mm(1.5) })],
  },
  landscape: {
    ...ferrySlip,
    print: print({
      sheet: { width: inch(15), height: inch(11) },
      image: { left: inch(1), top: inch(1), width: inch(13), height: inch(17, 2) },
    }),
    outer: { kind: "size", width: inch(20), height: inch(16) },
  },
  "tiny-border": {
    ...ferrySlip,
    print: print({
      sheet: { width: inch(11), height: inch(14) },
      image: { left: inch(1, 4), top: inch(1, 4), width: inch(21, 2), height: inch(27, 2) },
    }),
    lift: { rule: "none" },
  },
  "unequal-borders": {
    ...ferrySlip,
    ruler: { unit: "in", graduation: inch(1) },
    print: print({
      sheet: { width: inch(9), height: inch(12) },
      image: { left: inch(1), top: inch(1), width: inch(7), height: inch(10) },
    }),
    window: { show: "typed", width: inch(6), height: inch(9) },
  },
  "paper-ends": {
    ...ferrySlip,
    print: print({
      sheet: { width: inch(29, 4), height: inch(10) },
      image: { left: ZERO, top: inch(3, 8), width: inch(53, 8), height: inch(73, 8) },
    }),
    window: { show: "typed", width: inch(7), height: inch(19, 2) },
  },
  "window-past-board": {
    ...ferrySlip,
    outer: { kind: "size", width: inch(6), height: inch(14) },
  },
  "mat-alone": { ...ferrySlip, print: null, window: { show: "typed", width: inch(7), height: inch(10) } },
} satisfies Record<string, Design>;
