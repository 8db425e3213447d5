/** How much light a work stands, as the classes of museum lighting have it. */
export const SENSITIVITIES = ["high", "medium", "low", "none"] as const;
export type Sensitivity = (typeof SENSITIVITIES)[number];

/** What one class may bear: the brightest light at any time, and the dose of a year. Null: no limit is given. */
export interface LightBudget {
  /** Lux. */
  readonly brightest: number | null;
  /** Lux hours in a year. */
  readonly year: number | null;
}

export const GUIDANCE_NAMES = ["cie-157", "science-museum"] as const;
export type GuidanceName = (typeof GUIDANCE_NAMES)[number];

/** One published set of limits. The published ones disagree, so all are kept and people choose. */
export interface LightGuidance {
  readonly source: string;
  /** Whether the figures were read in the source, or are recalled. */
  readonly known: "read" | "from memory";
  readonly budgets: Readonly<Record<Sensitivity, LightBudget>>;
}

const NO_LIMIT: LightBudget = { brightest: null, year: null };

export const LIGHT_GUIDANCE: Readonly<Record<GuidanceName, LightGuidance>> = {
  // From memory; EN 16893:2018 as quoted in a public cultural-heritage data schema has the same two least budgets,
  // and a post to the Conservation DistList of 19 Aug 2013 the first of them.
  "cie-157": {
    source: "CIE 157:2004",
    known: "from memory",
    budgets: {
      high: { brightest: 50, year: 15_000 },
      medium: { brightest: 50, year: 150_000 },
      low: { brightest: 200, year: 600_000 },
      none: NO_LIMIT,
    },
  },
  // Science Museum of Minnesota, Light deterioration, recommended light levels: very sensitive (colour photographs,
  // watercolours, textiles), light-sensitive (black and white photographs, oils). It has no third class.
  "science-museum": {
    source: "Science Museum of Minnesota, recommended light levels",
    known: "read",
    budgets: {
      high: { brightest: 50, year: 12_000 },
      medium: { brightest: 150, year: 100_000 },
      low: NO_LIMIT,
      none: NO_LIMIT,
    },
  },
};

/**
 * The class that the Science Museum of Minnesota's list puts a process in: colour photographs and watercolours
 * are very sensitive, black and white photographs light-sensitive. Null: the list does not name it, so a
 * person who knows the inks or dyes has to say.
 */
export function sensitivityOf(process: string): Sensitivity | null {
  const words = process.toLowerCase();
  if (/chromogenic|colou?r (photograph|print)|dye transfer|watercolou?r/.test(words)) return "high";
  if (/gelatin silver|silver gelatin|black and white photograph/.test(words)) return "medium";
  return null;
}

/** Above so many microwatts a lumen a filter is advised: Canadian Conservation Institute, CCI Notes 11/3. */
export const MOST_ULTRAVIOLET = 75;

/** Lux in a foot-candle: one lumen a square foot. */
export const LUX_PER_FOOT_CANDLE = 1 / 0.3048 ** 2;
