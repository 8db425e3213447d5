import type { FramedWork } from "../assembly/index.ts";
import { HangReader, type HangRead, type HangRequest, validateWall } from "./hang-request.ts";
import { type HangDocument, hangDocument } from "./hang-schema.ts";
import { readFitting, readFrameOnWall } from "./read-fitting.ts";
import { usualGraduation, wallRequest } from "./read-wall.ts";

/** Reads one wall as `margent hang` takes it; every problem is told with its field. */
export function readHang(document: unknown): HangRead<HangRequest> {
  const valid = validateWall(hangDocument, document);
  if (!valid.ok) return valid;
  const { wall, studio = "", show = "", works, unit = "in", ...fields } = valid.value;
  const reader = new HangReader(unit);
  const framed = works.map((work, index) => ({
    framed: readWork(reader, `works.${index}`, work),
    with: work.with,
  }));
  const face = { ...fields, face: wall, facePath: "wall." };
  return reader.done(wallRequest(reader, face, framed, { studio, show }, usualGraduation(unit)));
}

function readWork(reader: HangReader, field: string, work: HangDocument["works"][number]): FramedWork {
  const frame = readFrameOnWall(reader, field, work);
  return {
    title: work.title ?? "",
    ...frame,
    hanging: readFitting(reader, `${field}.hang`, work.hang, frame.width),
  };
}
