import { randomBytes } from "node:crypto";

/** A new id of 72 bits, safe in an address. */
export const newId = (): string => randomBytes(9).toString("base64url");
