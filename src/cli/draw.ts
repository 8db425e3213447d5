import { writeFileSync } from "node:fs";
import { cutDrawing, writeDxf, writeSvg } from "../drawings/index.ts";
import { pdfTypeface, writePdf } from "../drawings/writers/pdf/index.ts";
import { noonOf } from "../packet/index.ts";
import { composeFrom, problemJson } from "../show/index.ts";
import { CLI } from "../words/cli.ts";
import { readPracticeFile } from "./compose.ts";
import { documentIn, unreadable, Unreadable } from "./input.ts";

export interface DrawOptions {
  readonly out: string;
  readonly mat: string;
  readonly from: string;
  readonly practice?: string;
}

const FORMATS = ["svg", "dxf", "pdf"] as const;
type Format = (typeof FORMATS)[number];

/** `margent draw`: one mat at full size, in the format that the file's name asks for. The result is the exit status. */
export async function runDraw(
  file: string | undefined,
  options: DrawOptions,
  today: () => string,
): Promise<number> {
  const format = formatOf(options.out);
  const view = viewOf(options.from);
  const practice = readPracticeFile(options.practice);
  const composed = composeFrom(documentIn(file), practice);
  if (!composed.ok) throw unreadable(composed.problems.map(problemJson));
  const { mats, design } = composed.value;
  const mat = Number(options.mat) - 1;
  if (!(Number.isInteger(mat) && mats[mat] !== undefined)) {
    throw new Unreadable(
      CLI.problem("--mat", options.mat, mats.length === 1 ? "1" : `1 (the lowest) to ${mats.length}`),
    );
  }
  const typeface = pdfTypeface();
  const drawing = cutDrawing(composed.value, mat, {
    ruler: design.ruler,
    view,
    words: CLI.draw.words,
    measure: typeface.measure,
  });
  writeFileSync(options.out, await written());
  return 0;

  async function written(): Promise<string | Uint8Array> {
    switch (format) {
      case "svg":
        return writeSvg(drawing, { title: CLI.draw.title(mat + 1, view), measure: typeface.measure });
      case "dxf":
        return writeDxf(drawing);
      case "pdf": {
        const date = noonOf(today());
        return writePdf([drawing], {
          date,
          title: CLI.draw.title(mat + 1, view),
          language: practice.language ?? "en-US",
          typeface,
        });
      }
    }
  }
}

function viewOf(from: string): "back" | "front" {
  if (from === "back" || from === "front") return from;
  throw new Unreadable(CLI.problem("--from", from, "back or front"));
}

function formatOf(out: string): Format {
  const ending = /\.([a-z]+)$/i.exec(out)?.[1]?.toLowerCase();
  const format = FORMATS.find((each) => each === ending);
  if (format === undefined)
    throw new Unreadable(CLI.problem("--out", out, `a file name that ends in .${FORMATS.join(", .")}`));
  return format;
}
