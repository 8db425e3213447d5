import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { compose } from "../../src/assembly/index.ts";
import { mm, toMillimetres } from "../../src/lengths/index.ts";
import { type PacketFile, packeted, type PacketOrder, prepare } from "../../src/packet/index.ts";
import { recordFiles } from "../../src/packet/records.ts";
import {
  dublinCoreOf,
  iptcArtworkOf,
  measurementsOf,
  OBJECT_ID,
  readDublinCore,
  readIptc,
  showReadOf,
  type WorkRecord,
  writeDublinCore,
  writeIptc,
} from "../../src/show/index.ts";
import { readDimensions } from "../../src/show/lists/dimensions/index.ts";
import { readTable } from "../../src/show/lists/index.ts";
import { parseXml } from "../../src/show/metadata/xml.ts";
import { METRIC_DESIGN, METRIC_PRINT } from "../papers/fixtures.ts";
import { packetOrder } from "../packet-order.ts";

const words = fc.oneof(
  fc.string({ unit: "binary", maxLength: 40 }),
  fc.constantFrom("", "Zażółć gęślą jaźń", "Rødgrød & fløde <3", '"Ebb" — 満潮', "a]]>b", "&amp; &#65;"),
);
const KEYS = [
  "title",
  "maker",
  "date",
  "type",
  "process",
  "measurements",
  "edition",
  "inscriptions",
  "features",
  "subject",
  "description",
  "number",
  "related",
  "place",
  "crossReference",
  "documented",
  "rights",
  "credit",
  "picture",
] as const satisfies readonly (keyof WorkRecord)[];
const anyRecord: fc.Arbitrary<WorkRecord> = fc
  .tuple(...KEYS.map(() => words))
  .map(
    (values) => Object.fromEntries(KEYS.map((key, at) => [key, values[at] ?? ""])) as unknown as WorkRecord,
  );

/** As a document may hold a text: without control signs and lone halves, spaces as one. */
const held = (text: string): string =>
  text
    .replace(/(?![\t\n\r])[\p{Cc}\p{Cs}\ufffe\uffff]/gu, "")
    .replace(/\s+/g, " ")
    .trim();
const heldAll = (values: Readonly<Record<string, readonly string[]>>): Record<string, readonly string[]> =>
  Object.fromEntries(
    Object.entries(values)
      .map(([key, each]) => [key, each.map(held).filter((text) => text !== "")] as const)
      .filter(([, each]) => each.length > 0),
  );

describe("exports of records", () => {
  test("[RE4] Dublin Core reads back, whatever the texts hold", () => {
    fc.assert(
      fc.property(fc.array(anyRecord, { maxLength: 4 }), (records) => {
        const read = readDublinCore(writeDublinCore(records));
        expect(read).toEqual(
          records.map((record) => heldAll(dublinCoreOf(record) as Record<string, string[]>)),
        );
      }),
    );
  });

  test("[RE4] IPTC's artworks read back, whatever the texts hold", () => {
    fc.assert(
      fc.property(fc.array(anyRecord, { maxLength: 4 }), (records) => {
        const read = readIptc(writeIptc(records));
        const wanted = records.map((record) =>
          Object.fromEntries(
            Object.entries(iptcArtworkOf(record))
              .map(([key, value]) => [key, held(value)] as const)
              .filter(([, value]) => value !== ""),
          ),
        );
        expect(read).toEqual(wanted);
      }),
    );
  });

  test("[RE3] measurements read back to the same sheet and image, to the tick", () => {
    fc.assert(
      fc.property(
        fc.tuple(hundredths(60), hundredths(60), hundredths(1), hundredths(1)),
        ([width, height, across, down]) => {
          const sheet = { width: mm(width / 100), height: mm(height / 100) };
          const image = {
            left: mm(0),
            top: mm(0),
            width: mm(Math.min(across, width) / 100),
            height: mm(Math.min(down, height) / 100),
          };
          const composition = compose({ ...METRIC_DESIGN, print: { ...METRIC_PRINT, sheet, image } });
          const read = readDimensions(measurementsOf(composition), "mm");
          if (!read.ok) throw new Error(JSON.stringify(read.fault));
          const size = (of: typeof read.sheet) =>
            of && [of.width.length, of.height.length].map(toMillimetres);
          expect(size(read.sheet)).toEqual([width / 100, height / 100]);
          const whole = image.width === sheet.width && image.height === sheet.height;
          expect(size(read.image)).toEqual(
            whole ? null : [toMillimetres(image.width), toMillimetres(image.height)],
          );
        },
      ),
      { numRuns: 60 },
    );
  });

  test("[RE5] a document that is not well-formed, nests without end, or has a document type is not read", () => {
    for (const text of [
      "",
      "<a>",
      "<a></b>",
      "<a/><b/>",
      "a<b/>",
      "<a b=c/>",
      '<!DOCTYPE a [<!ENTITY b "c">]><a>&b;</a>',
      `${"<a>".repeat(80)}${"</a>".repeat(80)}`,
    ])
      expect(parseXml(text), text.slice(0, 40)).toBeNull();
    expect(
      parseXml("<?xml version='1.0'?><!-- b --><a x='&lt;&#x41;&other;'><![CDATA[<b>]]>&amp;</a>"),
    ).toEqual({
      space: "",
      name: "a",
      attributes: [{ space: "", name: "x", value: "<A&other;" }],
      elements: [],
      text: "<b>&",
    });
  });
});

const hundredths = (least: number) => fc.integer({ min: least * 100, max: 90_000 });

const fileOf = (files: readonly PacketFile[], name: string): Uint8Array => {
  const file = files.find((one) => one.name === name);
  if (file === undefined) throw new Error(`no ${name}`);
  return file.bytes;
};

test("[RE3] [RE4] a packet's records read back as CSV, as a workbook, as Dublin Core and as IPTC's artworks", async () => {
  const title = 'Zażółć, "Ærø"; =1+1';
  const order: PacketOrder = packetOrder(
    showReadOf({
      format: "margent-show",
      version: 1,
      name: "Slack Water",
      works: [
        {
          title,
          maker: "Ines Okonedo-Vale",
          year: "about 1926",
          process: "Cyanotype",
          record: {
            inventoryNumber: "SW 3",
            subject: "A slip",
            inscriptions: "signed below",
          },
          design: { unit: "in", print: { width: 8, height: 10 }, outer: { width: 12, height: 16 } },
        },
      ],
    }),
    { plan: { number: 2, makesVoid: null }, seconds: 0.05, clock: () => performance.now() },
  );
  const read = prepare(order);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  const files = await recordFiles(read.value, packeted(order, read.value));
  for (const name of ["records.csv", "records.xlsx"]) {
    const table = await readTable(fileOf(files, name), name);
    if (!table.ok) throw new Error(JSON.stringify(table.problem));
    const { header, rows } = table.table;
    expect(header.slice(1, 17)).toEqual(OBJECT_ID.map(([category]) => category));
    const cell = (column: string): string | undefined => rows[0]?.cells[header.indexOf(column)];
    expect(cell("Title")).toBe(title);
    expect(cell("Measurements")).toBe("sheet: 254 x 203.2 mm");
    expect(cell("Inventory number")).toBe("SW 3");
    expect(cell("Inscriptions and markings")).toBe("signed below");
    if (name === "records.csv") {
      expect(cell("what touches it")).toBe(
        "mat and mount of 4-ply white rag; Japanese tissue, starch paste.",
      );
      expect(cell("board next to it")).toBe("no buffer");
      expect(cell("rules and their sources")).toContain("from memory");
    }
  }
  const text = (name: string): string => new TextDecoder().decode(fileOf(files, name));
  expect(readDublinCore(text("records-dublin-core.xml"))).toEqual([
    {
      creator: ["Ines Okonedo-Vale"],
      date: ["about 1926"],
      description: ["signed below"],
      format: ["Cyanotype", "sheet: 254 x 203.2 mm"],
      identifier: ["SW 3"],
      subject: ["A slip"],
      title: [title],
      type: ["StillImage"],
    },
  ]);
  expect(readIptc(text("records-iptc.xmp"))).toEqual([
    {
      AOTitle: title,
      AOCreator: "Ines Okonedo-Vale",
      AOCircaDateCreated: "about 1926",
      AOSourceInvNo: "SW 3",
      AOPhysicalDescription: "Cyanotype; sheet: 254 x 203.2 mm",
    },
  ]);
});
