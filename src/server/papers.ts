import type { Drawing } from "../drawings/index.ts";
import type { PaperSize } from "../papers/index.ts";
import type { Read, ShowDocument } from "../show/index.ts";
import type { PaperName } from "../words/paper-names.ts";

/** What a paper is made from. `date` is the day printed on it, ISO 8601; `picture` gives the bytes behind a picture's address. */
export interface PaperOrder {
  readonly show: ShowDocument;
  readonly date: string;
  readonly picture: (address: string) => Uint8Array | undefined;
}

/** A paper's size; null: the practice's. */
export type PaperAsked = PaperOrder & { readonly paper: PaperSize | null };

/** What a show prints, before it is printed. */
export interface PaperPreviews {
  /** Each paper's first page; null where the show has no part for it. */
  readonly papers: readonly { readonly name: PaperName; readonly page: Drawing | null }[];
  /** Why some are left out, a sentence each. */
  readonly leftOut: readonly string[];
  /** Which plan the papers say they are of. */
  readonly plan: number;
}

/** Whoever makes papers; the server only carries what they make. A document that cannot be read comes back as its problems. */
export interface Papers {
  /** One work's bench sheet as PDF; `work` counts from 0 in the show's order. */
  benchSheet(order: PaperOrder & { readonly work: number }): Promise<Read<Uint8Array>>;
  /** One paper of the packet as PDF; null where the show has no part for it. */
  paper(order: PaperAsked & { readonly name: PaperName }): Promise<Read<Uint8Array | null>>;
  /** Every paper's first page. */
  previews(order: PaperAsked): Promise<Read<PaperPreviews>>;
  /** Every file of the show's packet, by its name. */
  packet(order: PaperAsked): Promise<Read<ReadonlyMap<string, Uint8Array>>>;
}
