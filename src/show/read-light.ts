import {
  type LightJob,
  type LitDays,
  LUX_PER_FOOT_CANDLE,
  type Sensitivity,
  sensitivityOf,
} from "../assembly/index.ts";
import { readDay } from "./days.ts";
import { processOf } from "./read-held.ts";
import { Reader } from "./reader.ts";
import type { HangingLightDocument, PracticeDocument, WorkDocument, WorkLightDocument } from "./schema.ts";
import type { Read } from "./validate.ts";

const ILLUMINANCE = /^(\d+(?:\.\d+)?) ?(lx|lux|fc|foot-candles?)?$/i;

/** Light as people write it, in lux: `50`, `50 lx`, `5 fc`. Null for anything else. */
export function readLux(written: string | number): number | null {
  const match = ILLUMINANCE.exec(String(written).trim());
  if (match === null) return null;
  const value = Number(match[1]);
  return /^f/i.test(match[2] ?? "") ? value * LUX_PER_FOOT_CANDLE : value;
}

/** Sunlight is about 100,000 lx: from memory. */
const MOST_LUX = 200_000;

/** The light of a show as it was read: how long it hangs, and what is measured in the room. */
export interface ShowLight {
  readonly hanging: LitDays;
  readonly ultraviolet: number | null;
}

/** Reads a show's light. It hangs from the show's own date where it does not say from when. */
export function readShowLight(document: HangingLightDocument, opens: string | null): Read<ShowLight> {
  const reader = new LightReader("in");
  const hanging = reader.lit("light", { ...document, from: document.from ?? opens ?? "" });
  const { ultraviolet = null } = document;
  if (ultraviolet !== null && !(ultraviolet >= 0)) reader.refuse("light.ultraviolet", ultraviolet, NOUGHT);
  return reader.problems.length === 0
    ? { ok: true, value: { hanging, ultraviolet } }
    : { ok: false, problems: reader.problems };
}

/** What one work may bear and has borne, for a hanging. Its class is its own, or that of its process, or of its print's, where a source names one. */
export function readWorkLight(
  work: WorkDocument,
  show: ShowLight,
  practice: PracticeDocument,
): Read<LightJob> {
  const reader = new LightReader("in");
  const document: WorkLightDocument = work.light ?? {};
  const before = (document.before ?? []).map((one, index) => reader.lit(`light.before.${index}`, one));
  const sensitivity: Sensitivity | null = document.sensitivity ?? sensitivityOf(processOf(work));
  return reader.problems.length === 0
    ? { ok: true, value: { sensitivity, guidance: practice.lightGuidance ?? "cie-157", before, ...show } }
    : { ok: false, problems: reader.problems };
}

const NOUGHT = { kind: "at-least", least: 0 } as const;

class LightReader extends Reader {
  lit(field: string, { from, to, lux, hours, days }: WrittenLit): LitDays {
    const first = readDay(this, `${field}.from`, from);
    const last = readDay(this, `${field}.to`, to);
    if (first !== null && last !== null && last < first)
      this.refuse(`${field}.to`, to, { kind: "date", after: from });
    return {
      first: first ?? 0,
      last: last ?? 0,
      lux: this.lux(`${field}.lux`, lux),
      hoursPerDay: this.number(`${field}.hours`, hours, 0, 24, "count"),
      daysPerWeek: this.number(`${field}.days`, days ?? 7, 0, 7, "count"),
    };
  }

  private lux(field: string, written: string | number): number {
    const lux = readLux(written);
    if (lux !== null && lux <= MOST_LUX) return lux;
    this.refuse(field, written, { kind: "illuminance" });
    return 0;
  }
}

interface WrittenLit {
  readonly from: string;
  readonly to: string;
  readonly lux: string | number;
  readonly hours: number;
  readonly days?: number | undefined;
}
