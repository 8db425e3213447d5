import * as z from "zod/mini";

const money = z.union([z.string(), z.number()]);

/**
 * What is written down of a work beside its title, maker, year and process, named after the categories of
 * Object ID (ICOM and Getty); `rights` and `credit` after the IPTC's artwork fields.
 */
export const recordDocument = z.object({
  inventoryNumber: z.optional(z.string()),
  typeOfObject: z.optional(z.string()),
  inscriptions: z.optional(z.string()),
  features: z.optional(z.string()),
  subject: z.optional(z.string()),
  description: z.optional(z.string()),
  place: z.optional(z.string()),
  related: z.optional(z.string()),
  crossReference: z.optional(z.string()),
  /** The day on which it was written down, ISO 8601. */
  documented: z.optional(z.string()),
  /** The copyright notice. */
  rights: z.optional(z.string()),
  /** Whose it is, and how that is to be said: "Lent by the maker". */
  credit: z.optional(z.string()),
  /** What a visitor reads below title and maker. */
  label: z.optional(z.string()),
  /** How it was found, and when and by whom. */
  condition: z.optional(z.string()),
  /** What it is insured for, in the practice's currency. */
  value: z.optional(money),
  lender: z.optional(z.string()),
});

export type RecordDocument = z.infer<typeof recordDocument>;
