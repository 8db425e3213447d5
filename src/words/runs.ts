import type { Run, Weight } from "../drawings/index.ts";
import { type Figure, figureOf, type Length, type Rounding, type Ruler } from "../lengths/index.ts";
import { NBSP } from "./plain.ts";

export { NBSP, sentence } from "./plain.ts";

/** What may stand in a sentence: a text, a run, or several of either. */
export type Phrase = string | Run | readonly Phrase[];

/**
 * A sentence as runs: `runs\`Blank ${size}, both diagonals ${diagonal}.\``. Neighbouring texts of one
 * weight become one run, so that a line is broken only where the sentence has a space.
 */
export function runs(texts: TemplateStringsArray, ...values: readonly Phrase[]): readonly Run[] {
  return flat(texts.flatMap((text, index) => [text, values[index] ?? ""]));
}

/** Any phrase as runs; empty texts are left out. */
export function flat(phrase: Phrase): readonly Run[] {
  const all: Run[] = [];
  const take = (part: Phrase): void => {
    if (typeof part === "string") take({ kind: "text", text: part });
    else if ("kind" in part) append(all, part);
    else part.forEach(take);
  };
  take(phrase);
  return all;
}

function append(all: Run[], run: Run): void {
  if (run.kind === "text" && run.text === "") return;
  const last = all.at(-1);
  if (run.kind === "text" && last?.kind === "text" && last.weight === run.weight && last.size === run.size) {
    all[all.length - 1] = { ...last, text: last.text + run.text };
  } else {
    all.push(run);
  }
}

/** The same phrase in another weight, where it has none of its own. */
export const weighted = (weight: Weight, phrase: Phrase): readonly Run[] =>
  flat(phrase).map((run) => (run.weight === undefined ? { ...run, weight } : run));

/** A choice or an order that must stand out. */
export const strong = (phrase: Phrase): readonly Run[] => weighted("semibold", phrase);

/** Bold all through, whatever weight its figures bring: what a tool is set by. */
export const bold = (phrase: Phrase): readonly Run[] =>
  flat(phrase).map((run) => ({ ...run, weight: "bold" }));

/** A figure as runs, semibold, drawn from its parts; a decimal is whole and point in one. */
export function figureRuns(figure: Figure): readonly Run[] {
  const sign = figure.approximate ? `≈${NBSP}` : "";
  const whole = figure.decimals === "" ? figure.whole : `${figure.whole}.${figure.decimals}`;
  return flat([
    sign,
    figure.negative ? "−" : "",
    {
      kind: "fraction",
      whole,
      numerator: figure.numerator,
      denominator: figure.denominator,
      weight: "semibold",
    },
  ]);
}

/** A length on a ruler, without its unit. A bound, rounded down or up, is true as it stands and carries no `≈`. */
export function bare(length: Length, ruler: Ruler, rounding: Rounding = "nearest"): readonly Run[] {
  const figure = figureOf(length, ruler, rounding);
  return figureRuns(rounding === "nearest" ? figure : { ...figure, approximate: false });
}

/** A length as a scale is read, or as scrap is measured: to the ruler's nearest mark, which is all that can be seen. */
export const readOff = (length: Length, ruler: Ruler): readonly Run[] =>
  figureRuns({ ...figureOf(length, ruler), approximate: false });

/** A length on a ruler with its unit, never parted from it. */
export const withUnit = (length: Length, ruler: Ruler, rounding: Rounding = "nearest"): readonly Run[] =>
  flat([bare(length, ruler, rounding), `${NBSP}${ruler.unit}`]);

/** Width by height, with one unit, never parted. */
export const sizeRuns = (
  size: { readonly width: Length; readonly height: Length },
  ruler: Ruler,
  rounding: Rounding = "nearest",
  unit = true,
): readonly Run[] =>
  flat([
    bare(size.width, ruler, rounding),
    `${NBSP}×${NBSP}`,
    bare(size.height, ruler, rounding),
    unit ? `${NBSP}${ruler.unit}` : "",
  ]);

/** A number that is no length (a count, a ratio): set like a figure. */
export const count = (number: number): Run => ({
  kind: "fraction",
  whole: String(number),
  numerator: "",
  denominator: "",
  weight: "semibold",
});

/** Runs as plain text, fractions written `1 3/4`: for descriptions, never for reading back. */
export const plainText = (all: readonly Run[]): string =>
  all
    .map((run) =>
      run.kind === "text"
        ? run.text
        : [run.whole, run.numerator === "" ? "" : `${run.numerator}/${run.denominator}`]
            .filter((part) => part !== "")
            .join(" "),
    )
    .join("")
    .replaceAll(NBSP, " ");
