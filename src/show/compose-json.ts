import { compose, type Composition, isStopped } from "../assembly/index.ts";
import { type Length, printLength, type Rounding, type Ruler, toMillimetres } from "../lengths/index.ts";
import { aboutOf, sayCheck, sayStepName, saySum, sayWanted, type Speech } from "../words/index.ts";
import type { Problem } from "./problem.ts";
import { readDesign } from "./read-design.ts";
import { composeDocument, type PracticeDocument } from "./schema.ts";
import { type Read, validate } from "./validate.ts";

/** A length as it leaves: exact millimetres, and its text on the document's own ruler. */
export interface LengthJson {
  readonly mm: number;
  readonly text: string;
}

export interface ProblemJson {
  readonly field: string;
  readonly found: string;
  readonly wanted: string;
}

export const problemJson = ({ field, found, wanted }: Problem): ProblemJson => ({
  field,
  found,
  wanted: sayWanted(wanted),
});

/** Validates, reads and composes one document. */
export function composeFrom(document: unknown, practice: PracticeDocument = {}): Read<Composition> {
  const valid = validate(composeDocument, document);
  if (!valid.ok) return valid;
  const design = readDesign(valid.value, practice);
  return design.ok ? { ok: true, value: compose(design.value) } : design;
}

/** One document in, the composed work or its problem out, as plain JSON. */
export const composeJson = (document: unknown, practice: PracticeDocument = {}): object =>
  composeResult(document, practice).json;

/** As `composeJson`, with whether it cannot be made as asked (a check of level "stop", or a problem). */
export function composeResult(
  document: unknown,
  practice: PracticeDocument = {},
): { readonly json: object; readonly stopped: boolean } {
  const composed = composeFrom(document, practice);
  if (!composed.ok) {
    const [first, ...more] = composed.problems.map(problemJson);
    return { json: more.length === 0 ? { error: first } : { error: first, more }, stopped: true };
  }
  const language = practice.language ?? "en-US";
  return { json: compositionJson(composed.value, language), stopped: isStopped(composed.value) };
}

/** A composition in the open format. A maximum is printed rounded down, a minimum up, a place to the nearest. */
export function compositionJson(composition: Composition, language: Speech["language"]): object {
  const { design, mats, print } = composition;
  const speech: Speech = { ruler: design.ruler, language };
  const length = lengthsOn(design.ruler);
  const at = length("nearest");
  const most = length("down");
  const sides = (
    of: typeof at,
    { head, left, right, foot }: Record<"head" | "left" | "right" | "foot", Length>,
  ) => ({
    head: of(head),
    left: of(left),
    right: of(right),
    foot: of(foot),
  });
  const size = ({ width, height }: { width: Length; height: Length }) => ({
    width: at(width),
    height: at(height),
  });
  return {
    outer: size(composition.outer),
    mats: mats.map((mat) => ({
      borders: sides(at, mat.borders),
      back: size(mat.back),
      face: size(mat.face),
      bevel: { plan: at(mat.bevel.plan), slope: at(mat.bevel.slope) },
      ...(mat.revealAsCut === null ? {} : { revealAsCut: at(mat.revealAsCut) }),
    })),
    ...(print === null
      ? {}
      : {
          print: { left: at(print.left), top: at(print.top), angle: print.angle },
          cover: sides(most, print.cover),
          pockets: {
            topLeft: most(print.pockets.topLeft),
            topRight: most(print.pockets.topRight),
            bottomLeft: most(print.pockets.bottomLeft),
            bottomRight: most(print.pockets.bottomRight),
          },
          ...(print.edition.length === 0
            ? {}
            : {
                edition: print.edition.map(({ name, left, top, cover }) => ({
                  name,
                  print: { left: at(left), top: at(top) },
                  cover: sides(most, cover),
                })),
              }),
        }),
    stops: composition.stops.map(({ mat, set, scale, edges, hand }) => ({
      mat,
      set: at(set),
      scale: at(scale),
      edges,
      hand,
    })),
    diagonal: at(composition.diagonal),
    checks: composition.checks.map((check) => ({
      code: check.code,
      level: check.level,
      text: sayCheck(check, speech),
      about: aboutOf(check),
    })),
    reckoning: composition.reckoning.map((step) => ({
      name: sayStepName(step.name, mats.length, language),
      sum: saySum(step, design.ruler.unit),
      // What paper and pockets reach is a maximum here too, as where it stands by itself.
      is: (step.name.of === "cover" || step.name.of === "pocket" ? most : at)(step.is),
    })),
  };
}

/** One printer for each way of rounding, on one ruler. A composition says many of its lengths several times; each is printed once. */
const lengthsOn =
  (ruler: Ruler) =>
  (rounding: Rounding): ((length: Length) => LengthJson) => {
    const printed = new Map<Length, LengthJson>();
    return (length) => {
      const known = printed.get(length);
      if (known !== undefined) return known;
      const json = { mm: toMillimetres(length), text: printLength(length, ruler, rounding) };
      printed.set(length, json);
      return json;
    };
  };
