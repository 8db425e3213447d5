import type { Composition } from "../../assembly/index.ts";
import type { Size } from "../../geometry/index.ts";
import { toMillimetres } from "../../lengths/index.ts";
import type { WorkDocument } from "../schema.ts";
import { processOf } from "../read-held.ts";

/** What is known of a work as texts, empty where nothing is: what every export draws from. */
export interface WorkRecord {
  readonly title: string;
  readonly maker: string;
  /** As it was told: `2026`, `about 1890`. */
  readonly date: string;
  readonly type: string;
  /** Materials and techniques. */
  readonly process: string;
  /** Height before width, in millimetres: `image: 190.5 x 241.3 mm; sheet: …`. */
  readonly measurements: string;
  readonly edition: string;
  readonly inscriptions: string;
  readonly features: string;
  readonly subject: string;
  readonly description: string;
  readonly number: string;
  readonly related: string;
  readonly place: string;
  readonly crossReference: string;
  readonly documented: string;
  readonly rights: string;
  readonly credit: string;
  readonly picture: string;
}

const millimetres = ({ width, height }: Size): string =>
  `${toMillimetres(height)} x ${toMillimetres(width)} mm`;

/** A work's measurements as museums write them; exact, so that they read back to the same lengths. */
export function measurementsOf(composition: Composition): string {
  const { print } = composition.design;
  if (print === null) return "";
  const { sheet, image } = print;
  const whole = image.width === sheet.width && image.height === sheet.height;
  return [...(whole ? [] : [`image: ${millimetres(image)}`]), `sheet: ${millimetres(sheet)}`].join("; ");
}

/** What is written down of a work; `composition` gives its measurements. */
export function recordOf(work: WorkDocument, composition: Composition): WorkRecord {
  const { record = {} } = work;
  return {
    title: work.title,
    maker: work.maker ?? "",
    date: work.year ?? "",
    type: record.typeOfObject ?? "",
    process: processOf(work),
    measurements: measurementsOf(composition),
    edition: work.edition ?? "",
    inscriptions: record.inscriptions ?? "",
    features: record.features ?? "",
    subject: record.subject ?? "",
    description: record.description ?? "",
    number: record.inventoryNumber ?? "",
    related: record.related ?? "",
    place: record.place ?? "",
    crossReference: record.crossReference ?? "",
    documented: record.documented ?? "",
    rights: record.rights ?? "",
    credit: record.credit ?? "",
    picture: work.picture ?? "",
  };
}
