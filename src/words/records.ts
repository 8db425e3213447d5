import type { Design, HoldPlan } from "../assembly/index.ts";
import { printLength, type Ruler } from "../lengths/index.ts";
import type { Speech } from "./checks.ts";
import { sayMaterial, saySource } from "./held.ts";
import { heldWords, releaseWords, touchesWords } from "./labels.ts";
import { bufferWords, neverWords } from "./mounting-sheet.ts";
import { flat, plainText } from "./runs.ts";

/** Columns of the materials record, which stand beside those of Object ID. */
export const MATERIALS = {
  sheet: "Materials",
  objectId: "Object ID",
  dublinCore: "Dublin Core",
  iptc: "IPTC artwork",
  row: "row",
  columns: [
    "copies",
    "package",
    "what touches it",
    "how it is held",
    "to release it",
    "never",
    "board next to it",
    "mats",
    "mount",
    "glazing",
    "backing",
    "frame",
    "rights",
    "credit",
    "closed",
    "plan",
    "rules and their sources",
  ],
} as const;

/** A work's layers from the lowest mat up: what each is of, and how thick. */
export const matsWords = ({ mats, ruler }: Design): string =>
  mats
    .map(({ board, thickness }) => `${board === "" ? "board" : board}, ${printLength(thickness, ruler)}`)
    .join("; ");

/** What holds a work and what touches it, as texts; empty where nothing is known. */
export function heldTexts(
  design: Design,
  plan: HoldPlan | null,
  speech: Speech,
): {
  readonly touches: string;
  readonly held: string;
  readonly release: string;
  readonly never: string;
  readonly board: string;
  readonly rules: string;
} {
  return {
    touches: touchesWords(design, plan, speech),
    held: plan === null ? "" : plainText(flat(heldWords(plan, speech))),
    release: plan === null ? "" : releaseWords(plan, speech),
    never: plan === null || plan.never.length === 0 ? "" : plainText(flat(neverWords(plan.never))),
    board: plan === null ? "" : bufferWords(plan.buffer),
    rules:
      plan === null
        ? ""
        : plan.materials
            .map(({ topic, source, known }) => `${sayMaterial(topic)} (${saySource(source, known)})`)
            .join(" "),
  };
}

/** "11 in × 14 in". */
export const sizeText = (
  {
    width,
    height,
  }: {
    readonly width: Parameters<typeof printLength>[0];
    readonly height: Parameters<typeof printLength>[0];
  },
  ruler: Ruler,
): string => `${printLength(width, ruler)} × ${printLength(height, ruler)}`;

/** What a work took from its picture; a picture's maker need not be the print's. */
export const sayPictureNote = ({
  row,
  field,
  value,
  from,
}: {
  readonly row: number;
  readonly field: string;
  readonly value: string;
  readonly from: string;
}): string =>
  `row ${row}, ${field}: ${value.length > 60 ? `${value.slice(0, 59)}…` : value}, from the picture (${from}).${field === "maker" ? " Is it the print's maker, or the picture's?" : ""}`;
