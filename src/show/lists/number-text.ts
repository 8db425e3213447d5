import { readLength } from "../../lengths/index.ts";

/**
 * A spreadsheet's number as a person would have typed it: twelve digits are more than any ruler has, and drop
 * what the arithmetic of doubles added behind them: 7.499999999999999 is 7.5.
 */
export function decimalText(value: number): string {
  return String(Number(value.toPrecision(12)));
}

/**
 * The unit that a number format shows behind the figure, `0.0" cm"`: the cell reads `24.5 cm`, so that is what
 * was meant. Null where the format shows none.
 */
export function unitInFormat(format: string): string | null {
  const shown = format.slice(0, 200).split(";")[0] ?? "";
  const literals = [...shown.matchAll(/"([^"]*)"|\\(.)/g)].map(
    ([, quoted, escaped]) => quoted ?? escaped ?? "",
  );
  const unit = literals.join("").trim();
  return /^(\p{L}+\.?|["'″′])$/u.test(unit) && readLength(`1 ${unit}`, "mm").ok ? unit : null;
}
