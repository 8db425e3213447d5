import {
  type Design,
  type OuterRule,
  type Print,
  SIZE_LISTS,
  type WindowRule,
} from "../../assembly/index.ts";
import type { Box, Outline, Size } from "../../geometry/index.ts";
import { type Length, printExact, type Unit } from "../../lengths/index.ts";
import type { ComposeDocument } from "../../show/index.ts";

type PrintDocument = NonNullable<ComposeDocument["print"]>;
type OuterDocument = NonNullable<ComposeDocument["outer"]>;
type MatDocuments = NonNullable<ComposeDocument["mats"]>;

/** Every length as text that carries its unit, so that it reads the same whatever the document's unit becomes. */
export class Speller {
  readonly unit: Unit;

  constructor(unit: Unit) {
    this.unit = unit;
  }

  length(length: Length): string {
    return printExact(length, this.unit);
  }

  size({ width, height }: Size): { width: string; height: string } {
    return { width: this.length(width), height: this.length(height) };
  }

  box(box: Box): { left: string; top: string; width: string; height: string } {
    return { left: this.length(box.left), top: this.length(box.top), ...this.size(box) };
  }

  outline(outline: Outline): [string, string][] {
    return outline.map(({ x, y }) => [this.length(x), this.length(y)]);
  }

  print(print: Print): PrintDocument {
    return {
      ...this.size(print.sheet),
      image: this.box(print.image),
      ...(print.outline === null ? {} : { outline: this.outline(print.outline) }),
      ...(print.sheetOutline === null ? {} : { sheetOutline: this.outline(print.sheetOutline) }),
      angle: print.angle,
      level: print.level,
      thickness: this.length(print.thickness),
      sure: this.length(print.sure),
      ...(print.edition.length === 0
        ? {}
        : {
            edition: print.edition.map(({ name, sheet, image }) => ({
              name,
              ...this.size(sheet),
              image: this.box(image),
            })),
          }),
    };
  }

  window(window: WindowRule): NonNullable<ComposeDocument["window"]> {
    switch (window.show) {
      case "overlap":
        return { show: "overlap", overlap: this.length(window.overlap) };
      case "margins": {
        const { top, side, foot } = window;
        return { show: "margins", top: this.length(top), side: this.length(side), foot: this.length(foot) };
      }
      case "sheet":
        return { show: "sheet", gap: this.length(window.gap) };
      case "typed":
        return { show: "typed", ...this.size(window) };
    }
  }

  outer(outer: OuterRule): OuterDocument {
    switch (outer.kind) {
      case "size":
        return this.size(outer);
      case "borders": {
        const { head, side, foot } = outer.borders;
        const borders = { head: this.length(head), side: this.length(side), foot: this.length(foot) };
        return outer.standard === null ? { borders } : { borders, standard: this.list(outer.standard) };
      }
      case "smallest":
        return {
          smallest: this.list(outer.sizes),
          border: this.length(outer.border),
          holdsSheet: outer.holdsSheet,
        };
    }
  }

  /** A list by its name where it has one. */
  list(sizes: readonly Size[]): Extract<OuterDocument, { smallest: unknown }>["smallest"] {
    return listName(sizes) ?? sizes.map((size) => this.size(size));
  }

  mats(mats: Design["mats"]): MatDocuments {
    return mats.map(({ thickness, bevel, reveal, board }) => ({
      thickness: this.length(thickness),
      bevel,
      reveal: this.length(reveal),
      board,
    }));
  }

  lift(lift: Design["lift"]): NonNullable<ComposeDocument["lift"]> {
    switch (lift.rule) {
      case "none":
      case "optical":
        return { rule: lift.rule };
      case "fixed":
        return { rule: "fixed", by: this.length(lift.by) };
      case "ratio":
        return { rule: "ratio", foot: Number(lift.foot.over) / Number(lift.foot.under) };
    }
  }
}

export function listName(sizes: readonly Size[]): "inch" | "metric" | "iso" | null {
  return (["inch", "metric", "iso"] as const).find((name) => SIZE_LISTS[name] === sizes) ?? null;
}

/** A design written out whole, with nothing left to a practice, in `unit` and on that unit's ruler. */
export function documentOf(design: Design, unit: Unit): ComposeDocument {
  const spell = new Speller(unit);
  return {
    unit,
    ...(unit === design.ruler.unit ? { graduation: spell.length(design.ruler.graduation) } : {}),
    ...(design.print === null ? {} : { print: spell.print(design.print) }),
    window: spell.window(design.window),
    hold: spell.length(design.hold),
    play: spell.length(design.play),
    holding: design.holding,
    ...(design.mount === "" ? {} : { mount: design.mount }),
    outer: spell.outer(design.outer),
    lift: spell.lift(design.lift),
    mats: spell.mats(design.mats),
  };
}
