import { gulls, staithe } from "../pictures/gulls.ts";
import { slip } from "../pictures/slips.ts";
import { mudLarks, plovers } from "../pictures/waders.ts";
import { area, type ExampleWork, inches } from "../work.ts";

const maker = "Ines Okonedo-Vale";
/** The plate's mark in sight, and a little more at the foot for the pencilled line. */
const plate = { show: "margins", top: "1/4", side: "1/4", foot: "1/2" } as const;

export const okonedoVale: readonly ExampleWork[] = [
  {
    id: "mud-larks",
    work: {
      title: "Mud Larks",
      maker,
      year: "2026",
      process: "etching",
      edition: "3 / 20",
      record: {
        subject: "Children on the flats at low water",
        value: "420.00",
        label:
          "At low water the flats belong to whoever gets there first. The plate was bitten in four stages, and the deepest line is the tide's own edge.",
      },
    },
    draw: mudLarks,
    unit: "in",
    sheet: [13, 9.75],
    image: area(1.75, 1.5, 9.5, 6.25),
    design: { window: plate, outer: inches("14", "11") },
  },
  {
    id: "ferry-slip-at-ebb",
    work: {
      title: "Ferry Slip at Ebb",
      maker,
      year: "2026",
      process: "linocut",
      edition: "4, 5 and 6 / 12",
      quantity: 3,
      notes: "Three sheets, one brief: one window serves them all.",
    },
    draw: slip(0.38, 5, 0.7),
    unit: "in",
    sheet: [9.5, 12],
    image: area(1.125, 0.75, 7.25, 10.25),
    print: {
      edition: [
        {
          name: "no. 5",
          width: "9 7/16",
          height: "12",
          image: { left: "1 1/16", top: "3/4", width: "7 1/4", height: "10 1/4" },
        },
        // Torn short at the foot: worth a second measure before the board is cut.
        {
          name: "no. 6",
          width: "9 1/2",
          height: "11 7/8",
          image: { left: "1 1/8", top: "11/16", width: "7 1/4", height: "10 1/4" },
        },
      ],
    },
    design: { window: { show: "overlap", overlap: "1/8" }, outer: inches("11", "14") },
  },
  {
    id: "black-headed-gulls",
    work: { title: "Black-headed Gulls", maker, year: "2025", process: "etching", edition: "11 / 20" },
    draw: gulls,
    unit: "in",
    sheet: [12.5, 9.5],
    image: area(1.75, 1.5, 9, 6),
    design: { window: plate, outer: inches("14", "11") },
  },
  {
    id: "the-long-slip",
    work: { title: "The Long Slip", maker, year: "2026", process: "linocut", edition: "1 / 8" },
    draw: slip(0.45, 9, 0.26),
    unit: "in",
    sheet: [12.5, 17.5],
    image: area(1.125, 1.25, 10.25, 14.75),
    design: { window: { show: "overlap" }, outer: inches("16", "20") },
  },
  {
    id: "ringed-plover-bank",
    work: {
      title: "Ringed Plover Bank",
      maker,
      year: "2026",
      process: "etching and aquatint",
      edition: "2 / 15",
    },
    draw: plovers,
    unit: "in",
    sheet: [17, 12.5],
    image: area(1.5, 1.5, 14, 9.25),
    design: {
      window: plate,
      outer: inches("20", "16"),
      mats: [
        { board: "4-ply grey rag", thickness: "1/16", bevel: 45 },
        { board: "4-ply white rag", thickness: "1/16", bevel: 45, reveal: "1/4" },
      ],
    },
  },
  {
    id: "over-the-staithe",
    work: {
      title: "Over the Staithe",
      maker,
      year: "2025",
      process: "etching",
      edition: "7 / 20",
      notes: "A hairline of grey was asked for; the ruler has no such mark.",
    },
    draw: staithe,
    unit: "in",
    sheet: [12.5, 9.75],
    image: area(1.75, 1.5, 9, 6.25),
    design: {
      window: plate,
      outer: inches("14", "11"),
      mats: [
        { board: "4-ply grey rag", thickness: "1/16", bevel: 45 },
        { board: "4-ply white rag", thickness: "1/16", bevel: 45, reveal: "1/32" },
      ],
    },
  },
];
