import { execFileSync, spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, expect, test } from "vitest";
import { filesByName, makePacket } from "../../src/packet/index.ts";
import type { ShowDocument } from "../../src/show/index.ts";
import { orderOf, shown } from "./shown.ts";

const hasPoppler = spawnSync("pdftotext", ["-v"]).error === undefined;
const why = hasPoppler ? "" : " (skipped: poppler-utils is not installed)";
const folder = mkdtempSync(join(tmpdir(), "margent-chain-"));
afterAll(() => rmSync(folder, { recursive: true }));

interface Chained {
  readonly outer: { readonly height: { readonly text: string } };
  readonly held: { readonly pockets: { readonly leg: { readonly text: string } } };
  readonly framed: {
    readonly outer: { readonly width: { readonly text: string }; readonly height: { readonly text: string } };
    readonly glazing: { readonly height: { readonly text: string } };
    readonly mass: { readonly kg: number; readonly text: string };
    readonly stack: { readonly depth: { readonly mm: number } };
  };
}

/** Every paper of a packet as a reader takes its text out of the PDF, and the work in the open format. */
async function papersOf(document: ShowDocument) {
  const made = await makePacket({ ...orderOf(document), seconds: 0.2, clock: () => performance.now() });
  if (!made.ok) throw new Error(JSON.stringify(made.problems));
  const files = await filesByName(made.value.files);
  const papers = new Map<string, string>();
  for (const [name, bytes] of files) {
    if (!name.endsWith(".pdf")) continue;
    const path = join(folder, name);
    writeFileSync(path, bytes);
    const text = execFileSync("pdftotext", ["-raw", path, "-"], { encoding: "utf8" });
    papers.set(name, text.replaceAll(/\s+/g, " "));
  }
  const { works } = JSON.parse(new TextDecoder().decode(files.get("packet.json"))) as {
    works: readonly [Chained];
  };
  return { papers, work: works[0] };
}

/** The packets before and after, made once. */
const both = hasPoppler ? Promise.all([papersOf(shown("12")), papersOf(shown("13 1/4"))]) : null;

/** A printed figure as it is extracted: a stacked fraction with its own slash. */
const onPaper = (text: string): string => text.replaceAll("/", "⁄");

/** Where each figure that follows the window stands; the others name no size of the package or its frame. */
const PACKAGE = [
  "back-labels.pdf",
  "bench-order.pdf",
  "bench-sheets.pdf",
  "cut-plan.pdf",
  "frame-sheets.pdf",
  "labels.pdf",
];
const FRAME = ["chop-list.pdf", "frame-sheets.pdf", "hanging.pdf", "loan-list.pdf", "packing-list.pdf"];

test.skipIf(!hasPoppler)(
  `[WH3] after the window's height has changed every paper has the new figures, and none has an old one${why}`,
  async () => {
    const [low, high] = (await both) ?? [];
    if (low === undefined || high === undefined) throw new Error("both packets are made");
    expect([low.work.outer.height.text, high.work.outer.height.text]).toEqual(["17 1/2 in", "18 3/4 in"]);
    for (const [now, before] of [
      [high, low],
      [low, high],
    ] as const) {
      const size = (of: typeof now): string => onPaper(of.work.outer.height.text.replace(" in", ""));
      const frame = (of: typeof now): string => onPaper(of.work.framed.outer.height.text.replace(" in", ""));
      for (const name of PACKAGE) {
        const text = now.papers.get(name) ?? "";
        expect([name, text.includes(size(now))]).toEqual([name, true]);
        expect([name, text.includes(size(before))]).toEqual([name, false]);
      }
      for (const name of FRAME) {
        const text = now.papers.get(name) ?? "";
        expect([name, text.includes(frame(now))]).toEqual([name, true]);
        expect([name, text.includes(`× ${frame(before)}`)]).toEqual([name, false]);
      }
      for (const [name, text] of now.papers)
        expect([name, text.includes(`× ${size(before)}`)]).toEqual([name, false]);
    }
  },
);

test.skipIf(!hasPoppler)(
  `[WH3] the back label says how it is held and what it weighs, and two papers the same stack against the rabbet${why}`,
  async () => {
    for (const { papers, work } of (await both) ?? []) {
      const label = papers.get("back-labels.pdf") ?? "";
      expect(label).toContain("Sheet 12 × 16 in; package 13 1⁄2 ×");
      expect(label).toContain(`four corner pockets, leg ${onPaper(work.held.pockets.leg.text)}.`);
      expect(label).toContain("To release it: Open the mat. Bend a pocket back");
      expect(label).toContain(`Weight: ${Math.ceil(work.framed.mass.kg * 10 - 1e-6) / 10} kg`);
      // 1/8 acrylic, 1/16 mat, 0.3 mm print, 1/16 mount, 3/16 backing: under 15/32 in, and 9/32 in are left of 3/4.
      expect(work.framed.stack.depth.mm).toBeCloseTo((7 / 16) * 25.4 + 0.3, 9);
      for (const name of ["mounting-sheets.pdf", "frame-sheets.pdf"])
        expect(papers.get(name)).toContain("Stack 15⁄32 in, rabbet 3⁄4 in: under by 9⁄32 in.");
    }
  },
);
