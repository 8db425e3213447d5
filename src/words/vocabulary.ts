/** The languages that papers, page and command line speak. */
export type Language = "en-US" | "en-GB";

/** The words of the trade that differ between the two. Everything else is said one way. */
export interface Vocabulary {
  readonly language: Language;
  /** The board with the window. */
  readonly mat: string;
  readonly mats: string;
  /** The board behind the print. */
  readonly mount: string;
  readonly mounts: string;
  /** What stands behind that, against the rabbet's fittings. */
  readonly backing: string;
  readonly centre: string;
  readonly rabbet: string;
  readonly moulding: string;
  readonly colour: string;
  readonly anticlockwise: string;
}

/** The words of each language. */
export const VOCABULARY: Readonly<Record<Language, Vocabulary>> = {
  "en-US": {
    language: "en-US",
    mat: "mat",
    mats: "mats",
    mount: "mount",
    mounts: "mounts",
    backing: "backing",
    centre: "center",
    rabbet: "rabbet",
    moulding: "molding",
    colour: "color",
    anticlockwise: "counterclockwise",
  },
  "en-GB": {
    language: "en-GB",
    mat: "mount",
    mats: "mounts",
    mount: "backing board",
    mounts: "backing boards",
    backing: "outer backing",
    centre: "centre",
    rabbet: "rebate",
    moulding: "moulding",
    colour: "colour",
    anticlockwise: "anticlockwise",
  },
};
