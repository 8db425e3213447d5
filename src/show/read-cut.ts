import type { Size } from "../geometry/index.ts";
import { inch, type Length, mm, ZERO } from "../lengths/index.ts";
import { type CuttingJob, MOST_PIECES, type PieceWanted, type StockSheet } from "../plans/index.ts";
import { type CutDocument, cutDocument } from "./cut-schema.ts";
import { JobReader, type JobRead, readJob } from "./job-reader.ts";
import { validate } from "./validate.ts";

/** Reads one cutting job, in any of its units; every problem is told with its field. */
export const readCut = (document: unknown): JobRead<CuttingJob> =>
  readJob(validate(cutDocument, document), (unit) => new CutReader(unit));

class CutReader extends JobReader {
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
    const { cost = 0, copies } = sheet;
    const width = this.side(`${field}.w`, sheet.w);
    const height = this.side(`${field}.h`, sheet.h);
    return {
      name: sheet.name ?? "",
      width,
      height,
      cost: this.price(`${field}.cost`, cost),
      copies: this.copies(`${field}.copies`, copies),
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

  private sizeOr(
    field: string,
    pair: readonly [string | number, string | number] | null | undefined,
  ): Size | null {
    if (pair === undefined || pair === null) return null;
    return { width: this.side(`${field}.0`, pair[0]), height: this.side(`${field}.1`, pair[1]) };
  }
}
