import { sayWanted } from "../../words/index.ts";
import { sayBlankFault, sayNumberFault, sayRefused, sayThatCannotBe } from "../../words/page.ts";
import type { BlankFault } from "./fault.ts";

/** Why a blank's text was not kept, as a sentence. */
export function faultSays(fault: BlankFault): string {
  switch (fault.code) {
    case "length":
      return sayBlankFault(fault.fault, fault.typed);
    case "not-a-number":
      return sayNumberFault(fault.typed);
    case "refused":
      return fault.problem.wanted.kind === "length"
        ? sayWanted(fault.problem.wanted)
        : sayRefused(fault.problem.wanted);
    case "wanted":
      return sayThatCannotBe(fault.wanted);
  }
}
