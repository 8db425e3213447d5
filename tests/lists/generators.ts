import * as fc from "fast-check";
import { unzipSync, zipSync } from "fflate";
import { COLUMNS, writeCsv, writeXlsx } from "../../src/show/lists/index.ts";

/**
 * Lists of every sort, for the short run of the tests and for longer ones: whole ones that must go in, odd ones
 * that people write, and broken ones that no one would.
 */

const figure = fc.oneof(
  fc.integer({ min: 3, max: 90 }).map(String),
  fc
    .tuple(fc.integer({ min: 3, max: 40 }), fc.constantFrom("1/2", "1/4", "3/8", "15/16", "7/64"))
    .map(([whole, part]) => `${whole} ${part}`),
  fc
    .tuple(fc.integer({ min: 3, max: 40 }), fc.constantFrom("½", "¼", "⅛"))
    .map(([whole, part]) => `${whole}${part}`),
  fc.tuple(fc.integer({ min: 3, max: 90 }), fc.integer({ min: 1, max: 99 })).map(([a, b]) => `${a}.${b}`),
  fc.tuple(fc.integer({ min: 3, max: 90 }), fc.integer({ min: 1, max: 9 })).map(([a, b]) => `${a},${b}`),
);

const lengthText = fc
  .tuple(figure, fc.constantFrom("", " in", '"', " cm", "cm", " mm"))
  .map((parts) => parts.join(""));

const words = fc.string({
  unit: fc.constantFrom(..."aBøŻé漢½7 -=+@'\",;\n\u200f"),
  maxLength: 12,
});

const dimensions = fc
  .tuple(
    fc.constantFrom("image", "sheet", "support", "plate", "mount", "frame", "each", "object", ""),
    lengthText,
    lengthText,
  )
  .map(([part, height, width]) => `${part === "" ? "" : `${part}: `}${height} x ${width}`);

const valueOf = (column: string): fc.Arbitrary<string> => {
  switch (column) {
    case "show":
      return fc.constantFrom("", "overlap", "Margins", "sheet");
    case "angle":
      return fc.constantFrom("", "0", "0.5", "-1,25°");
    case "frame":
      return fc.constantFrom("", "None", "oak, white", "ash");
    case "quantity":
      return fc.constantFrom("", "1", "12");
    case "dimensions":
      return fc.oneof(fc.constant(""), dimensions, words);
    case "title":
      return words.map((text) => `Ebb ${text}`);
    case "maker":
    case "year":
    case "process":
    case "edition":
    case "picture":
    case "notes":
      return words;
    default:
      return fc.oneof({ weight: 3, arbitrary: lengthText }, { weight: 1, arbitrary: fc.constant("") });
  }
};

export interface GeneratedList {
  readonly header: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

const unknownColumns = fc.uniqueArray(
  words.filter((text) => text.trim() !== "" && !/["\n]/.test(text)),
  { maxLength: 2 },
);

/** A list with known columns in any order and dress, and some that are not known; most rows have some fault. */
export const oddLists: fc.Arbitrary<GeneratedList> = fc
  .tuple(
    fc.subarray(
      COLUMNS.filter((column) => column !== "title"),
      { minLength: 2 },
    ),
    unknownColumns,
    fc.boolean(),
  )
  .chain(([columns, unknown, units]) => {
    const known = ["title", ...columns];
    const header = known.map((column) =>
      units && / (width|height|left|top)$/.test(column) ? `${column} (cm)` : column,
    );
    return fc.record({
      header: fc.constant([...header, ...unknown]),
      rows: fc.array(fc.tuple(...known.map(valueOf), ...unknown.map(() => words)), { maxLength: 6 }),
    });
  });

/** A length between two whole centimetres, written in one of the ways of a list whose own unit is the inch. */
const between = (least: number, most: number): fc.Arbitrary<string> =>
  fc
    .tuple(
      fc.integer({ min: least * 10, max: most * 10 }),
      fc.constantFrom("mm", "cm", ",", "in", "bare", '"'),
    )
    .map(([millimetres, way]) => {
      const whole = Math.floor(millimetres / 25.4);
      const sixteenths = Math.floor((millimetres / 25.4 - whole) * 16);
      const inches = sixteenths === 0 ? String(whole) : `${whole} ${sixteenths}/16`;
      switch (way) {
        case "mm":
          return `${millimetres} mm`;
        case "cm":
          return `${millimetres / 10} cm`;
        case ",":
          return `${millimetres / 10}cm`.replace(".", ",");
        case "bare":
          return inches;
        default:
          return inches + (way === "in" ? " in" : '"');
      }
    });

const perhaps = (value: fc.Arbitrary<string>): fc.Arbitrary<string> => fc.oneof(fc.constant(""), value);

/** A list of which every row must go in, however odd its words are. */
export const wholeLists: fc.Arbitrary<GeneratedList> = fc
  .tuple(unknownColumns, fc.boolean())
  .chain(([unknown, inHeader]) => {
    const columns = [
      "title",
      "maker",
      "edition",
      "notes",
      "show",
      "angle",
      "quantity",
      "sheet width",
      "sheet height",
    ];
    const more = ["image width", "image height", "image left", "image top", "outer width", "outer height"];
    const outer = fc.oneof(fc.constant(["", ""]), fc.tuple(between(70, 90), between(70, 90)));
    const row = fc
      .tuple(
        fc.tuple(
          words.map((text) => `Ebb ${text}`),
          words,
          words,
          words,
        ),
        fc.tuple(
          fc.constantFrom("", "overlap", "Margins", "sheet"),
          perhaps(fc.constantFrom("0", "0.5", "-1,25°")),
          perhaps(fc.constantFrom("1", "12")),
        ),
        fc.tuple(between(40, 60), between(40, 60)),
        fc.oneof(
          fc.constant(["", "", "", ""]),
          fc.tuple(between(10, 30), between(10, 30), perhaps(between(1, 8)), perhaps(between(1, 8))),
        ),
        outer,
        fc.tuple(...unknown.map(() => words)),
      )
      .map((groups) => groups.flat());
    return fc.record({
      header: fc.constant([
        ...[...columns, ...more].map((name) => (inHeader && name.endsWith(" width") ? `${name} (in)` : name)),
        ...unknown,
      ]),
      rows: fc.array(row, { minLength: 1, maxLength: 5 }),
    });
  });

/** The same as the text of a CSV file. */
export const csvTexts: fc.Arbitrary<string> = fc
  .tuple(fc.oneof(oddLists, wholeLists), fc.constantFrom(",", ";", "\t" as const), fc.boolean())
  .map(([list, separator, bom]) => writeCsv(list.header, list.rows, { separator, bom }));

/** One way to spoil bytes: cut, doubled, overwritten, something put in. */
const spoil = fc.record({
  at: fc.double({ min: 0, max: 1, noNaN: true }),
  length: fc.integer({ min: 0, max: 40 }),
  how: fc.constantFrom("cut", "double", "overwrite", "insert"),
  what: fc.oneof(
    fc.uint8Array({ maxLength: 8 }),
    fc
      .constantFrom(
        '"',
        ";;;",
        "\n\n",
        "\u0000",
        "\u202e",
        "=1+1",
        "'",
        "1/0",
        "9".repeat(70),
        "image: ",
        "(",
        " x ",
        "\ufeff",
        '"""',
      )
      .map((text) => new TextEncoder().encode(text)),
  ),
});

/** Bytes with some faults put into them. */
export const spoiled = (bytes: fc.Arbitrary<Uint8Array>): fc.Arbitrary<Uint8Array> =>
  fc.tuple(bytes, fc.array(spoil, { minLength: 1, maxLength: 6 })).map(([whole, faults]) =>
    faults.reduce((before, { at, length, how, what }) => {
      const start = Math.floor(at * before.length);
      const end = Math.min(before.length, start + length);
      switch (how) {
        case "cut":
          return joined(before.subarray(0, start), before.subarray(end));
        case "double":
          return joined(before.subarray(0, end), before.subarray(start));
        case "overwrite":
          return joined(before.subarray(0, start), what, before.subarray(start + what.length));
        case "insert":
          return joined(before.subarray(0, start), what, before.subarray(start));
      }
    }, whole),
  );

function joined(...parts: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(parts.reduce((length, part) => length + part.length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}

/** Two whole workbooks, each also stored without compression, so that a fault reaches the text inside. */
export async function wholeWorkbooks(): Promise<Uint8Array[]> {
  const rows = [
    ["Ebb", "8 1/2", "11", "image: 241 x 191 mm", "x"],
    ["Neap", "24,5 cm", "30", "", "y"],
  ];
  const packed = await Promise.all([
    writeXlsx([
      { name: "Works", header: ["title", "sheet width", "sheet height", "dimensions", "more"], rows },
    ]),
    writeXlsx([
      { name: "A", header: [], rows: [] },
      { name: "B", header: ["Title"], rows: [["Ebb"]] },
    ]),
  ]);
  return [...packed, ...packed.map((bytes) => zipSync(unzipSync(bytes), { level: 0 }))];
}

/** Anything that may come as a file; `workbooks` are those of `wholeWorkbooks`. */
export const anyFile = (workbooks: readonly Uint8Array[]): fc.Arbitrary<Uint8Array> => {
  const csv = csvTexts.map((text) => new TextEncoder().encode(text));
  return fc.oneof(
    { weight: 1, arbitrary: fc.uint8Array({ maxLength: 400 }) },
    {
      weight: 1,
      arbitrary: fc.string({ unit: "binary", maxLength: 200 }).map((text) => new TextEncoder().encode(text)),
    },
    { weight: 1, arbitrary: csv },
    { weight: 4, arbitrary: spoiled(csv) },
    { weight: 2, arbitrary: spoiled(fc.constantFrom(...workbooks)) },
  );
};

/** Texts of dimensions, from well written to nonsense made of the same pieces. */
export const dimensionTexts: fc.Arbitrary<string> = fc.oneof(
  fc.array(dimensions, { minLength: 1, maxLength: 4 }).map((parts) => parts.join("; ")),
  fc
    .array(
      fc.constantFrom(
        "image",
        "sheet",
        "each",
        "h",
        "w",
        "x",
        "by",
        "(",
        ")",
        ":",
        ";",
        ",",
        ".",
        "/",
        "&",
        "20",
        "7 1/2",
        "1/0",
        "cm",
        "in.",
        "'",
        '"',
        "kg",
        "secondary",
        "\n",
        "\u202e",
        "漢",
      ),
      { maxLength: 24 },
    )
    .map((pieces) => pieces.join(" ")),
  fc.string({ unit: "binary", maxLength: 60 }),
);
