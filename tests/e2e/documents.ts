import type { ComposeDocument } from "../../src/show/index.ts";

/** Works of every kind: both units, every window, every outer rule, outlines, several mats, a mat alone. */
export const DOCUMENTS: readonly ComposeDocument[] = [
  {
    unit: "in",
    print: {
      width: "9 1/2",
      height: "12",
      image: { left: "1 1/8", top: "3/4", width: "7 1/4", height: "10 1/4" },
    },
  },
  { unit: "in", print: { width: 8.5, height: 11 }, window: { show: "sheet" }, holding: "hinges" },
  {
    unit: "mm",
    graduation: "0.5 mm",
    print: {
      width: "300",
      height: "400",
      image: { left: 30, top: 40, width: 240, height: 300 },
      angle: 0.7,
      sure: "0.5 mm",
    },
    window: { show: "margins", top: "6", side: "6", foot: "12 mm" },
    outer: { borders: { head: 60, side: 60, foot: 75 }, standard: "metric" },
    mats: [
      { thickness: "1.4 mm", bevel: 45 },
      { thickness: "1.4 mm", bevel: 60, reveal: "5 mm", board: "2-ply buff" },
    ],
  },
  {
    unit: "in",
    print: {
      width: "8",
      height: "10",
      outline: [
        ["1", "1"],
        ["7", "1 1/16"],
        ["6 15/16", "9"],
        ["1 1/16", "8 15/16"],
      ],
      sheetOutline: [
        ["0", "0"],
        ["8", "1/16"],
        ["7 15/16", "10"],
        ["0", "9 7/8"],
      ],
    },
    outer: { smallest: "iso", border: "1 1/2" },
    lift: { rule: "ratio", foot: 1.25 },
    mats: [{}, { reveal: "1/4" }, { reveal: "3/16" }],
  },
  {
    unit: "in",
    window: { show: "typed", width: "7", height: "10" },
    outer: { width: 11, height: 14 },
    lift: { rule: "optical" },
  },
];
