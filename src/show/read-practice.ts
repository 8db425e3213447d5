import type { Unit } from "../lengths/index.ts";
import { onceEachUnit } from "./each-unit.ts";
import type { Practice } from "./practice.ts";
import { readFramePractice } from "./read-frames.ts";
import { readHabits } from "./read-habits.ts";
import { readHeldHabits } from "./read-held.ts";
import { readMoney } from "./read-money.ts";
import { readPacking } from "./read-packing.ts";
import { Reader } from "./reader.ts";
import type { PracticeDocument } from "./schema.ts";
import type { Read } from "./validate.ts";

/** A practice with every choice made, for work in `unit`. */
export function readPractice(document: PracticeDocument, unit: Unit = document.unit ?? "in"): Read<Practice> {
  const reader = new Reader(document.unit ?? unit);
  const practice: Practice = {
    ...readHabits(reader, document, unit),
    held: readHeldHabits(reader, document.held ?? {}, unit),
    ...readFramePractice(reader, document, unit),
    money: readMoney(reader, document.money),
    packing: readPacking(reader, document.packing ?? {}, unit),
  };
  return reader.problems.length === 0
    ? { ok: true, value: practice }
    : { ok: false, problems: reader.problems };
}

/** The same, read once for each unit. */
export const practiceFor = onceEachUnit(readPractice);
