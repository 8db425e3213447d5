import type { Size } from "../geometry/index.ts";
import { inch, type Length, mm, ticks, ZERO } from "../lengths/index.ts";
import {
  type CuttingJob,
  LONGEST_SIDE,
  MOST_PIECES,
  type PieceWanted,
  type StockSheet,
} from "../plans/index.ts";
import { foundText, type Wanted } from "./problem.ts";
import { type CUT_UNITS, type CutDocument, cutDocument } from "./cut-schema.ts";
import { Reader } from "./reader.ts";
import { validate } from "./validate.ts";

export type CutUnit = (typeof CUT_UNITS)[number];

/** What is wanted in a field of a cutting job, beyond what every document knows. */
export type CutWanted =
  | Wanted
  | { readonly kind: "whole"; readonly most: number | null }
  | { readonly kind: "side" }
  | { readonly kind: "price" }
  | { readonly kind: "seconds" }
  | { readonly kind: "smaller-window" }
  | { readonly kind: "fewer-pieces"; readonly most: number };

export interface CutProblem {
  readonly field: string;
  readonly found: string;
  readonly wanted: CutWanted;
}

/** A job with what the document says about how to plan it and how to write the plan. */
export interface CutRequest {
  readonly job: CuttingJob;
  readonly unit: CutUnit;
  readonly seconds: number;
  readonly seed: number;
}

export type CutRead =
  | { readonly ok: true; readonly value: CutRequest }
  | { readonly ok: false; readonly problems: readonly CutProblem[] };

const MOST_SECONDS = 3600;
const USUAL_SECONDS = 5;

/** Reads one cutting job, in any of its units; every problem is told with its field. */
export function readCut(document: unknown): CutRead {
  const valid = validate(cutDocument, document);
  if (!valid.ok) return valid;
  const reader = new CutReader(valid.value.unit ?? "in");
  const job = reader.job(valid.value);
  const { seconds = USUAL_SECONDS, seed = 1 } = valid.value;
  if (!(seconds >= 0 && seconds <= MOST_SECONDS)) reader.refuse("seconds", seconds, { kind: "seconds" });
  if (!Number.isSafeInteger(seed)) reader.refuse("seed", seed, { kind: "whole", most: null });
  const problems = reader.all();
  return problems.length > 0
    ? { ok: false, problems }
    : { ok: true, value: { job, unit: reader.unit, seconds, seed } };
}

class CutReader {
  readonly unit: CutUnit;
  private readonly lengths: Reader;
  private readonly problems: CutProblem[] = [];

  constructor(unit: CutUnit) {
    this.unit = unit;
    this.lengths = new Reader(unit === "tick" ? "mm" : unit);
  }

  all(): readonly CutProblem[] {
    return [...this.lengths.problems, ...this.problems];
  }

  refuse(field: string, found: unknown, wanted: CutWanted): void {
    this.problems.push({ field, found: foundText(found), wanted });
  }

  job(document: CutDocument): CuttingJob {
    const trim = this.lengthOr("trim", document.trim);
    const job: CuttingJob = {
      sheets: document.sheets.map((sheet, index) => this.sheet(`sheets.${index}`, sheet, trim)),
      pieces: document.pieces.map((piece, index) =>
        this.piece(`pieces.${index}`, piece, document.rotate ?? true),
      ),
      dropOuts: document.dropouts ?? false,
      kerf: this.lengthOr("kerf", document.kerf),
      least: this.sizeOr("least", document.least),
      longestCut:
        document.longestCut === undefined || document.longestCut === null
          ? null
          : this.side("longestCut", document.longestCut),
      tight: { in: inch(1, 8), mm: mm(3), tick: ZERO }[this.unit],
    };
    const pieces = job.pieces.reduce((sum, piece) => sum + piece.count, 0);
    if (pieces > MOST_PIECES) this.refuse("pieces", pieces, { kind: "fewer-pieces", most: MOST_PIECES });
    return job;
  }

  private sheet(field: string, sheet: CutDocument["sheets"][number], trim: Length): StockSheet {
    const { cost = 0, copies = null } = sheet;
    if (!(cost >= 0 && cost <= 1e9)) this.refuse(`${field}.cost`, cost, { kind: "price" });
    const width = this.side(`${field}.w`, sheet.w);
    const height = this.side(`${field}.h`, sheet.h);
    return {
      name: sheet.name ?? "",
      width,
      height,
      cost,
      copies: copies === null ? null : this.whole(`${field}.copies`, copies),
      trim: sheet.trim === undefined ? trim : this.lengthOr(`${field}.trim`, sheet.trim),
    };
  }

  private piece(field: string, piece: CutDocument["pieces"][number], mayTurn: boolean): PieceWanted {
    const width = this.side(`${field}.w`, piece.w);
    const height = this.side(`${field}.h`, piece.h);
    const window = this.sizeOr(`${field}.window`, piece.window);
    if (window !== null && (window.width >= width || window.height >= height)) {
      this.refuse(`${field}.window`, piece.window, { kind: "smaller-window" });
    }
    return {
      name: piece.name ?? "",
      width,
      height,
      count: this.whole(`${field}.n`, piece.n ?? 1),
      window,
      turns: mayTurn && (piece.rotate ?? true),
    };
  }

  private whole(field: string, value: number): number {
    if (Number.isSafeInteger(value) && value >= 0) return value;
    this.refuse(field, value, { kind: "whole", most: null });
    return 0;
  }

  private sizeOr(
    field: string,
    pair: readonly [string | number, string | number] | null | undefined,
  ): Size | null {
    if (pair === undefined || pair === null) return null;
    return { width: this.side(`${field}.0`, pair[0]), height: this.side(`${field}.1`, pair[1]) };
  }

  private lengthOr(field: string, value: string | number | undefined): Length {
    if (value === undefined) return ZERO;
    return this.unit === "tick" ? this.tick(field, value) : this.lengths.length(field, value);
  }

  /** A length above nought that a bench can hold. */
  private side(field: string, value: string | number): Length {
    if (this.unit === "tick") {
      const before = this.problems.length;
      const length = this.tick(field, value);
      if (length === 0 && this.problems.length === before) this.refuse(field, value, { kind: "side" });
      return length;
    }
    const length = this.lengths.size(field, value);
    if (length > LONGEST_SIDE) this.refuse(field, value, { kind: "side" });
    return length;
  }

  /** A whole number of whatever the job counts in. */
  private tick(field: string, value: string | number): Length {
    const number = typeof value === "string" && /^\s*\d+\s*$/.test(value) ? Number(value) : value;
    if (typeof number === "number" && Number.isSafeInteger(number) && number >= 0 && number <= LONGEST_SIDE) {
      return ticks(number);
    }
    this.refuse(field, value, { kind: "whole", most: LONGEST_SIDE });
    return ZERO;
  }
}
