import { bestFitting, type Fit, fitInto } from "../assembly/index.ts";
import { absolute, fineRuler, type Length, printLength } from "../lengths/index.ts";
import {
  fitJson,
  type FrameKind,
  framePracticeFor,
  type PracticeDocument,
  readDesign,
  readWorkFrame,
} from "../show/index.ts";
import type { Language } from "../words/index.ts";
import { REUSE_TABLE } from "../words/packet.ts";
import type { TableOut } from "./file.ts";
import type { ComposedWork } from "./works.ts";
import { SIDES } from "../geometry/index.ts";

/** What exists, and which works go into it best, the best one first. */
export interface Reuse {
  readonly kind: FrameKind;
  readonly fits: readonly { readonly work: ComposedWork; readonly fit: Fit }[];
}

/** Every frame and mat that exists with the works of a packet, as far as they can be read in it. */
export function reuseOf(works: readonly ComposedWork[], practice: PracticeDocument): readonly Reuse[] {
  const unit = practice.unit ?? works[0]?.composition.design.ruler.unit ?? "in";
  const read = framePracticeFor(practice, unit);
  if (!read.ok) return [];
  return read.value.frames
    .filter(({ opening, mat }) => opening !== null || mat !== null)
    .map((kind) => {
      const fits = works.flatMap((work) => {
        const fit = fitOf(work, kind.name, practice);
        return fit === null ? [] : [{ work, fit }];
      });
      return { kind, fits: bestFitting(fits.map(({ fit }) => fit)).flatMap((index) => fits[index] ?? []) };
    });
}

/** A work as though it named that kind and had no size of its own. */
export function fitOf(
  { work }: Pick<ComposedWork, "work">,
  kind: string,
  practice: PracticeDocument,
): Fit | null {
  const { outer: _, ...free } = work.design;
  const design = readDesign(free, practice);
  if (!design.ok) return null;
  const framed = readWorkFrame({ frame: kind, design: free }, practice, design.value.ruler.unit);
  return framed.ok && framed.value.frame !== null ? fitInto(design.value, framed.value.frame) : null;
}

/** What exists and what goes into it, in the open format; nothing where nothing exists. */
export const reuseJson = (reuse: readonly Reuse[], language: Language): { readonly reuse?: object } =>
  reuse.length === 0
    ? {}
    : {
        reuse: reuse.map(({ kind, fits }) => ({
          kind: kind.name,
          copies: kind.copies,
          fits: fits.map(({ work, fit }) => ({
            row: work.row,
            title: work.work.title,
            ...fitJson(fit, { ruler: work.composition.design.ruler, language }),
          })),
        })),
      };

/** Every frame and mat that exists with every work, the best one first: what comes out of its borders, what shows. */
export const reuseTable = (reuse: readonly Reuse[]): TableOut => ({
  header: REUSE_TABLE.header,
  rows: reuse.flatMap(({ kind, fits }) =>
    fits.map(({ work, fit }, index) => {
      const fine = fineRuler(work.composition.design.ruler);
      const said = (length: Length): string => printLength(length, fine);
      const { outer } = fit.composition;
      const { seen } = fit.plan.stands;
      return [
        kind.name,
        kind.copies === null ? "" : String(kind.copies),
        String(index + 1),
        String(work.row),
        work.work.title,
        REUSE_TABLE.hangs(fit.turned),
        said(outer.width),
        said(outer.height),
        ...SIDES.map((side) => said(seen[side])),
        ...SIDES.map((side) =>
          fit.shown === null
            ? ""
            : REUSE_TABLE.image(said(absolute(fit.shown[side])), Math.sign(fit.shown[side])),
        ),
        String(fit.stops),
        String(fit.warnings),
      ];
    }),
  ),
});
