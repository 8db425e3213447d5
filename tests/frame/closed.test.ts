import { expect, test } from "vitest";
import {
  closedPackage,
  NOTHING_KNOWN,
  planFrame,
  planHold,
  USUAL_FRAMING,
  USUAL_HOLD,
} from "../../src/assembly/index.ts";
import { pdfTypeface } from "../../src/drawings/writers/pdf/index.ts";
import { inch } from "../../src/lengths/index.ts";
import { packeted } from "../../src/packet/packet.ts";
import { prepare } from "../../src/packet/index.ts";
import { packingPages } from "../../src/packet/travel.ts";
import { type ComposeDocument, type PracticeDocument, showReadOf } from "../../src/show/index.ts";
import { packetOrder } from "../packet-order.ts";
import { textOf } from "../papers/clean.ts";
import { composedOf, frameOf, LETTER } from "./frames.ts";

const FLOAT: ComposeDocument = {
  unit: "in",
  print: { width: 9, height: 11 },
  window: { show: "sheet", gap: "1/4" },
  outer: { width: 16, height: 20 },
};

function closed(document: ComposeDocument, density = 750) {
  const composition = composedOf(document);
  const held = planHold(composition, NOTHING_KNOWN, USUAL_HOLD.in);
  const habits = { ...USUAL_FRAMING.in, boardDensity: density };
  const bare = { glazing: null, backing: null, habits };
  const framed = planFrame(composition, frameOf({ ...bare }), held);
  return { held, framed, alone: closedPackage(composition, bare, held) };
}

test("[FR19] a float counts its spacers, riser and sheet within them: mat, spacer, mount", () => {
  const { held, alone, framed } = closed(FLOAT);
  if (held?.bed.kind !== "raised") throw new Error("it floats");
  expect(alone.depth).toBe(inch(1, 16) + held.bed.spacer + inch(1, 16));
  expect(alone.depth).toBe(framed.stack.depth);
  // Spacers as wide as the mat hides weigh more than those that a lip hides.
  const layers = framed.mass.parts.filter(({ part }) => part !== "moulding" && part !== "hardware");
  expect(alone.mass).toBeGreaterThan(layers.reduce((total, { mass }) => total + mass, 0));
});

test("[FR19] a flat sheet weighs what its layers weigh in a frame, by the density that is told", () => {
  for (const density of [700, 1400]) {
    const { alone, framed } = closed(LETTER, density);
    const layers = framed.mass.parts.filter(({ part }) => part !== "moulding" && part !== "hardware");
    expect(alone.mass).toBeCloseTo(
      layers.reduce((total, { mass }) => total + mass, 0),
      9,
    );
    expect(alone.depth).toBe(framed.stack.depth);
  }
  // 11 × 14 in of mount, the mat less its window of 6 3/4 × 9 1/4 in, 1/16 in thick; the sheet 0.3 mm of paper.
  const square = 0.0254 ** 2;
  const board = (2 * 154 - 6.75 * 9.25) * square * (0.0254 / 16) * 700;
  expect(closed(LETTER, 700).alone.mass).toBeCloseTo(board + 8.5 * 11 * square * 0.0003 * 1000, 9);
});

const packing = (practice: PracticeDocument): string => {
  const order = packetOrder(
    showReadOf({
      format: "margent-show",
      version: 1,
      name: "Slack Water",
      practice: { unit: "in", ...practice },
      works: [{ title: "Ebb", design: { ...LETTER, outer: { width: 20, height: 24 } } }],
    }),
  );
  const read = prepare(order);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return textOf(packingPages(read.value, packeted(order, read.value), "letter", pdfTypeface()));
};

test("[FR19] a packing list weighs unframed works by the practice's own board and mount", () => {
  const [light, heavy] = [packing({}), packing({ framing: { boardDensity: 2250 } })];
  expect(heavy).not.toBe(light);
  expect(packing({ framing: { mount: "1/2" } })).not.toBe(light);
  // Glazing and backing go with it on the road, and not into the store's box.
  const glazed = packing({ glazing: { board: "glass", kind: "glass" }, backing: { board: "fluted" } });
  const boxes = (text: string): string => text.slice(text.indexOf("In the store"));
  expect(glazed).not.toBe(light);
  expect(boxes(glazed)).toBe(boxes(light));
});
