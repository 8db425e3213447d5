import { exactFigure, figureText, inch, mm } from "../../src/lengths/index.ts";
import type { PracticeDocument, ShowDocument, StockDocument, WorkDocument } from "../../src/show/schema.ts";
import { chanceFrom } from "./chance.ts";
import { strayingEdge } from "./edges.ts";
import type { Spot } from "./svg.ts";
import { HANGING, wallsOf } from "./walls.ts";
import type { ExampleWork } from "./work.ts";
import { amberleyPike } from "./works/amberley-pike.ts";
import { marrable } from "./works/marrable.ts";
import { okonedoVale } from "./works/okonedo-vale.ts";
import { thole } from "./works/thole.ts";

const WALL_ORDER = [
  "mud-larks",
  "reed-cutters-ground",
  "heron-waiting",
  "spring-tide-four-days",
  "number-six-buoy",
  "fog-on-the-bar",
  "ferry-slip-at-ebb",
  "channel-low-water",
  "drying-nets",
  "black-headed-gulls",
  "eelgrass-september",
  "neap",
  "the-long-slip",
  "estuary-frost",
  "two-sheds-rain",
  "ringed-plover-bank",
  "bittern",
  "bell",
  "sluice-keepers-shed",
  "morning-no-wind",
  "samphire",
  "over-the-staithe",
  "slack-left",
  "slack-right",
];

const ALL = new Map([...okonedoVale, ...marrable, ...thole, ...amberleyPike].map((work) => [work.id, work]));

/** The works in the order of the wall. */
export const WORKS: readonly ExampleWork[] = WALL_ORDER.map((id) => {
  const work = ALL.get(id);
  if (!work) throw new Error(`${id} is on the wall but was not made`);
  return work;
});

/** What the print room always does; a work may say otherwise. */
export const PRACTICE: PracticeDocument = {
  studio: "Tidewater Print Room",
  unit: "in",
  graduation: "1/16 in",
  overlap: "1/8 in",
  margins: { top: "1/4 in", side: "1/4 in", foot: "1/2 in" },
  gap: "3/8 in",
  play: "1/16 in",
  holding: "pockets",
  lift: { rule: "fixed", by: "1/4 in" },
  outer: { smallest: "inch", border: "2 in" },
  mats: [{ board: "4-ply white rag", thickness: "1/16 in", bevel: 45 }],
  leastBorder: "1 in",
  leastPocket: "1/2 in",
  editionSpread: "1/16 in",
  scaleOffset: "-1/64 in",
  scaleTested: "2026-11-20",
  hand: "right",
  overrun: "3/16 in",
  squaringTrim: "1/8 in",
  backing: { board: "fluted plastic, 3/16 in", thickness: "3/16 in", mass: "0.9 kg/m2" },
  glazing: { board: "acrylic, UV filter, 1/8 in", kind: "acrylic", less: "1/16 in", thickness: "1/8 in" },
  moulding: {
    name: "oak, square",
    overall: "3/4 in",
    rabbet: "1/4 in",
    depth: "3/4 in",
    lip: "1/4 in",
    wood: "red oak",
    allowance: "1/8 in",
    kerf: "3/16 in",
    waste: "1/2 in",
  },
  frames: [
    {
      name: "walnut, from the old show",
      moulding: {
        name: "walnut, round",
        overall: "1 in",
        rabbet: "1/4 in",
        depth: "5/8 in",
        wood: "black walnut",
      },
      opening: { width: "16 1/8 in", height: "20 1/8 in" },
      copies: 3,
    },
  ],
  money: {
    date: "2026-11-18",
    hour: "28.00",
    minutes: { blank: 3, window: 7.5, hold: 15, glaze: 6, frame: 40, close: 12 },
    fittings: [
      { name: "rings with two screws each", cost: "0.45", each: 2 },
      { name: "gummed linen tape, 1 in, a roll", cost: "7.90", per: "show" },
    ],
    having: [
      { what: "mat cut and hinged by a framer", cost: "38.00", per: "mat" },
      { what: "frame glazed and closed by a framer", cost: "115.00", per: "frame" },
    ],
  },
  hanging: HANGING,
  paper: "letter",
  language: "en-US",
};

/** What lies in the print room's rack, at invented prices. */
export const STOCK: StockDocument = {
  unit: "in",
  currency: "USD",
  date: "2026-11-20",
  sheets: [
    { name: "32 x 40", board: "4-ply white rag", width: "32", height: "40", cost: 11.5 },
    { name: "offcut, drawer 2", board: "4-ply white rag", width: "19 3/4", height: "31", cost: 0, copies: 1 },
    { name: "32 x 40, grey", board: "4-ply grey rag", width: "32", height: "40", cost: 12.25, copies: 3 },
    { name: "32 x 40, 8-ply", board: "8-ply white rag", width: "32", height: "40", cost: 23, copies: 2 },
    {
      name: "80 x 110 cm",
      board: "4-ply white rag, unbuffered",
      width: "80 cm",
      height: "110 cm",
      cost: 14.75,
    },
    {
      name: "fluted plastic, 48 x 96",
      board: "fluted plastic, 3/16 in",
      width: "48",
      height: "96",
      cost: 26,
    },
    {
      name: "fluted plastic, 32 x 40",
      board: "fluted plastic, 3/16 in",
      width: "32",
      height: "40",
      cost: 8.25,
      pack: { of: 10, cost: 60 },
    },
    {
      name: "acrylic, 48 x 96",
      board: "acrylic, UV filter, 1/8 in",
      width: "48",
      height: "96",
      cost: 164,
    },
    {
      name: "acrylic, offcut by the door",
      board: "acrylic, UV filter, 1/8 in",
      width: "24",
      height: "33",
      cost: 0,
      copies: 1,
    },
  ],
  lengths: [
    { name: "oak, 10 ft", length: "120", cost: 24 },
    { name: "oak, 8 ft", length: "96", cost: 20 },
    { name: "oak, end of a stick", length: "52", cost: 0, copies: 2 },
  ],
  least: ["5", "7"],
  longestCut: "96",
};

/** A measure as a ruler gives it: 6 5/8, or 170. */
export const measured = (value: number, unit: "in" | "mm"): string =>
  figureText(exactFigure(unit === "in" ? inch(value) : mm(value), unit), false);

/** A place on a straying edge: to 0.1 mm, or 0.001 in. */
const traced = (value: number, unit: "in" | "mm"): string => {
  const parts = unit === "mm" ? 10 : 1000;
  return String(Math.round(value * parts) / parts);
};

/** The edge of the image and of the sheet, where they stray, in the work's own unit. */
export function edgesOf(work: ExampleWork): { image: Spot[] | null; sheet: Spot[] | null } {
  const [width, height] = work.sheet;
  return {
    image: work.brushed ? strayingEdge(chanceFrom(`${work.id} brushed`), work.image, work.brushed) : null,
    sheet: work.deckled
      ? strayingEdge(chanceFrom(`${work.id} torn`), { left: 0, top: 0, width, height }, work.deckled)
      : null,
  };
}

function documentOf(work: ExampleWork): WorkDocument {
  const { unit, image, sheet } = work;
  const edges = edgesOf(work);
  const points = (spots: readonly Spot[]): [string, string][] =>
    spots.map(([x, y]) => [traced(x, unit), traced(y, unit)]);
  return {
    id: work.id,
    ...work.work,
    ...(work.id === "slack-right" ? { with: "Slack, left sheet" } : {}),
    record: { inventoryNumber: `SW ${WORKS.indexOf(work) + 1}`, ...work.work.record },
    picture: `pictures/${work.id}.jpg`,
    design: {
      unit,
      print: {
        width: measured(sheet[0], unit),
        height: measured(sheet[1], unit),
        image: {
          left: measured(image.left, unit),
          top: measured(image.top, unit),
          width: measured(image.width, unit),
          height: measured(image.height, unit),
        },
        ...(edges.image ? { outline: points(edges.image) } : {}),
        ...(edges.sheet ? { sheetOutline: points(edges.sheet) } : {}),
        ...work.print,
      },
      ...work.design,
    },
  };
}

export const SHOW: ShowDocument = {
  format: "margent-show",
  version: 1,
  name: "Slack Water",
  room: "Tidewater Print Room",
  date: "2026-12-14",
  practice: PRACTICE,
  stock: STOCK,
  walls: wallsOf(WORKS.map(({ work }) => work.title)),
  works: WORKS.map(documentOf),
};
