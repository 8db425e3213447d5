import Papa from "papaparse";
import { measured, WORKS } from "./show.ts";
import type { ExampleWork } from "./work.ts";

/** One record of the list: what a spreadsheet can say of a work. Outlines, several mats and borders are left to the show's document. */
function record(example: ExampleWork, index: number): Record<string, string> {
  const { work, unit, sheet, image, design, print } = example;
  // A cell's own unit wins over the header's, which is inches.
  const length = (value: number) => `${measured(value, unit)}${unit === "mm" ? " mm" : ""}`;
  const said = (value: string | number) =>
    unit === "mm" ? `${value} mm` : String(value).replace(/ in$/, "");
  const { window, outer } = design;
  const typed = window?.show === "typed" ? window : null;
  const given = outer !== undefined && "width" in outer ? outer : null;
  return {
    title: work.title,
    maker: work.maker ?? "",
    year: work.year ?? "",
    process: work.process ?? "",
    edition: work.edition ?? "",
    quantity: work.quantity === undefined ? "" : String(work.quantity),
    "sheet width (in)": length(sheet[0]),
    "sheet height (in)": length(sheet[1]),
    "image left (in)": length(image.left),
    "image top (in)": length(image.top),
    "image width (in)": length(image.width),
    "image height (in)": length(image.height),
    angle: print?.angle === undefined ? "" : String(print.angle),
    show: typed ? "" : (window?.show ?? ""),
    "window width (in)": typed ? said(typed.width) : "",
    "window height (in)": typed ? said(typed.height) : "",
    "outer width (in)": given ? said(given.width) : "",
    "outer height (in)": given ? said(given.height) : "",
    picture: `pictures/${example.id}.jpg`,
    notes: work.notes ?? "",
    wall: `north ${index + 1}`,
  };
}

export const listOf = (): string => `${Papa.unparse(WORKS.map(record), { newline: "\n" })}\n`;
