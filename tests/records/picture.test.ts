import { deflateSync } from "node:zlib";
import fc from "fast-check";
import sharp from "sharp";
import { describe, expect, test } from "vitest";
import { type PacketOrder, prepare } from "../../src/packet/index.ts";
import {
  readPictureFields,
  showReadOf,
  type WorkDocument,
  withPictureFields,
  writeIptc,
} from "../../src/show/index.ts";
import { sayPictureNote } from "../../src/words/records.ts";
import { packetOrder } from "../packet-order.ts";

const plain = sharp({ create: { width: 8, height: 8, channels: 3, background: "#888" } });

const XMP = `<?xpacket begin="" id="W5M0MpCehiHzreSzNTczkc9d"?><x:xmpmeta xmlns:x="adobe:ns:meta/">
<rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
<rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/" xmlns:c="http://ns.adobe.com/photoshop/1.0/" c:Credit="Tidewater Print Room" c:DateCreated="2025-03-04T10:00:00">
<dc:title><rdf:Alt><rdf:li xml:lang="da">Færge</rdf:li><rdf:li xml:lang="x-default">Ferry &amp; Slip</rdf:li></rdf:Alt></dc:title>
<dc:creator><rdf:Seq><rdf:li>Zażółć Gęślą</rdf:li><rdf:li>Ærø</rdf:li></rdf:Seq></dc:creator>
<dc:subject><rdf:Bag><rdf:li>harbour</rdf:li><rdf:li>ferry</rdf:li></rdf:Bag></dc:subject>
<dc:rights><rdf:Alt><rdf:li xml:lang="x-default">© 2025</rdf:li></rdf:Alt></dc:rights>
</rdf:Description></rdf:RDF></x:xmpmeta><?xpacket end="w"?>`;

/** A JPEG with further segments after its first two bytes. */
function withSegments(
  jpeg: Uint8Array,
  segments: readonly (readonly [kind: number, body: Uint8Array])[],
): Uint8Array {
  const parts = segments.map(([kind, body]) =>
    Buffer.concat([Buffer.from([0xff, kind, (body.length + 2) >> 8, (body.length + 2) & 255]), body]),
  );
  return Buffer.concat([jpeg.subarray(0, 2), ...parts, jpeg.subarray(2)]);
}

/** IPTC's data sets in a block of resources, behind another one with a name of uneven length. */
function iptc(sets: readonly (readonly [set: number, text: Buffer])[]): Uint8Array {
  const data = Buffer.concat(
    sets.map(([set, text]) =>
      Buffer.concat([Buffer.from([0x1c, 2, set, text.length >> 8, text.length & 255]), text]),
    ),
  );
  const resource = (id: number, name: string, body: Uint8Array): Uint8Array => {
    const named = Buffer.from(
      `${String.fromCharCode(name.length)}${name}${name.length % 2 === 0 ? "\0" : ""}`,
      "latin1",
    );
    const head = Buffer.alloc(6);
    head.write("8BIM", "latin1");
    head.writeUInt16BE(id, 4);
    const size = Buffer.alloc(4);
    size.writeUInt32BE(body.length);
    return Buffer.concat([head, named, size, body, Buffer.alloc(body.length % 2)]);
  };
  return Buffer.concat([
    Buffer.from("Photoshop 3.0\0", "latin1"),
    resource(0x0425, "abc", Buffer.alloc(3)),
    resource(0x0404, "", data),
  ]);
}

const IPTC = iptc([
  [5, Buffer.from("Slip, from IPTC")],
  [25, Buffer.from("harbour")],
  [25, Buffer.from("tide")],
  [55, Buffer.from("20240229")],
  [80, Buffer.from("Rødgrød Åse", "utf8")],
  [116, Buffer.from("© Rødgrød", "latin1")],
]);

const EXIF = {
  IFD0: { Artist: "T. Marrable", Copyright: "(C) T. Marrable", ImageDescription: "A slip at ebb" },
};

describe("a picture's own fields", () => {
  test("[RE10] XMP, in a JPEG and in a PNG that another program wrote", async () => {
    for (const picture of [
      await plain.clone().jpeg().withXmp(XMP).toBuffer(),
      await plain.clone().png().withXmp(XMP).toBuffer(),
    ])
      expect(readPictureFields(picture)).toEqual({
        title: { value: "Ferry & Slip", from: "XMP" },
        maker: { value: "Zażółć Gęślą; Ærø", from: "XMP" },
        year: { value: "2025", from: "XMP" },
        subject: { value: "harbour; ferry", from: "XMP" },
        rights: { value: "© 2025", from: "XMP" },
        credit: { value: "Tidewater Print Room", from: "XMP" },
      });
  });

  test("[RE10] EXIF that another program wrote; when it was taken is not when the work was made", async () => {
    const picture = await plain
      .clone()
      .jpeg()
      .withExif({ ...EXIF, IFD2: { DateTimeOriginal: "2026:01:02 03:04:05" } })
      .toBuffer();
    expect(readPictureFields(picture)).toEqual({
      maker: { value: "T. Marrable", from: "EXIF" },
      description: { value: "A slip at ebb", from: "EXIF" },
      rights: { value: "(C) T. Marrable", from: "EXIF" },
    });
  });

  test("[RE10] IPTC's data sets, in UTF-8 and in Windows-1252, before EXIF and behind XMP", async () => {
    const jpeg = await plain.clone().jpeg().withExif(EXIF).toBuffer();
    const picture = withSegments(jpeg, [[0xed, IPTC]]);
    expect(readPictureFields(picture)).toEqual({
      title: { value: "Slip, from IPTC", from: "IPTC" },
      subject: { value: "harbour; tide", from: "IPTC" },
      year: { value: "2024", from: "IPTC" },
      maker: { value: "Rødgrød Åse", from: "IPTC" },
      rights: { value: "© Rødgrød", from: "IPTC" },
      description: { value: "A slip at ebb", from: "EXIF" },
    });
    const both = withSegments(await plain.clone().jpeg().withXmp(XMP).toBuffer(), [[0xed, IPTC]]);
    expect(readPictureFields(both)).toMatchObject({
      maker: { from: "XMP" },
      title: { value: "Ferry & Slip" },
    });
  });

  test("[RE4] [RE10] the artwork that a picture shows comes before the picture itself: what this program wrote reads back", async () => {
    const none = {
      type: "",
      edition: "",
      inscriptions: "",
      features: "",
      subject: "",
      related: "",
      place: "",
      crossReference: "",
      documented: "",
      picture: "",
    };
    const xmp = writeIptc([
      {
        ...none,
        title: "Ebb",
        maker: "Ines Okonedo-Vale",
        date: "about 1926",
        process: "Cyanotype",
        measurements: "",
        description: "A slip",
        number: "SW 3",
        rights: "© 1926",
        credit: "Lent by the maker",
      },
    ]);
    const picture = await plain.clone().jpeg().withXmp(xmp).toBuffer();
    const fields = readPictureFields(picture);
    expect(Object.fromEntries(Object.entries(fields).map(([field, said]) => [field, said.value]))).toEqual({
      title: "Ebb",
      maker: "Ines Okonedo-Vale",
      year: "about 1926",
      description: "A slip",
      rights: "© 1926",
      credit: "Lent by the maker",
      inventoryNumber: "SW 3",
    });
  });

  test("[RE10] a PNG's own texts, plain and packed; what unpacks without end says nothing", async () => {
    const png = await plain.clone().png().toBuffer();
    const text = (kind: string, body: Uint8Array): Uint8Array => {
      const chunk = Buffer.alloc(12 + body.length);
      chunk.writeUInt32BE(body.length);
      chunk.write(kind, 4, "latin1");
      chunk.set(body, 8);
      return chunk;
    };
    const packed = (name: string, written: Uint8Array): Uint8Array =>
      Buffer.concat([Buffer.from(`${name}\0\0`), deflateSync(written)]);
    const picture = Buffer.concat([
      png.subarray(0, 33),
      text("tEXt", Buffer.from("Author\0Zofia Łęcka", "utf8")),
      text("zTXt", packed("Copyright", Buffer.from("© 2026"))),
      text("iTXt", Buffer.from("Description\0\0\0da\0Beskrivelse\0En færge", "utf8")),
      text("zTXt", packed("Title", Buffer.alloc(20 * 2 ** 20, "a"))),
      png.subarray(33),
    ]);
    expect(readPictureFields(picture)).toEqual({
      maker: { value: "Zofia Łęcka", from: "PNG" },
      rights: { value: "© 2026", from: "PNG" },
      description: { value: "En færge", from: "PNG" },
    });
  });

  test("[RE10] what is damaged says nothing, wherever it is cut off and whatever its bytes", async () => {
    const whole = withSegments(await plain.clone().jpeg().withExif(EXIF).withXmp(XMP).toBuffer(), [
      [0xed, IPTC],
    ]);
    for (let end = 0; end < whole.length; end += 7)
      for (const said of Object.values(readPictureFields(whole.subarray(0, end))))
        expect(said.value).not.toBe("");
    fc.assert(
      fc.property(
        fc.uint8Array({ maxLength: 400 }),
        fc.integer({ min: 0, max: whole.length }),
        (noise, at) => {
          const spoilt = Uint8Array.from(whole);
          spoilt.set(noise.subarray(0, spoilt.length - at), at);
          for (const said of Object.values(readPictureFields(spoilt))) expect(said.value).not.toBe("");
          expect(readPictureFields(noise)).toEqual({});
        },
      ),
    );
  });
});

test("[RE11] a work takes from its picture only what it does not say itself, and that is told by row", async () => {
  const picture = withSegments(await plain.clone().jpeg().withExif(EXIF).toBuffer(), [[0xed, IPTC]]);
  const work: WorkDocument = {
    title: "Ebb",
    year: "2026",
    record: { rights: "mine", subject: " " },
    picture: "ebb.jpg",
    design: { unit: "in", print: { width: 8, height: 10 } },
  };
  const filled = withPictureFields(work, readPictureFields(picture));
  expect(filled.work).toEqual({
    ...work,
    maker: "Rødgrød Åse",
    record: { rights: "mine", subject: "harbour; tide", description: "A slip at ebb" },
  });
  const order: PacketOrder = packetOrder(
    showReadOf({
      format: "margent-show",
      version: 1,
      name: "Slack Water",
      works: [work, { ...work, picture: "none.jpg" }],
    }),
    { picture: (address) => (address === "ebb.jpg" ? picture : undefined) },
  );
  const read = prepare(order);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  expect(read.value.works.map(({ work: { maker } }) => maker)).toEqual(["Rødgrød Åse", undefined]);
  expect(read.value.pictureNotes.map(sayPictureNote)).toEqual([
    "row 2, maker: Rødgrød Åse, from the picture (IPTC). Is it the print's maker, or the picture's?",
    "row 2, description: A slip at ebb, from the picture (EXIF).",
    "row 2, subject: harbour; tide, from the picture (IPTC).",
  ]);
});
