import {
  DUBLIN_CORE,
  dublinCoreOf,
  IPTC_ARTWORK,
  iptcArtworkOf,
  OBJECT_ID,
  objectIdRow,
  recordOf,
  type WorkRecord,
  writeDublinCore,
  writeIptc,
  writeXlsx,
} from "../show/index.ts";
import type { Speech } from "../words/index.ts";
import { heldTexts, MATERIALS, matsWords, sizeText } from "../words/records.ts";
import type { Packeted } from "./bench-sheets.ts";
import { csvFile, type PacketFile, type TableOut, textFile } from "./file.ts";
import type { Prepared } from "./order.ts";

/** One work's record with the row of the list that it came from. */
interface Recorded {
  readonly row: string;
  readonly record: WorkRecord;
  readonly materials: readonly string[];
}

function recordsOf({ works, holds, practice }: Prepared, { plan }: Packeted): readonly Recorded[] {
  return works.map((one, index): Recorded => {
    const { row, work, quantity, composition, stopped, glazing, backing, frame } = one;
    const { design, outer } = composition;
    const speech: Speech = { ruler: design.ruler, language: practice.language };
    const held = heldTexts(design, holds[index] ?? null, speech);
    const record = recordOf(work, composition);
    return {
      row: String(row),
      record,
      materials: [
        String(quantity),
        sizeText(outer, design.ruler),
        held.touches,
        held.held,
        held.release,
        held.never,
        held.board,
        matsWords(design),
        design.mount,
        glazing?.board ?? "",
        backing?.board ?? "",
        frame?.kind.moulding.name ?? "",
        record.rights,
        record.credit,
        stopped ? "" : plan.date,
        String(plan.number),
        held.rules,
      ],
    };
  });
}

/** Every work's record as tables, Object ID's names first, and under the names of Dublin Core and of the IPTC. */
export async function recordFiles(prepared: Prepared, shared: Packeted): Promise<readonly PacketFile[]> {
  const recorded = recordsOf(prepared, shared);
  const records = recorded.map(({ record }) => record);
  const objectId = [MATERIALS.row, ...OBJECT_ID.map(([category]) => category)];
  const table: TableOut = {
    header: [...objectId, ...MATERIALS.columns],
    rows: recorded.map(({ row, record, materials }) => [row, ...objectIdRow(record), ...materials]),
  };
  const workbook = await writeXlsx([
    {
      name: MATERIALS.objectId,
      header: objectId,
      rows: recorded.map(({ row, record }) => [row, ...objectIdRow(record)]),
    },
    {
      name: MATERIALS.sheet,
      header: [MATERIALS.row, "Title", ...MATERIALS.columns],
      rows: recorded.map(({ row, record, materials }) => [row, record.title, ...materials]),
    },
    {
      name: MATERIALS.dublinCore,
      header: DUBLIN_CORE,
      rows: records.map((record) => {
        const core = dublinCoreOf(record);
        return DUBLIN_CORE.map((element) => (core[element] ?? []).join("; "));
      }),
    },
    {
      name: MATERIALS.iptc,
      header: IPTC_ARTWORK.map(([name]) => name),
      rows: records.map((record) => {
        const artwork = iptcArtworkOf(record);
        return IPTC_ARTWORK.map(([name]) => artwork[name] ?? "");
      }),
    },
  ]);
  return [
    csvFile("records.csv", table),
    { name: "records.xlsx", bytes: workbook },
    textFile("records-dublin-core.xml", writeDublinCore(records)),
    textFile("records-iptc.xmp", writeIptc(records)),
  ];
}
