import { type Label, labelOf, NotUnderstood } from "./label.ts";
import type { DimensionsFault, Part } from "./records.ts";
import { type Token, tokenText, type UnitWord } from "./tokens.ts";
import { AXES, type Axis, WEIGHTS } from "./vocabulary.ts";

/** One figure as it was written; unit and direction where they stand with it. */
export interface WrittenFigure {
  readonly text: string;
  readonly unit: UnitWord | null;
  readonly axis: Axis | null;
}

/** Figures joined by "x": `241 x 191 mm`, or one alone: `H. 20 cm`. */
export type Statement = readonly WrittenFigure[];

/** One labelled stretch of the text, with all that is stated of it. */
export interface WrittenPart {
  readonly names: readonly Part[];
  readonly each: boolean;
  /** It is not said, or not known, what part this is. */
  readonly unsure: boolean;
  /** Words such as "irregular". */
  readonly notExact: readonly string[];
  readonly statements: readonly Statement[];
}

export type PartsRead =
  | { readonly ok: true; readonly parts: readonly WrittenPart[] }
  | { readonly ok: false; readonly fault: DimensionsFault };

/** Tokens to labelled parts. A label stands before its size (`image: 241 x 191 mm`) or behind it (`241 x 191 mm (image)`). */
export function partsOf(tokens: readonly Token[]): PartsRead {
  try {
    return { ok: true, parts: new PartsReader(tokens).read() };
  } catch (error) {
    if (error instanceof NotUnderstood) return { ok: false, fault: error.fault };
    throw error;
  }
}

interface OpenPart {
  names: readonly Part[];
  each: boolean;
  unsure: boolean;
  notExact: string[];
  statements: Statement[];
  label: string;
  /** A label behind its size ends the part. */
  closed: boolean;
}

class PartsReader {
  private at = 0;
  private readonly parts: OpenPart[] = [];
  private readonly tokens: readonly Token[];

  constructor(tokens: readonly Token[]) {
    this.tokens = tokens;
  }

  read(): WrittenPart[] {
    const sizesFirst = this.startsFigure(0);
    for (let token = this.tokens[0]; token !== undefined; token = this.tokens[this.at]) {
      if (this.startsFigure(this.at)) this.readFigures();
      else if (token.kind === "word") this.readLabel(sizesFirst);
      else if (token.kind === "open" && this.readOrder()) continue;
      else if (/^(unit|by|colon|other)$/.test(token.kind)) throw new NotUnderstood(this.around(this.at));
      else this.at++;
    }
    for (const part of this.parts) if (part.statements.length === 0) throw new NotUnderstood(part.label);
    return this.parts;
  }

  /** A number, or a direction with its number: `H. 20`, `height: 20`. */
  private startsFigure(at: number): boolean {
    const token = this.tokens[at];
    if (token?.kind === "number") return true;
    return (
      token?.kind === "word" && AXES.has(token.text) && this.tokens[this.pastStops(at + 1)]?.kind === "number"
    );
  }

  private pastStops(at: number): number {
    let past = at;
    while (this.tokens[past]?.kind === "stop" || this.tokens[past]?.kind === "colon") past++;
    return past;
  }

  private readFigures(): void {
    const start = this.at;
    const figures = [this.readFigure()];
    while (this.tokens[this.at]?.kind === "by") {
      this.at++;
      if (!this.startsFigure(this.at)) throw new NotUnderstood(this.around(start));
      figures.push(this.readFigure());
    }
    const [only] = figures;
    if (figures.length === 1 && only?.unit === null && only.axis === null) {
      const next = this.tokens[this.at];
      if (next?.kind !== "word" || !WEIGHTS.has(next.text)) throw new NotUnderstood(this.around(start));
      this.at++;
      return;
    }
    const last = this.parts.at(-1);
    const part = last === undefined || last.closed ? this.openPart() : last;
    part.statements.push(figures);
  }

  private readFigure(): WrittenFigure {
    let axis: Axis | null = null;
    const first = this.tokens[this.at];
    if (first?.kind === "word") {
      axis = AXES.get(first.text) ?? null;
      this.at = this.pastStops(this.at + 1);
    }
    let text = this.takeNumber();
    let axisBehind = this.takeAxis();
    let unit = this.takeUnit();
    if (unit === "ft" && this.tokens[this.at]?.kind === "number") {
      text = `${text}' ${this.takeNumber()}`;
      unit = this.takeUnit() ?? "in";
      if (unit !== "in") throw new NotUnderstood(text);
    }
    axisBehind ??= this.takeAxis();
    if (axis !== null && axisBehind !== null) throw new NotUnderstood(`${text} ${axisBehind}`);
    return { text, unit, axis: axis ?? axisBehind };
  }

  private takeNumber(): string {
    const token = this.tokens[this.at++];
    if (token?.kind !== "number") throw new NotUnderstood(this.around(this.at - 1));
    return token.text;
  }

  private takeUnit(): UnitWord | null {
    const token = this.tokens[this.at];
    if (token?.kind !== "unit") return null;
    this.at++;
    return token.text;
  }

  /** `h` or `(h)` behind its figure; not the direction of the next one, as in `20 cm h. 30`. */
  private takeAxis(): Axis | null {
    const opened = this.tokens[this.at]?.kind === "open";
    const at = opened ? this.at + 1 : this.at;
    const token = this.tokens[at];
    if (token?.kind !== "word" || this.startsFigure(at)) return null;
    const axis = AXES.get(token.text);
    if (axis === undefined) return null;
    if (opened && this.tokens[at + 1]?.kind !== "close") return null;
    this.at = at + (opened ? 2 : 1);
    return axis;
  }

  /** `(h x w)` behind a size says which figure is which; false where something else stands in the brackets. */
  private readOrder(): boolean {
    const axes: Axis[] = [];
    let at = this.at + 1;
    for (; ; at += 2) {
      const token = this.tokens[at];
      const axis = token?.kind === "word" ? AXES.get(token.text) : undefined;
      if (axis === undefined) return false;
      axes.push(axis);
      const next = this.tokens[at + 1]?.kind;
      if (next === "close") break;
      if (next !== "by") return false;
    }
    const statements = this.parts.at(-1)?.statements ?? [];
    const last = statements.at(-1);
    if (last === undefined || last.length !== axes.length) throw new NotUnderstood(this.around(this.at + 1));
    statements[statements.length - 1] = last.map((figure, index) => ({
      ...figure,
      axis: axes[index] ?? null,
    }));
    this.at = at + 2;
    return true;
  }

  private readLabel(sizesFirst: boolean): void {
    const label = this.takeLabel();
    const last = this.parts.at(-1);
    const beforeSize =
      label.colon ||
      last === undefined ||
      (this.startsFigure(this.at) && (!sizesFirst || last.names.length > 0 || last.statements.length === 0));
    if (!beforeSize) {
      if (last.names.length > 0 && label.names.length > 0) throw new NotUnderstood(label.text);
      join(last, label);
      last.closed ||= label.names.length > 0;
    } else if (last !== undefined && last.statements.length === 0) {
      if (last.names.length > 0 && label.names.length > 0) throw new NotUnderstood(label.text);
      join(last, label);
    } else {
      join(this.openPart(), label);
    }
  }

  private takeLabel(): Label {
    const words: string[] = [];
    let joined = false;
    let colon = false;
    for (;;) {
      const token = this.tokens[this.at];
      if (token?.kind === "word" && !this.startsFigure(this.at)) {
        words.push(token.text);
        this.at++;
        continue;
      }
      // Signs inside a label: "image (each)", "image, each", "support & image", "irreg."
      const past = this.pastLabelSigns(this.at);
      const next = this.tokens[past];
      if (next?.kind === "colon") {
        this.at = past + 1;
        colon = true;
        break;
      }
      if (past === this.at || next?.kind !== "word" || this.startsFigure(past)) break;
      joined ||= this.tokens.slice(this.at, past).some(({ kind }) => kind === "and" || kind === "slash");
      this.at = past;
    }
    return labelOf(words, joined, colon);
  }

  private pastLabelSigns(at: number): number {
    let past = at;
    while (/^(open|close|comma|stop|and|slash)$/.test(this.tokens[past]?.kind ?? "")) past++;
    return past;
  }

  private openPart(): OpenPart {
    const part: OpenPart = {
      names: [],
      each: false,
      unsure: false,
      notExact: [],
      statements: [],
      label: "",
      closed: false,
    };
    this.parts.push(part);
    return part;
  }

  /** The token with its neighbours, to be shown. */
  private around(at: number): string {
    return this.tokens
      .slice(Math.max(0, at - 1), at + 3)
      .map(tokenText)
      .join(" ");
  }
}

function join(part: OpenPart, label: Label): void {
  part.names = [...part.names, ...label.names];
  part.each ||= label.each;
  part.unsure ||= label.unsure;
  part.notExact.push(...label.notExact);
  part.label = `${part.label} ${label.text}`.trim();
}
