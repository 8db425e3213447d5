import { describe, expect, it } from "vitest";
import { planLight } from "../../src/assembly/index.ts";
import { pdfTypeface } from "../../src/drawings/writers/pdf/index.ts";
import { filesByName, makePacket } from "../../src/packet/index.ts";
import { lightSheet, type LightSheetJob, type LitWork } from "../../src/papers/index.ts";
import {
  type HangingLightDocument,
  isoOf,
  readShowLight,
  readWorkLight,
  showReadOf,
  type WorkDocument,
} from "../../src/show/index.ts";
import { packetOrder } from "../packet-order.ts";
import { expectClean, textOf } from "../papers/clean.ts";

const typeface = pdfTypeface();
const LONG =
  "The Long Afternoon of the Harbour Master’s Third Daughter, Seen from the Breakwater at Low Tide, with Gulls and a Very Distant Steamer";
const ROOM: HangingLightDocument = {
  from: "2026-12-14",
  to: "2027-03-14",
  lux: "50",
  hours: 8,
  days: 6,
  ultraviolet: 90,
};

type Told = readonly [title: string, more: Partial<WorkDocument>];

const WORKS: readonly Told[] = [
  ["Low Water", { process: "gelatin silver print" }],
  ["Unknown Ink", { process: "linocut" }],
  [
    LONG,
    {
      process: "chromogenic print, on a very long paper of a very long name",
      light: { sensitivity: "high" },
    },
  ],
  ["Zażółć gęślą jaźń", { light: { sensitivity: "low" } }],
  [
    "Much Shown",
    {
      light: {
        sensitivity: "high",
        before: [{ from: "2026-06-01", to: "2026-11-30", lux: 150, hours: 10 }],
      },
    },
  ],
  ["Stone", { light: { sensitivity: "none" } }],
];

const documentOf = ([title, more]: Told): WorkDocument => ({
  title,
  design: { unit: "in", print: { width: 8, height: 10 }, outer: { width: 14, height: 18 } },
  ...more,
});

function sheetOf(works: readonly Told[], room: HangingLightDocument = ROOM): LightSheetJob {
  const light = readShowLight(room, null);
  if (!light.ok) throw new Error(JSON.stringify(light.problems));
  return {
    ...light.value,
    guidance: "cie-157",
    works: works.map((told): LitWork => {
      const work = documentOf(told);
      const job = readWorkLight(work, light.value, {});
      if (!job.ok) throw new Error(JSON.stringify(job.problems));
      return { title: work.title, process: work.process ?? "", mark: "SW 7", plan: planLight(job.value) };
    }),
    isoOf,
    house: { studio: "Tidewater Print Room", show: "Slack Water" },
    planWords: { number: 3, date: "2026-11-25", makesVoid: { number: 2, date: "2026-11-19" } },
  };
}

describe("the light sheet", () => {
  it("[LT11] no words meet and nothing leaves the page, however many works", () => {
    for (const paper of ["a4", "letter"] as const)
      for (const works of [WORKS, Array.from({ length: 14 }, (_, index) => WORKS[index % 6] ?? ["", {}])])
        for (const page of lightSheet(sheetOf(works as readonly Told[]), paper, typeface))
          expectClean(page, paper, typeface);
  });

  it("[LT9] the days to take works down stand in their order, those without a class last and without a day", () => {
    const text = textOf(lightSheet(sheetOf(WORKS), "letter", typeface));
    const places = ["Much Shown", "The Long", "Low Water", "Unknown Ink"].map((title) => text.indexOf(title));
    expect(places).toEqual(places.toSorted((a, b) => a - b));
    expect(places.every((place) => place >= 0)).toBe(true);
    // 50 lx for 8 h on 6 days of 7 is 342.9 lx h a day: 15,000 last 43 days, to 25 January.
    expect(text).toContain("25 Jan 2027");
    expect(text).toContain("43 of 91 days");
    expect(text).toContain("now");
    expect(text).toContain("all 91 days");
    expect(text).toContain("Class not known, so no day");
    expect(text).toContain("90 µW/lm");
    expect(text).toContain("A filter alone does not stop fading.");
  });

  it("[LT10] both guidances stand class by class, the one that is kept is named, and which is from memory", () => {
    const text = textOf(lightSheet(sheetOf(WORKS), "a4", typeface)).replaceAll("\u00a0", " ");
    expect(text).toContain("CIE 157:2004, from memory, kept here");
    expect(text).toContain("Science Museum of Minnesota");
    expect(text).toContain("The published limits disagree.");
    for (const limit of ["50 lx, 15,000 lx·h", "50 lx, 12,000 lx·h", "150 lx, 100,000 lx·h", "no limit"])
      expect(text).toContain(limit);
  });

  it("[LT6] [LT9] a packet has the sheet where its show says a light, and takes a print's own process", async () => {
    const packet = async (light: HangingLightDocument | undefined) => {
      const made = await makePacket(
        packetOrder(
          showReadOf({
            format: "margent-show",
            version: 1,
            name: "Slack Water",
            ...(light === undefined ? {} : { light }),
            works: [
              documentOf([
                "Low Water",
                { design: { print: { width: 8, height: 10, process: "chromogenic print" } } },
              ]),
            ],
          }),
        ),
      );
      if (!made.ok) throw new Error(JSON.stringify(made.problems));
      return { files: await filesByName(made.value.files), leftOut: made.value.leftOut };
    };
    const lit = await packet(ROOM);
    expect(lit.files.has("light.pdf")).toBe(true);
    const json = JSON.parse(new TextDecoder().decode(lit.files.get("packet.json"))) as {
      works: readonly { light: { sensitivity: string; until: string } }[];
    };
    expect(json.works[0]?.light).toMatchObject({ sensitivity: "high", until: "2027-01-25" });
    const dark = await packet(undefined);
    expect(dark.files.has("light.pdf")).toBe(false);
    expect(dark.leftOut.join(" ")).toContain("light.pdf is left out");
  });
});
