import { bittern, heron } from "../pictures/birds.ts";
import { nets, shedsInRain, sluice } from "../pictures/sheds-and-nets.ts";
import { area, type ExampleWork, inches } from "../work.ts";

const maker = "T. Marrable";

export const marrable: readonly ExampleWork[] = [
  {
    id: "heron-waiting",
    work: {
      title: "Heron, Waiting",
      maker,
      year: "2026",
      process: "woodcut",
      edition: "2 / 10",
      record: {
        subject: "A heron on a mooring post",
        inscriptions: "Signed and numbered in pencil below the image",
        condition: "A soft crease across the lower left corner, as it came from the press.",
        lender: "The maker",
        value: "380.00",
        rights: "© T. Marrable 2026",
      },
    },
    draw: heron,
    unit: "in",
    sheet: [13.5, 17.5],
    image: area(1.375, 1.5, 10.75, 14.25),
    design: { window: { show: "overlap" }, outer: inches("16", "20") },
  },
  {
    id: "drying-nets",
    work: { title: "Drying Nets", maker, year: "2026", process: "linocut", edition: "5 / 12" },
    draw: nets,
    unit: "in",
    sheet: [10, 13],
    image: area(1.125, 1.25, 7.75, 10.25),
    design: { window: { show: "overlap" }, outer: inches("12", "16") },
  },
  {
    id: "two-sheds-rain",
    work: {
      title: "Two Sheds, Rain",
      maker,
      year: "2025",
      process: "linocut",
      edition: "2 / 8",
      notes: "Printed off the left edge of the sheet. Meant for the mat in drawer 3, which is cut already.",
    },
    draw: shedsInRain,
    unit: "in",
    sheet: [7.25, 10],
    image: area(0, 0.375, 6.625, 9.125),
    design: {
      window: { show: "typed", width: "6 1/2", height: "9" },
      outer: inches("11", "14"),
      holding: "hinges",
    },
  },
  {
    id: "bittern",
    work: {
      title: "Bittern",
      maker,
      year: "2024",
      process: "woodcut",
      edition: "9 / 10",
      notes: "The block went down a little skew.",
    },
    draw: bittern,
    unit: "in",
    sheet: [9.25, 12],
    image: area(1, 1, 7.25, 10),
    print: { angle: 0.8 },
    design: { window: { show: "overlap" }, outer: inches("11", "14") },
  },
  {
    id: "sluice-keepers-shed",
    work: { title: "Sluice Keeper’s Shed", maker, year: "2026", process: "linocut", edition: "1 / 12" },
    draw: sluice,
    unit: "in",
    sheet: [10, 13],
    image: area(1.125, 1, 7.75, 10.75),
    design: { window: { show: "overlap" }, outer: inches("12", "16"), lift: { rule: "optical" } },
  },
];
