import { expect, test } from "vitest";
import {
  isRecordColumn,
  showReadOf,
  type WorkDocument,
  worksToTable,
  writeCsv,
} from "../../src/show/index.ts";
import { prepare } from "../../src/packet/index.ts";
import { worksOf } from "../lists/helpers.ts";
import { packetOrder } from "../packet-order.ts";

test("[RE12] a list's columns named after a record are read into it, kept under their own names, and written back", async () => {
  const list =
    "title,sheet width,sheet height,Inventory Number,Inscriptions_and_markings,wall label,value,shelf\n" +
    'Ebb,8,10,SW 3,"signed, below",Read me.,380.00,4\nNeap,8,10,,,,,\n';
  const read = await worksOf(list);
  const [ebb, neap] = read.works.map(({ work }) => work);
  expect(ebb?.record).toEqual({
    inventoryNumber: "SW 3",
    inscriptions: "signed, below",
    label: "Read me.",
    value: "380.00",
  });
  expect(ebb?.more).toMatchObject({ "Inventory Number": "SW 3", shelf: "4" });
  expect(neap?.record).toBeUndefined();
  expect(read.unknownColumns.map(({ name }) => name).filter((name) => !isRecordColumn(name))).toEqual([
    "shelf",
  ]);
  const table = worksToTable(
    read.works.map(({ work }) => work),
    "in",
  );
  expect(table.lost.flatMap(({ fields }) => fields)).toEqual([]);
  const again = await worksOf(writeCsv(table.header, table.rows));
  expect(again.works.map(({ work }) => work.record)).toEqual([ebb?.record, undefined]);
  // What no column says is named as lost.
  const more: WorkDocument = { title: "Ebb", record: { credit: "Lent" }, design: {} };
  expect(worksToTable([more], "in").lost).toEqual([{ row: 2, fields: ["record.credit"] }]);
});

test("[RE8] a value that is no price is told by row, and the work goes on", () => {
  const work: WorkDocument = {
    title: "Ebb",
    record: { value: "1,500" },
    design: { unit: "in", print: { width: 8, height: 10 } },
  };
  const read = prepare(
    packetOrder(showReadOf({ format: "margent-show", version: 1, name: "Slack Water", works: [work] })),
  );
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  expect(read.value.works).toHaveLength(1);
  expect(read.value.problems).toEqual([
    { row: 2, column: "record.value", found: "1,500", wanted: "a number" },
  ]);
});
