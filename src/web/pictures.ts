import { keptSays, PICTURE } from "../words/page.ts";
import { factsChange, type KeptShow, type KeptWork } from "./state/change.ts";
import { isKept, keepPicture, keptPicture } from "./state/pictures.ts";
import { make, told } from "./state/session.ts";

/** The longest side at which a picture is kept: sharp on a wide page, some 200 kB. */
const LONGEST = 1200;
/** Larger files are no pictures of a print for the screen. */
const MOST_BYTES = 60e6;

/** Adds a picture from a file to a work: made small enough to keep, and kept in this browser. */
export async function addPicture(work: KeptWork, file: File): Promise<void> {
  if (file.size > MOST_BYTES) {
    told.value = PICTURE.tooLarge;
    return;
  }
  let picture: Blob;
  try {
    picture = await smaller(file);
  } catch (fault) {
    // A browser's way to say that it cannot read a file as a picture.
    if (!(fault instanceof DOMException)) throw fault;
    told.value = PICTURE.notOne(file.name);
    return;
  }
  try {
    setPicture(work, await keepPicture(picture, file));
  } catch (fault) {
    if (!(fault instanceof DOMException)) throw fault;
    told.value = PICTURE.notKept;
  }
}

export function setPicture(work: KeptWork, picture: string | undefined): void {
  const said = picture === undefined ? PICTURE.off : PICTURE.on;
  const change = factsChange(work, { picture }, said);
  if (change !== null && make(change)) told.value = keptSays(said, null);
}

async function smaller(file: File): Promise<Blob> {
  const whole = await createImageBitmap(file);
  const scale = Math.min(1, LONGEST / Math.max(whole.width, whole.height));
  const canvas = document.createElement("canvas");
  canvas.width = Math.max(1, Math.round(whole.width * scale));
  canvas.height = Math.max(1, Math.round(whole.height * scale));
  const paper = canvas.getContext("2d");
  if (paper === null) throw new DOMException("nothing to draw on");
  // What is clear in the picture is paper.
  paper.fillStyle = "#fff";
  paper.fillRect(0, 0, canvas.width, canvas.height);
  paper.imageSmoothingQuality = "high";
  paper.drawImage(whole, 0, 0, canvas.width, canvas.height);
  whole.close();
  return new Promise((done, fail) => {
    canvas.toBlob(
      (blob) => (blob === null ? fail(new DOMException("no picture")) : done(blob)),
      "image/jpeg",
      0.85,
    );
  });
}

/** The show with its kept pictures inside it, for a file that holds everything. */
export async function withPictures(show: KeptShow): Promise<KeptShow> {
  const works = await Promise.all(
    show.works.map(async (work) => {
      const found = await bytesOf(work.picture);
      return found === undefined ? work : { ...work, picture: await asText(found) };
    }),
  );
  return { ...show, works };
}

/** A picture that lies in this browser or at the studio. */
async function bytesOf(picture = ""): Promise<Blob | undefined> {
  if (picture.startsWith("/api/pictures/")) {
    const given = await fetch(`.${picture}`);
    return given.ok ? given.blob() : undefined;
  }
  return isKept(picture) ? keptPicture(picture) : undefined;
}

const asText = (picture: Blob): Promise<string> =>
  new Promise((done, fail) => {
    const reader = new FileReader();
    reader.addEventListener("load", () => done(String(reader.result)));
    reader.addEventListener("error", () => fail(reader.error ?? new DOMException("not read")));
    reader.readAsDataURL(picture);
  });

/** The show with the pictures inside it put into this browser's keeping; one that cannot be kept stays inside. */
export async function picturesKept(show: KeptShow): Promise<KeptShow> {
  const works: KeptWork[] = [];
  for (const work of show.works) {
    const inside = /^data:(image\/(?:jpeg|png));base64,(.*)$/s.exec(work.picture ?? "");
    works.push(inside === null ? work : { ...work, picture: await keptOr(work.picture ?? "", inside) });
  }
  return { ...show, works };
}

async function keptOr(text: string, [, type = "", base64 = ""]: RegExpExecArray): Promise<string> {
  try {
    const bytes = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
    return await keepPicture(new Blob([bytes], { type }));
  } catch (fault) {
    // No database, or letters that are no picture: the text stays as it came.
    if (!(fault instanceof DOMException)) throw fault;
    return text;
  }
}
