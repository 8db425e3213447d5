export {
  DUBLIN_CORE,
  dublinCoreOf,
  readDublinCore,
  writeDublinCore,
} from "./dublin-core.ts";
export { type FromPicture, withPictureFields } from "./from-picture.ts";
export { IPTC_ARTWORK, iptcArtworkOf, readIptc, writeIptc } from "./iptc.ts";
export { OBJECT_ID, objectIdRow } from "./object-id.ts";
export { readPictureFields } from "./picture/index.ts";
export { measurementsOf, recordOf, type WorkRecord } from "./record.ts";
