/** Processes as far as a source tells them apart. */
export type ProcessKind =
  | "cyanotype"
  | "silver gelatin"
  | "chromogenic"
  | "inkjet"
  | "dye sublimation"
  | "electrophotographic"
  | "other photograph"
  | "print or drawing";

/** How sure a statement is: read with its issuer, read in a copy or second-hand, or recalled. */
export type Known = "read" | "read in a copy" | "second-hand" | "from memory";

/** What a rule of materials speaks of. `words` says it. */
export type MaterialTopic =
  | "board"
  | "buffered"
  | "unbuffered"
  | "buffered-or-not"
  | "neutral-fades-too"
  | "omitted-no-consensus"
  | "activity-test"
  | "activity-test-conditions"
  | "standard"
  | "lightfast"
  | "window-thickness"
  | "paper-not-board"
  | "never-behind"
  | "paste"
  | "no-adhesive"
  | "boxes"
  | "store-inkjet"
  | "store-electrophotographic";

export interface MaterialRule {
  readonly topic: MaterialTopic;
  /** Null: for any work on paper. */
  readonly of: readonly ProcessKind[] | null;
  readonly source: string;
  readonly known: Known;
}

const PHOTOGRAPHS: readonly ProcessKind[] = [
  "cyanotype",
  "silver gelatin",
  "chromogenic",
  "inkjet",
  "dye sublimation",
  "electrophotographic",
  "other photograph",
];

const LOC = "Library of Congress, Guide to Preservation Matting and Framing";
const CCAHA = "CCAHA, Matting and Framing Specifications for Objects on Paper";
const CCAHA_ISO = "CCAHA, ISO Standards for Housing Photographs";
const HANDOUT = "E. Stapel, Matting and Presentation (photography course handout)";
const GUILD = "Fine Art Trade Guild framing standards, as reprinted on members' sites";

/** Rules of what may touch a work, each with its source; where sources disagree, each of them has its own. */
export const MATERIAL_RULES: readonly MaterialRule[] = [
  { topic: "board", of: null, source: LOC, known: "read in a copy" },
  {
    topic: "buffered",
    of: ["print or drawing"],
    source: "Canadian Conservation Institute, CCI Notes 11/5",
    known: "read",
  },
  { topic: "buffered", of: ["print or drawing"], source: CCAHA, known: "read in a copy" },
  { topic: "unbuffered", of: ["cyanotype"], source: CCAHA, known: "read in a copy" },
  { topic: "neutral-fades-too", of: ["cyanotype"], source: CCAHA_ISO, known: "read" },
  { topic: "omitted-no-consensus", of: ["other photograph"], source: CCAHA_ISO, known: "read" },
  {
    topic: "unbuffered",
    of: ["chromogenic", "inkjet", "dye sublimation", "other photograph"],
    source: HANDOUT,
    known: "second-hand",
  },
  { topic: "buffered-or-not", of: ["silver gelatin"], source: HANDOUT, known: "second-hand" },
  { topic: "activity-test", of: PHOTOGRAPHS, source: `${LOC}; ISO 18916:2007`, known: "read in a copy" },
  { topic: "activity-test-conditions", of: PHOTOGRAPHS, source: "ISO 18916", known: "from memory" },
  { topic: "standard", of: PHOTOGRAPHS, source: "ISO 18902:2013, catalogue text", known: "read" },
  {
    topic: "lightfast",
    of: null,
    source: "Trade news on the Fine Art Trade Guild's 2019 review of its mountboard standard",
    known: "second-hand",
  },
  { topic: "window-thickness", of: null, source: GUILD, known: "second-hand" },
  {
    topic: "paper-not-board",
    of: null,
    source: "ISO 9706, scope; Library of Congress, permanent papers, Appendix 3",
    known: "read",
  },
  { topic: "never-behind", of: null, source: "NEDCC leaflet 4.10", known: "read" },
  { topic: "paste", of: null, source: LOC, known: "read in a copy" },
  {
    topic: "no-adhesive",
    of: null,
    source: "NEDCC leaflet 7.4; Library of Congress Research Guide, Mounting and Hinging",
    known: "read",
  },
  { topic: "boxes", of: null, source: "ISO 16245:2009", known: "from memory" },
  {
    topic: "store-inkjet",
    of: ["inkjet", "dye sublimation"],
    source: "ISO 18920, as the Image Permanence Institute reports it (DP3 newsletter 11)",
    known: "read",
  },
  {
    topic: "store-electrophotographic",
    of: ["electrophotographic"],
    source: "ISO 18920, as the Image Permanence Institute reports it (DP3 newsletter 11)",
    known: "read",
  },
];

/** Words by which a process is known, the first that is found. */
const PROCESSES: readonly (readonly [RegExp, ProcessKind])[] = [
  [/cyanotype|blueprint/, "cyanotype"],
  [/gelatin/, "silver gelatin"],
  [/chromogenic|c-print|c-type|type c/, "chromogenic"],
  [/inkjet|ink-jet|pigment print|gicl[eé]e/, "inkjet"],
  [/dye sublimation|dye-sublimation/, "dye sublimation"],
  [/electrophotograph|laser print|photocopy|xerograph/, "electrophotographic"],
  [
    /dye transfer|salt(ed)? (paper|print)|albumen|collodion|platinum|palladium|diazo|photogram|photograph|gum bichromate|carbon print|van ?dyke|kallitype/,
    "other photograph",
  ],
  [
    /etching|drypoint|engraving|aquatint|mezzotint|intaglio|lithograph|woodcut|wood engraving|linocut|lino|relief|screen ?print|serigraph|silkscreen|monotype|monoprint|letterpress|collagraph|drawing|pencil|charcoal|graphite|ink on paper|watercolou?r|gouache|pastel/,
    "print or drawing",
  ],
];

/** The kind of a process as it was told; null: no source here names it, and someone who knows it must say. */
export function processKindOf(process: string): ProcessKind | null {
  const words = process.toLowerCase();
  return PROCESSES.find(([pattern]) => pattern.test(words))?.[1] ?? null;
}

/** The rules for a work: those of its kind first, then those for any work on paper; of an unknown kind these alone. */
export function rulesFor(kind: ProcessKind | null): readonly MaterialRule[] {
  const own = MATERIAL_RULES.filter(({ of }) => of !== null && kind !== null && of.includes(kind));
  return [...own, ...MATERIAL_RULES.filter(({ of }) => of === null)];
}

/** What the sources together say of an alkaline buffer beside a work. */
export type BufferAdvice = "buffered" | "unbuffered" | "either" | "disputed" | "unknown";

/** Where one source forbids a buffer and another finds no ground for that, "disputed": without one is the safe side. */
export function bufferAdvice(kind: ProcessKind | null): BufferAdvice {
  if (kind === null || kind === "electrophotographic") return "unknown";
  const topics = new Set(rulesFor(kind).map(({ topic }) => topic));
  if (topics.has("omitted-no-consensus")) return "disputed";
  if (topics.has("unbuffered")) return "unbuffered";
  return topics.has("buffered-or-not") ? "either" : "buffered";
}
