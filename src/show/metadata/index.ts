export {
  DC,
  DUBLIN_CORE,
  type DublinCore,
  dublinCoreOf,
  type DublinCoreElement,
  readDublinCore,
  writeDublinCore,
} from "./dublin-core.ts";
export { IPTC_ARTWORK, type IptcArtwork, iptcArtworkOf, readIptc, writeIptc } from "./iptc.ts";
export { OBJECT_ID, objectIdRow } from "./object-id.ts";
export { measurementsOf, recordOf, type WorkRecord } from "./record.ts";
export {
  type FieldFrom,
  PICTURE_FIELDS,
  type PictureField,
  type PictureFields,
  readPictureFields,
} from "./picture/index.ts";
export { type FromPicture, withPictureFields } from "./from-picture.ts";
