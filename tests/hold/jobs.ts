import { compose, type HoldFacts, NOTHING_KNOWN, planHold, USUAL_HOLD } from "../../src/assembly/index.ts";
import type { MountingSheetJob } from "../../src/papers/index.ts";
import type { ComposeDocument } from "../../src/show/index.ts";
import { designOf } from "./works.ts";

export const LONG_TITLE =
  "The Long Afternoon of the Harbour Master’s Third Daughter, Seen from the Breakwater at Low Tide, with Gulls and a Very Distant Steamer";

/** The job of one mounting sheet; what a test is about goes into `more`. */
export function jobOf(
  document: ComposeDocument,
  facts: Partial<HoldFacts> = {},
  more: Partial<MountingSheetJob> = {},
): MountingSheetJob {
  const composition = compose(designOf(document));
  const all: HoldFacts = { ...NOTHING_KNOWN, process: "Drypoint", ...facts };
  const plan = planHold(composition, all, USUAL_HOLD[composition.design.ruler.unit]);
  if (plan === null) throw new Error("it has a print");
  return {
    work: {
      title: "Low Water, Pewter Light",
      maker: "Ines Okonedo-Vale",
      year: "2026",
      process: all.process,
      edition: "",
      quantity: 1,
    },
    composition,
    plan,
    glazing: all.glazing,
    stack: null,
    house: { studio: "Tidewater Print Room", show: "Slack Water" },
    planWords: { number: 3, date: "2026-11-25", makesVoid: { number: 2, date: "2026-11-19" } },
    language: "en-US",
    ...more,
  };
}
