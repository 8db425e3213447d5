import * as z from "zod/mini";
import { WOOD_NAMES } from "../assembly/index.ts";

/** A length as people write it, or a bare number in the document's unit. */
const length = z.union([z.string(), z.number()]);
const size = z.object({ width: length, height: length });
/** `0.4 kg/m`, `0.9 kg/m2`, `3 oz`: as people write it. */
const mass = z.union([z.string(), z.number()]);
/** `10 °C`, `50 °F`. */
const temperature = z.union([z.string(), z.number()]);

export const backingDocument = z.object({
  /** Its sheets are those of the stock that name this board. */
  board: z.string(),
  /** How much smaller than the package it is cut, each way; absent: not at all. */
  less: z.optional(length),
  thickness: z.optional(length),
  /** Of a square metre or square foot. */
  mass: z.optional(mass),
});

export const glazingDocument = z.extend(backingDocument, {
  kind: z.enum(["glass", "acrylic"]),
  /** What a saw takes; absent: nothing, it is scored and snapped. */
  kerf: z.optional(length),
});

export const mouldingDocument = z.object({
  name: z.string(),
  /** From the lip's sight edge to the outermost edge of the back. */
  overall: length,
  /** How far the rabbet reaches under the lip. */
  rabbet: length,
  /** How deep the rabbet is. */
  depth: z.optional(length),
  /** How thick the lip is. */
  lip: z.optional(length),
  wood: z.optional(z.enum(WOOD_NAMES)),
  /** Of a metre or a foot. */
  mass: z.optional(mass),
  /** Between the package and the rabbet, both ends together. */
  allowance: z.optional(length),
  /** What a cut takes along the length; else √2 times the saw's thickness. */
  kerf: z.optional(length),
  saw: z.optional(length),
  /** Lost at each end of a length. */
  waste: z.optional(length),
});

const SEATS = ["foot", "shimmed"] as const;
const BALANCES = ["package", "seen"] as const;

/** How the package stands in the rabbet, and which borders the lift is judged by. */
const standing = {
  seat: z.optional(z.enum(SEATS)),
  balance: z.optional(z.enum(BALANCES)),
};

/** A mat that is cut already. */
const readyMat = z.object({
  width: length,
  height: length,
  /** Its opening at the back. */
  window: size,
  /** From its head edge to the opening; absent: the opening lies in the middle. */
  head: z.optional(length),
  thickness: z.optional(length),
  board: z.optional(z.string()),
});

/** A kind of frame: made of a moulding, or there already. */
export const frameDocument = z.object({
  name: z.string(),
  moulding: z.optional(mouldingDocument),
  /** The rabbet's opening of a frame that exists; absent: it is made to each package. */
  opening: z.optional(size),
  /** How many there are of it. */
  copies: z.optional(z.number()),
  mat: z.optional(readyMat),
  /** Null: none. */
  glazing: z.optional(z.nullable(glazingDocument)),
  backing: z.optional(z.nullable(backingDocument)),
  /** Between glazing and mat. */
  spacer: z.optional(length),
  ...standing,
});

/** How a studio frames, whatever the kind. */
export const framingDocument = z.object({
  fittings: z.optional(length),
  offset: z.optional(length),
  clear: z.optional(length),
  /** How thick the mount is. */
  mount: z.optional(length),
  /** Of mat board, kilograms a cubic metre. */
  boardDensity: z.optional(z.number()),
  coverInset: z.optional(length),
  bumper: z.optional(length),
  /** Of rings, wire, points and bumpers together. */
  hardware: z.optional(mass),
  temperature: z.optional(z.object({ from: temperature, to: temperature })),
});

export const framesDocument = z.array(frameDocument).check(z.maxLength(1000));

/** A work's frame: the name of a kind, or that and how it stands. Null: it is not framed. */
export const workFrameDocument = z.nullable(
  z.union([z.string(), z.object({ kind: z.string(), ...standing })]),
);

export type BackingDocument = z.infer<typeof backingDocument>;
export type GlazingDocument = z.infer<typeof glazingDocument>;
export type MouldingDocument = z.infer<typeof mouldingDocument>;
export type FrameDocument = z.infer<typeof frameDocument>;
export type FramingDocument = z.infer<typeof framingDocument>;
export type WorkFrameDocument = z.infer<typeof workFrameDocument>;
