import { buoy } from "../pictures/mezzotints.ts";
import { fog, noWind } from "../pictures/monotypes.ts";
import { frost, lowWater } from "../pictures/silver.ts";
import { area, type ExampleWork, inches } from "../work.ts";

const maker = "Joss Amberley-Pike";
const plate = { show: "margins", top: "1/4", side: "1/4", foot: "1/4" } as const;

export const amberleyPike: readonly ExampleWork[] = [
  {
    id: "number-six-buoy",
    work: { title: "Number Six Buoy", maker, year: "2025", process: "mezzotint", edition: "6 / 25" },
    draw: buoy(false),
    unit: "in",
    sheet: [9, 9],
    image: area(1.75, 1.625, 5.5, 5.5),
    design: { window: plate, outer: inches("11", "11") },
  },
  {
    id: "fog-on-the-bar",
    work: {
      title: "Fog on the Bar",
      maker,
      year: "2026",
      process: "monotype",
      notes: "Four torn edges, all to be seen: float it.",
    },
    draw: fog,
    unit: "in",
    sheet: [10.5, 7.5],
    image: area(0.75, 0.625, 9, 6),
    deckled: { deepest: 0.14, spots: 60, kind: "deckled" },
    design: {
      window: { show: "sheet", gap: "3/8" },
      outer: inches("16", "12"),
      holding: "hinges",
      mats: [{ board: "8-ply white rag", thickness: "1/8", bevel: 45 }],
    },
  },
  {
    id: "channel-low-water",
    work: { title: "Channel, Low Water", maker, year: "2026", process: "gelatin silver print" },
    draw: lowWater,
    unit: "in",
    sheet: [14, 11],
    image: area(0.375, 0.375, 13.25, 10.25),
    design: { window: { show: "overlap" }, outer: inches("20", "16") },
  },
  {
    id: "estuary-frost",
    work: { title: "Estuary, Frost", maker, year: "2026", process: "gelatin silver print" },
    draw: frost,
    unit: "in",
    sheet: [10, 8],
    image: area(0.375, 0.375, 9.25, 7.25),
    design: { window: { show: "overlap" }, outer: { smallest: "inch", border: "1 3/4" } },
  },
  {
    id: "bell",
    work: { title: "Bell", maker, year: "2025", process: "mezzotint", edition: "3 / 25" },
    draw: buoy(true),
    unit: "in",
    sheet: [6.5, 6.5],
    image: area(1.5, 1.375, 3.5, 3.5),
    design: { window: plate, outer: inches("8", "8") },
  },
  {
    id: "morning-no-wind",
    work: { title: "Morning, No Wind", maker, year: "2026", process: "monotype" },
    draw: noWind,
    unit: "in",
    sheet: [16, 11.5],
    image: area(1.125, 1.125, 13.75, 9.25),
    design: {
      window: { show: "overlap", overlap: "1/8" },
      outer: { borders: { head: "3", side: "3", foot: "3 1/2" }, standard: "inch" },
    },
  },
];
