import { eelgrass, reeds, samphire } from "../pictures/photograms.ts";
import { neap } from "../pictures/platinum.ts";
import { slack, springTide } from "../pictures/tides.ts";
import { TONES } from "../tones.ts";
import { area, type ExampleWork } from "../work.ts";

const maker = "Rukmini Thole";
const blue = TONES.cyanotype.paper;
/** Cyanotypes are sensitive to alkali: a neutral board, not a buffered one. */
const neutral = [{ board: "4-ply white rag, unbuffered", thickness: "1.4 mm", bevel: 45 }];
const habit = { graduation: "1 mm", mats: neutral, lift: { rule: "fixed", by: "6 mm" } } as const;
/** The brush marks in sight all round. */
const brushMarks = { show: "margins", top: "8", side: "8", foot: "12" } as const;

const half = (panel: 0 | 1): ExampleWork => ({
  id: panel === 0 ? "slack-left" : "slack-right",
  work: {
    title: panel === 0 ? "Slack, left sheet" : "Slack, right sheet",
    maker,
    year: "2026",
    process: "cyanotype",
    notes: "One of two that hang as a pair, the moon to the left.",
  },
  draw: slack(panel),
  seed: "slack",
  paper: blue,
  unit: "mm",
  sheet: [240, 310],
  image: area(35, 36, 170, 230),
  brushed: { deepest: 7, spots: 44, kind: "brushed" },
  design: { ...habit, window: brushMarks, outer: { width: "300", height: "400" } },
});

export const thole: readonly ExampleWork[] = [
  {
    id: "reed-cutters-ground",
    work: { title: "Reed Cutters’ Ground", maker, year: "2026", process: "cyanotype" },
    draw: reeds(15),
    paper: blue,
    unit: "mm",
    sheet: [240, 320],
    image: area(32, 30, 176, 250),
    brushed: { deepest: 9, spots: 48, kind: "brushed" },
    design: { ...habit, window: brushMarks, outer: { width: "300", height: "400" } },
  },
  {
    id: "spring-tide-four-days",
    work: { title: "Spring Tide, Four Days", maker, year: "2026", process: "cyanotype" },
    draw: springTide,
    paper: blue,
    unit: "mm",
    sheet: [420, 310],
    image: area(35, 32, 350, 240),
    brushed: { deepest: 10, spots: 60, kind: "brushed" },
    design: { ...habit, window: { show: "overlap", overlap: "3" }, outer: { width: "500", height: "400" } },
  },
  {
    id: "eelgrass-september",
    work: { title: "Eelgrass, September", maker, year: "2025", process: "cyanotype" },
    draw: eelgrass,
    paper: blue,
    unit: "mm",
    sheet: [180, 240],
    image: area(25, 26, 130, 180),
    brushed: { deepest: 8, spots: 40, kind: "brushed" },
    design: { ...habit, window: brushMarks, outer: { smallest: "metric", border: "35" } },
  },
  {
    id: "neap",
    work: { title: "Neap", maker, year: "2025", process: "platinum print, hand-coated" },
    draw: neap,
    paper: TONES.platinum.paper,
    unit: "mm",
    sheet: [250, 190],
    image: area(35, 30, 180, 125),
    brushed: { deepest: 6, spots: 44, kind: "brushed" },
    design: { ...habit, window: brushMarks, outer: { width: "300", height: "240" } },
  },
  {
    id: "samphire",
    work: { title: "Samphire", maker, year: "2026", process: "cyanotype" },
    draw: samphire,
    paper: blue,
    unit: "mm",
    sheet: [240, 310],
    image: area(30, 28, 180, 250),
    brushed: { deepest: 9, spots: 48, kind: "brushed" },
    design: {
      ...habit,
      window: { show: "overlap", overlap: "3" },
      outer: { width: "300", height: "400" },
      lift: { rule: "ratio", foot: 1.25 },
    },
  },
  half(0),
  half(1),
];
