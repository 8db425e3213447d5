import { TICKS_PER_MILLIMETRE } from "../../lengths/index.ts";
import { LINE_STYLES } from "../conventions.ts";
import type { Drawing, LineKind } from "../marks.ts";

/** A group code and its value: DXF is nothing but these, two lines each. */
export type Pair = readonly [code: number, value: string];

/** One entity of the model: its own pairs follow the ones that all share. */
export interface Entity {
  readonly type: string;
  readonly layer: string;
  readonly line: LineKind;
  readonly pairs: readonly Pair[];
}

/** The line types that a file knows, by the names that every reader of DXF has for them. */
const LINE_TYPES: Readonly<Record<string, { readonly kind: LineKind; readonly about: string }>> = {
  HIDDEN: { kind: "hidden", about: "Hidden __ __ __ __" },
  CENTER: { kind: "centre", about: "Center ____ _ ____ _" },
  PHANTOM: { kind: "phantom", about: "Phantom ____ _ _ ____" },
};

const lineTypeOf = (kind: LineKind): string =>
  Object.entries(LINE_TYPES).find(([, each]) => each.kind === kind)?.[0] ?? "CONTINUOUS";

/** Hundredths of a millimetre; every width of the house is one that DXF lists. */
const lineWeightOf = (kind: LineKind): string => String(Math.round(LINE_STYLES[kind].width * 100));

/** Millimetres, exact to the tick, never with an exponent. */
export function millimetres(ticks: number): string {
  const figure = (ticks / TICKS_PER_MILLIMETRE).toFixed(7).replace(/\.?0+$/, "");
  return figure === "-0" ? "0" : figure;
}

const section = (name: string, pairs: readonly Pair[]): Pair[] => [
  [0, "SECTION"],
  [2, name],
  ...pairs,
  [0, "ENDSEC"],
];

/** Hands out the handles by which the parts of a file know each other. */
class Handles {
  #next = 0x10;
  take(): string {
    this.#next += 1;
    return this.#next.toString(16).toUpperCase();
  }
}

/** A whole file round its entities: header, tables, the two blocks that every file has, entities, objects. */
export function wholeFile(drawing: Drawing, entities: readonly Entity[]): string {
  const handles = new Handles();
  const model = handles.take();
  const paper = handles.take();
  const layers = ["0", ...new Set(entities.map((entity) => entity.layer).filter((layer) => layer !== "0"))];
  const rest: Pair[] = [
    ...section("CLASSES", []),
    ...section("TABLES", tables(handles, layers, model, paper)),
    ...section("BLOCKS", [
      ...block(handles, "*Model_Space", model),
      ...block(handles, "*Paper_Space", paper),
    ]),
    ...section(
      "ENTITIES",
      entities.flatMap((entity) => entityPairs(handles, entity, model)),
    ),
    ...section("OBJECTS", objects(handles)),
    [0, "EOF"],
  ];
  const all = [...section("HEADER", header(drawing, handles.take())), ...rest];
  return `${all.map(([code, value]) => `${String(code).padStart(3)}\n${value}`).join("\n")}\n`;
}

const header = (drawing: Drawing, seed: string): Pair[] => [
  [9, "$ACADVER"],
  [1, "AC1021"],
  [9, "$DWGCODEPAGE"],
  [3, "ANSI_1252"],
  [9, "$INSUNITS"],
  [70, "4"],
  [9, "$MEASUREMENT"],
  [70, "1"],
  [9, "$LTSCALE"],
  [40, "1"],
  [9, "$EXTMIN"],
  [10, "0"],
  [20, "0"],
  [30, "0"],
  [9, "$EXTMAX"],
  [10, millimetres(drawing.width)],
  [20, millimetres(drawing.height)],
  [30, "0"],
  [9, "$HANDSEED"],
  [5, seed],
];

interface TableRecord {
  readonly kind: string;
  readonly className: string;
  readonly name: string;
  readonly pairs: readonly Pair[];
  readonly handle?: string;
}

function table(handles: Handles, name: string, records: readonly TableRecord[]): Pair[] {
  const owner = handles.take();
  return [
    [0, "TABLE"],
    [2, name],
    [5, owner],
    [330, "0"],
    [100, "AcDbSymbolTable"],
    [70, String(records.length)],
    ...(name === "DIMSTYLE" ? [[100, "AcDbDimStyleTable"] satisfies Pair] : []),
    ...records.flatMap((record): Pair[] => [
      [0, record.kind],
      [record.kind === "DIMSTYLE" ? 105 : 5, record.handle ?? handles.take()],
      [330, owner],
      [100, "AcDbSymbolTableRecord"],
      [100, record.className],
      [2, record.name],
      ...record.pairs,
    ]),
    [0, "ENDTAB"],
  ];
}

const lineType = (name: string, about: string, dashes: readonly number[]): TableRecord => ({
  kind: "LTYPE",
  className: "AcDbLinetypeTableRecord",
  name,
  pairs: [
    [70, "0"],
    [3, about],
    [72, "65"],
    [73, String(dashes.length)],
    [40, String(dashes.reduce((sum, long) => sum + long, 0))],
    ...dashes.flatMap((long, index): Pair[] => [
      [49, String(index % 2 === 0 ? long : -long)],
      [74, "0"],
    ]),
  ],
});

const layer = (name: string): TableRecord => ({
  kind: "LAYER",
  className: "AcDbLayerTableRecord",
  name,
  pairs: [
    [70, "0"],
    [62, "7"],
    [6, "CONTINUOUS"],
    [370, "-3"],
  ],
});

const STANDARD_TYPE: TableRecord = {
  kind: "STYLE",
  className: "AcDbTextStyleTableRecord",
  name: "Standard",
  pairs: [
    [70, "0"],
    [40, "0"],
    [41, "1"],
    [50, "0"],
    [71, "0"],
    [42, "2.5"],
    [3, "txt"],
    [4, ""],
  ],
};

const blockRecord = (name: string, handle: string): TableRecord => ({
  kind: "BLOCK_RECORD",
  className: "AcDbBlockTableRecord",
  name,
  pairs: [[340, "0"]],
  handle,
});

function tables(handles: Handles, layers: readonly string[], model: string, paper: string): Pair[] {
  return [
    ...table(handles, "VPORT", []),
    ...table(handles, "LTYPE", [
      lineType("BYBLOCK", "", []),
      lineType("BYLAYER", "", []),
      lineType("CONTINUOUS", "Solid line", []),
      ...Object.entries(LINE_TYPES).map(([name, { kind, about }]) =>
        lineType(name, about, LINE_STYLES[kind].dashes),
      ),
    ]),
    ...table(handles, "LAYER", layers.map(layer)),
    ...table(handles, "STYLE", [STANDARD_TYPE]),
    ...table(handles, "VIEW", []),
    ...table(handles, "UCS", []),
    ...table(handles, "APPID", [
      { kind: "APPID", className: "AcDbRegAppTableRecord", name: "ACAD", pairs: [[70, "0"]] },
    ]),
    ...table(handles, "DIMSTYLE", [
      { kind: "DIMSTYLE", className: "AcDbDimStyleTableRecord", name: "Standard", pairs: [[70, "0"]] },
    ]),
    ...table(handles, "BLOCK_RECORD", [
      blockRecord("*Model_Space", model),
      blockRecord("*Paper_Space", paper),
    ]),
  ];
}

const block = (handles: Handles, name: string, record: string): Pair[] => [
  [0, "BLOCK"],
  [5, handles.take()],
  [330, record],
  [100, "AcDbEntity"],
  [8, "0"],
  [100, "AcDbBlockBegin"],
  [2, name],
  [70, "0"],
  [10, "0"],
  [20, "0"],
  [30, "0"],
  [3, name],
  [1, ""],
  [0, "ENDBLK"],
  [5, handles.take()],
  [330, record],
  [100, "AcDbEntity"],
  [8, "0"],
  [100, "AcDbBlockEnd"],
];

const entityPairs = (handles: Handles, entity: Entity, model: string): Pair[] => [
  [0, entity.type],
  [5, handles.take()],
  [330, model],
  [100, "AcDbEntity"],
  [8, entity.layer],
  [6, lineTypeOf(entity.line)],
  [370, lineWeightOf(entity.line)],
  ...entity.pairs,
];

function objects(handles: Handles): Pair[] {
  const root = handles.take();
  const groups = handles.take();
  return [
    [0, "DICTIONARY"],
    [5, root],
    [330, "0"],
    [100, "AcDbDictionary"],
    [281, "1"],
    [3, "ACAD_GROUP"],
    [350, groups],
    [0, "DICTIONARY"],
    [5, groups],
    [330, root],
    [100, "AcDbDictionary"],
    [281, "1"],
  ];
}
