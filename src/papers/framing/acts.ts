import type { FrameCheck } from "../../assembly/index.ts";
import { subtract } from "../../lengths/index.ts";
import {
  backingStep,
  bumperStep,
  coverStep,
  depthStep,
  fittingsStep,
  frameCaution,
  FRAME_SHEET,
  glazingStep,
  openingStep,
  shimStep,
  spacerStep,
} from "../../words/frame-sheet.ts";
import { type Act, act, warning } from "../bench/act.ts";
import type { FrameDesk } from "./desk.ts";

/** What is warned about where the hand is about to do it. */
const AT = {
  opening: ["rabbet-tight", "seen-small"],
  glazing: ["glazing-tight", "glazing-near", "draws-pigment"],
  laying: ["edge-may-show"],
  closing: ["stack-over", "fittings-short"],
} as const satisfies Readonly<Record<string, readonly FrameCheck["code"][]>>;

/** Everything the hand does at the frame, in its order: measure, cut, clean, lay in, look, fix, seal. */
export function frameActs(desk: FrameDesk): readonly Act[] {
  const { plan } = desk.job;
  const { speech } = desk;
  const { glazing, spacers, backing, left, frame } = plan;
  const shim = subtract(frame.profile.rabbet, plan.stands.hidden.foot);
  const warned = (codes: readonly FrameCheck["code"][]): readonly Act[] =>
    plan.checks
      .filter(({ code, level }) => level === "warn" && codes.includes(code))
      .map((check) => warning(frameCaution(check, speech)));
  return [
    act(FRAME_SHEET.square),
    ...warned(AT.opening),
    act(openingStep(plan, speech)),
    ...(glazing === null
      ? []
      : [
          warning(glazing.kind === "glass" ? FRAME_SHEET.gloves : FRAME_SHEET.acrylic),
          ...warned(AT.glazing),
          act(glazingStep(glazing, speech)),
          ...(glazing.kind === "glass" ? [act(FRAME_SHEET.seam)] : []),
        ]),
    ...(spacers === null ? [] : [act(spacerStep(spacers, speech))]),
    ...(backing === null ? [] : [act(backingStep(backing, speech))]),
    act(FRAME_SHEET.dust),
    ...(frame.seat === "shimmed" && shim > 0 ? [act(shimStep(shim, speech))] : []),
    ...warned(AT.laying),
    act(FRAME_SHEET.lay),
    ...(left !== null && left < 0 ? [warning(FRAME_SHEET.doNotPress)] : []),
    ...warned(AT.closing),
    act(depthStep(plan, speech)),
    act(fittingsStep(plan)),
    act(coverStep(plan, speech)),
    act(bumperStep(plan, speech)),
  ];
}
