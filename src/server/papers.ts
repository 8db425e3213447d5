import type { Read, ShowDocument } from "../show/index.ts";

/** What a paper is made from. `date` is the day printed on it, ISO 8601; `picture` gives the bytes behind a picture's address. */
export interface PaperOrder {
  readonly show: ShowDocument;
  readonly date: string;
  readonly picture: (address: string) => Uint8Array | undefined;
}

/** Whoever makes papers; the server only carries what they make. A document that cannot be read comes back as its problems. */
export interface Papers {
  /** One work's bench sheet as PDF; `work` counts from 0 in the show's order. */
  benchSheet(order: PaperOrder & { readonly work: number }): Promise<Read<Uint8Array>>;
  /** Every file of the show's packet, by its name. */
  packet(order: PaperOrder): Promise<Read<ReadonlyMap<string, Uint8Array>>>;
}
