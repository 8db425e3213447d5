import type { RailMeasures } from "../geometry/index.ts";
import { inch, mm, ZERO } from "../lengths/index.ts";
import {
  type ChoppingJob,
  type FrameToMake,
  LONGEST_SIDE,
  MOST_PIECES,
  mitreKerf,
  railsOfFrames,
  type RailWanted,
  type StockLength,
} from "../plans/index.ts";
import { type ChopDocument, chopDocument } from "./chop-schema.ts";
import { JobReader, type JobRead, readJob } from "./job-reader.ts";
import { validate } from "./validate.ts";

/** Reads one moulding's job, of rails or of frames, in any of its units; every problem is told with its field. */
export const readChop = (document: unknown): JobRead<ChoppingJob> =>
  readJob(validate(chopDocument, document), (unit) => new ChopReader(unit));

class ChopReader extends JobReader {
  job(document: ChopDocument): ChoppingJob {
    const job: ChoppingJob = {
      lengths: document.lengths.map((length, index) => this.stock(`lengths.${index}`, length)),
      ...this.wanted(document),
      kerf: this.kerf(document),
      waste: this.lengthOr("waste", document.waste),
    };
    const rails = job.rails.reduce((sum, rail) => sum + rail.count, 0);
    if (rails > MOST_PIECES)
      this.refuse(document.rails === undefined ? "frames" : "rails", rails, {
        kind: "fewer-rails",
        most: MOST_PIECES,
      });
    return job;
  }

  private stock(
    field: string,
    { name = "", length, cost = 0, copies }: ChopDocument["lengths"][number],
  ): StockLength {
    return {
      name,
      length: this.side(`${field}.length`, length),
      cost: this.price(`${field}.cost`, cost),
      copies: this.copies(`${field}.copies`, copies),
    };
  }

  private kerf({ kerf, saw }: ChopDocument) {
    if (saw === undefined) return this.lengthOr("kerf", kerf);
    if (kerf !== undefined) this.refuse("saw", saw, { kind: "kerf-or-saw" });
    return mitreKerf(this.lengthOr("saw", saw));
  }

  private wanted({ rails, frames, moulding }: ChopDocument): Pick<ChoppingJob, "rails" | "frames"> {
    if ((rails === undefined) === (frames === undefined)) {
      this.refuse("rails", rails, { kind: "rails-or-frames" });
      return { rails: [], frames: [] };
    }
    if (frames === undefined) return this.rails(rails ?? []);
    if (moulding === undefined) this.refuse("moulding", moulding, { kind: "moulding" });
    const measures = moulding === undefined ? null : this.measures(moulding);
    const wanted = frames.map((frame, index): FrameToMake => {
      const field = `frames.${index}`;
      const width = this.side(`${field}.width`, frame.width);
      const height = this.side(`${field}.height`, frame.height);
      return { name: frame.name ?? "", width, height, count: this.whole(`${field}.n`, frame.n ?? 1) };
    });
    if (measures === null || this.all().length > 0) return { rails: [], frames: [] };
    const made = railsOfFrames(wanted, measures);
    made.rails.forEach(({ length, shortPoint }, rail) => {
      const [index, side] = [Math.floor(rail / 2), rail % 2 === 0 ? "width" : "height"] as const;
      const refuse = (kind: "seen-through" | "side") =>
        this.refuse(`frames.${index}.${side}`, frames[index]?.[side], { kind });
      if (shortPoint !== null && shortPoint <= 0) refuse("seen-through");
      if (length > LONGEST_SIDE) refuse("side");
    });
    return made;
  }

  private measures({ overall, rabbet, allowance }: NonNullable<ChopDocument["moulding"]>): RailMeasures {
    const measures = {
      overall: this.side("moulding.overall", overall),
      rabbet: this.lengthOr("moulding.rabbet", rabbet),
      // Common practice, no source.
      allowance:
        allowance === undefined
          ? { in: inch(1, 8), mm: mm(3), tick: ZERO }[this.unit]
          : this.lengthOr("moulding.allowance", allowance),
    };
    if (measures.rabbet >= measures.overall)
      this.refuse("moulding.rabbet", rabbet, { kind: "narrower-rabbet" });
    return measures;
  }

  private rails(rails: NonNullable<ChopDocument["rails"]>): Pick<ChoppingJob, "rails" | "frames"> {
    const frames: string[] = [];
    const kindOf = (frame: string): number => {
      const known = frames.indexOf(frame);
      return known >= 0 ? known : frames.push(frame) - 1;
    };
    return {
      rails: rails.map((rail, index): RailWanted => {
        const count = this.whole(`rails.${index}.n`, rail.n ?? 1);
        const { frame = null } = rail;
        return {
          name: rail.name ?? "",
          length: this.side(`rails.${index}.length`, rail.length),
          shortPoint: null,
          count,
          frame:
            frame === null || count === 0 ? null : { kind: kindOf(String(frame)), each: count, sides: [] },
        };
      }),
      frames,
    };
  }
}
